/** The system curves on which pool pumps are rated, at some flows. */
import { quantity, water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { FOOT, HORSEPOWER, MINUTE, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;

/** gpm, ft on curve A, B and C, water horsepower on C. */
const TABLE: readonly (readonly [gpm: number, A: number, B: number, C: number, hp: number])[] = [
  [10, 1.67, 5, 0.82, 0.00207],
  [24.7, 10.189, 30.505, 5.003, 0.03124],
  [31.1, 16.152, 48.361, 7.931, 0.06235],
  [40, 26.72, 80, 13.12, 0.13266],
  [50, 41.75, 125, 20.5, 0.2591],
  [60, 60.12, 180, 29.52, 0.44772],
  [80, 106.88, 320, 52.48, 1.06127],
  [100, 167, 500, 82, 2.0728],
];

const HEADS: readonly Case[] = TABLE.flatMap(([gpm, ...columns]) =>
  (['A', 'B', 'C'] as const).map((curve, i) => ({
    id: `curve ${curve}, ${gpm} gpm`,
    published: columns[i] as number,
    computed: () => catalog.water.pumpTestHead(curve, gpm * GPM) / FOOT,
  })),
);

const POWERS: readonly Case[] = TABLE.map(([gpm, , , , hp]) => ({
  id: `curve C, ${gpm} gpm`,
  published: hp,
  computed: () =>
    water.hydraulicPower.kernel({
      flow: gpm * GPM,
      head: catalog.water.pumpTestHead('C', gpm * GPM),
      density: 999.016,
    }) / HORSEPOWER,
}));

const SOURCE = {
  area: 'pool-rules',
  kind: 'practice',
  document: '10 CFR 431 subpart Y; California Title 20, 1604(g)',
} as const;

export const PUMP_TEST_CURVES: readonly Suite[] = [
  {
    ...SOURCE,
    id: 'pool-rules/pump-test-heads',
    at: 'coefficients from memory, worked out outside the project',
    quantity: 'head, ft',
    band: { relative: 2e-4, absolute: 6e-4 },
    bandBecause: 'Three decimals.',
    cases: HEADS,
  },
  {
    ...SOURCE,
    id: 'pool-rules/pump-test-power',
    at: 'hp = gpm·ft/3956, from memory',
    quantity: 'water power, hp',
    band: { relative: 0.0025 },
    bandBecause: '3956 is rounded and stands for warmer water than 60 °F; three digits.',
    cases: POWERS,
  },
];
