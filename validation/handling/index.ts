/** The revised lifting equation: factors and examples of its manual, from memory. */
import { expectOk, handling, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { INCH, POUND } = quantity;
const DEGREE = Math.PI / 180;
const MANUAL = 'NIOSH 94-110, Applications Manual for the Revised NIOSH Lifting Equation (from memory)';

type Factors = readonly (readonly [at: number, factor: number])[];

const HORIZONTAL: Factors = [
  [10, 1.0],
  [11, 0.91],
  [12, 0.83],
  [13, 0.77],
  [14, 0.71],
  [15, 0.67],
  [16, 0.63],
  [17, 0.59],
  [18, 0.56],
  [19, 0.53],
  [20, 0.5],
  [21, 0.48],
  [22, 0.46],
  [23, 0.44],
  [24, 0.42],
  [25, 0.4],
];
const VERTICAL: Factors = [
  [0, 0.78],
  [5, 0.81],
  [10, 0.85],
  [15, 0.89],
  [20, 0.93],
  [25, 0.96],
  [30, 1.0],
  [35, 0.96],
  [40, 0.93],
  [45, 0.89],
  [50, 0.85],
  [55, 0.81],
  [60, 0.78],
  [65, 0.74],
  [70, 0.7],
];
const DISTANCE: Factors = [
  [10, 1.0],
  [15, 0.94],
  [20, 0.91],
  [25, 0.89],
  [30, 0.88],
  [35, 0.87],
  [40, 0.87],
  [45, 0.86],
  [50, 0.86],
  [55, 0.85],
  [60, 0.85],
  [70, 0.85],
];
const ASYMMETRY: Factors = [
  [0, 1.0],
  [15, 0.95],
  [30, 0.9],
  [45, 0.86],
  [60, 0.81],
  [75, 0.76],
  [90, 0.71],
  [105, 0.66],
  [120, 0.62],
  [135, 0.57],
];

const BEST: readonly number[] = [10, 30, 10, 0];
const PLACES = ['horizontal', 'vertical', 'distance', 'asymmetry'] as const;

function posture([horizontal, vertical, distance, degrees]: readonly number[]): handling.LiftPosture {
  return {
    horizontal: (horizontal ?? 0) * INCH,
    vertical: (vertical ?? 0) * INCH,
    distance: (distance ?? 0) * INCH,
    asymmetry: (degrees ?? 0) * DEGREE,
  };
}

function factorCases(place: 0 | 1 | 2 | 3, table: Factors): readonly Case[] {
  return table.map(([at, published]) => ({
    id: `${PLACES[place]} ${at}`,
    published,
    computed: () => handling.postureMultipliers(posture(BEST.with(place, at)))[place],
  }));
}

const factors: Suite = {
  id: 'handling/niosh-posture-factors',
  area: 'handling',
  kind: 'practice',
  document: MANUAL,
  at: 'Tables 1 to 4',
  quantity: 'multiplier, inches and degrees',
  band: { absolute: 0.0061 },
  bandBecause: 'printed to 0.01; half of that and a hair for cells the manual rounded from its metric column',
  cases: [
    ...factorCases(0, HORIZONTAL),
    ...factorCases(1, VERTICAL),
    ...factorCases(2, DISTANCE),
    ...factorCases(3, ASYMMETRY),
  ],
};

const SELDOM = { perMinute: 0.2, duration: 'short' } as const;

const examples: Suite = {
  id: 'handling/niosh-examples',
  area: 'handling',
  kind: 'practice',
  document: MANUAL,
  at: 'example 1, loading a press, origin and destination; example 2, bags into a hopper',
  quantity: 'recommended weight limit, lb',
  band: { relative: 0.025 },
  bandBecause: 'the manual multiplies factors rounded to two digits',
  cases: (
    [
      ['example 1, origin', [23, 15, 49, 0], 16.3],
      ['example 1, destination', [23, 64, 49, 0], 14.5],
      ['example 2', [18, 15, 21, 45], 18.9],
    ] as const
  ).map(([id, at, published]) => ({
    id,
    published,
    computed: () => expectOk(handling.liftLimitOf(posture(at), { coupling: 'fair', ...SELDOM })) / POUND,
  })),
};

export const HANDLING_SUITES: readonly Suite[] = [factors, examples];
