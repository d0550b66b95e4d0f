/**
 * Pipe and tube of the pool trade: sizes by trade name, with bore, wall, roughness and Hazen–Williams C.
 *
 * Plastic pipe is made with a wall above its minimum; friction tables use the bore that the minimum wall leaves, and
 * so does `insideDiameter`. The average bore as F441 lists it is 1 % smaller from 1-1/2 in on, and up to 3.3 % in small
 * sizes, which raises friction by 5 and up to 18 %; it stands beside it as `averageInsideDiameter`.
 */
import { quantity, type Source } from '@firstfire/engine';

const { FOOT, INCH, PSI } = quantity;

export interface WaterPipeSize {
  /** Trade size, unique within its pipe: `2-1/2`. */
  readonly id: string;
  /** m. */
  readonly outsideDiameter?: number;
  /** Minimum wall, m. */
  readonly wall?: number;
  /** Bore that the minimum wall leaves, m. */
  readonly insideDiameter: number;
  /** Average bore as made, m. */
  readonly averageInsideDiameter?: number;
  /** Greatest working pressure at 23 °C, Pa; less when warm. */
  readonly workingPressure?: number;
}

export type WaterPipeId =
  | 'pvc-schedule-40'
  | 'pvc-schedule-80'
  | 'cpvc-schedule-40'
  | 'cpvc-schedule-80'
  | 'pvc-class-160'
  | 'copper-k'
  | 'copper-l'
  | 'copper-m';

export interface WaterPipe {
  readonly id: WaterPipeId;
  /** Rising in bore. */
  readonly sizes: readonly WaterPipeSize[];
  readonly source: Source;
  /** Absolute roughness of new pipe, m. */
  readonly roughness: number;
  readonly roughnessSource: Source;
  /** Hazen–Williams C: what friction tables use, and the range sources print. */
  readonly cFactor: number;
  readonly cFactorRange: readonly [number, number];
}

const SMOOTH: Source = {
  document: 'Moody, Friction Factors for Pipe Flow (1944)',
  at: 'drawn tubing and plastic 0.000005 ft',
  known: 'from memory',
};
const PLASTIC = {
  roughness: 0.000005 * FOOT,
  roughnessSource: SMOOTH,
  cFactor: 150,
  cFactorRange: [140, 150],
} as const;
const COPPER = {
  roughness: 0.000005 * FOOT,
  roughnessSource: SMOOTH,
  cFactor: 140,
  cFactorRange: [130, 140],
} as const;

export const C_FACTOR_SOURCE: Source = {
  document: 'Table of Hazen–Williams coefficients, LMNO Engineering',
  at: 'plastic 140–150, copper 130–140',
  known: 'read in a public copy',
};

/** One row of ASTM D1785 and F441: outside, minimum wall and average bore (in), working pressure (psi). */
type Row = readonly [id: string, outside: number, wall: number, average: number | undefined, psi: number];

function plasticSize([id, outside, wall, average, psi]: Row): WaterPipeSize {
  return {
    id,
    outsideDiameter: outside * INCH,
    wall: wall * INCH,
    insideDiameter: (outside - 2 * wall) * INCH,
    ...(average === undefined ? {} : { averageInsideDiameter: average * INCH }),
    workingPressure: psi * PSI,
  };
}

const SCHEDULE_40: readonly Row[] = [
  ['1/2', 0.84, 0.109, 0.608, 600],
  ['3/4', 1.05, 0.113, 0.81, 480],
  ['1', 1.315, 0.133, 1.033, 450],
  ['1-1/4', 1.66, 0.14, 1.364, 370],
  ['1-1/2', 1.9, 0.145, 1.592, 330],
  ['2', 2.375, 0.154, 2.049, 280],
  ['2-1/2', 2.875, 0.203, 2.445, 300],
  ['3', 3.5, 0.216, 3.042, 260],
  ['4', 4.5, 0.237, 3.998, 220],
  ['6', 6.625, 0.28, undefined, 180],
  ['8', 8.625, 0.322, undefined, 160],
];

const SCHEDULE_80: readonly Row[] = [
  ['1/2', 0.84, 0.147, 0.528, 850],
  ['3/4', 1.05, 0.154, 0.724, 690],
  ['1', 1.315, 0.179, 0.935, 630],
  ['1-1/4', 1.66, 0.191, 1.256, 520],
  ['1-1/2', 1.9, 0.2, 1.476, 470],
  ['2', 2.375, 0.218, 1.913, 400],
  ['2-1/2', 2.875, 0.276, 2.289, 420],
  ['3', 3.5, 0.3, 2.864, 370],
  ['4', 4.5, 0.337, 3.786, 320],
  ['6', 6.625, 0.432, undefined, 280],
  ['8', 8.625, 0.5, undefined, 250],
];

const PVC_SOURCE: Source = {
  document: 'ASTM D1785',
  at: 'Tables 1 and 2 (6 and 8 in Schedule 80 from memory); average bores as ASTM F441 lists them',
  known: 'read in a public copy',
};
const CPVC_SOURCE: Source = {
  document: 'ASTM F441',
  at: 'Schedules 40 and 80, dimensions as D1785',
  known: 'read in a public copy',
};

export const PVC_SCHEDULE_40: WaterPipe = {
  id: 'pvc-schedule-40',
  source: PVC_SOURCE,
  ...PLASTIC,
  sizes: SCHEDULE_40.map(plasticSize),
};
export const PVC_SCHEDULE_80: WaterPipe = {
  id: 'pvc-schedule-80',
  source: PVC_SOURCE,
  ...PLASTIC,
  sizes: SCHEDULE_80.map(plasticSize),
};
export const CPVC_SCHEDULE_40: WaterPipe = {
  ...PVC_SCHEDULE_40,
  id: 'cpvc-schedule-40',
  source: CPVC_SOURCE,
};
export const CPVC_SCHEDULE_80: WaterPipe = {
  ...PVC_SCHEDULE_80,
  id: 'cpvc-schedule-80',
  source: CPVC_SOURCE,
};

/** Thin-wall PVC of buried pool and irrigation lines, with the bores a friction table of it prints. */
export const PVC_CLASS_160: WaterPipe = {
  id: 'pvc-class-160',
  source: {
    document: 'University course table IR-BH-1, friction loss for PVC class 160 pipe',
    at: 'inside diameters',
    known: 'read in a public copy',
  },
  ...PLASTIC,
  sizes: (
    [
      ['1/2', 0.72],
      ['1', 1.195],
      ['2', 2.193],
      ['3', 3.23],
      ['4', 4.154],
    ] as const
  ).map(([id, inside]) => ({ id, insideDiameter: inside * INCH })),
};

const COPPER_OUTSIDE = {
  '1/2': 0.625,
  '3/4': 0.875,
  '1': 1.125,
  '1-1/4': 1.375,
  '1-1/2': 1.625,
  '2': 2.125,
  '2-1/2': 2.625,
  '3': 3.125,
  '4': 4.125,
} as const;

const COPPER_ORDER = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2', '2-1/2', '3', '4'] as const;

/** Copper water tube by ASTM B88: the outside diameter is the nominal size and an eighth of an inch. */
function copper(id: WaterPipeId, walls: readonly number[]): WaterPipe {
  const sizes = COPPER_ORDER.map((size, i): WaterPipeSize => {
    const outside = COPPER_OUTSIDE[size] * INCH;
    const wall = (walls[i] as number) * INCH;
    return { id: size, outsideDiameter: outside, wall, insideDiameter: outside - 2 * wall };
  });
  return { id, sizes, source: { document: 'ASTM B88', at: 'Table 1', known: 'from memory' }, ...COPPER };
}

export const COPPER_K = copper('copper-k', [0.049, 0.065, 0.065, 0.065, 0.072, 0.083, 0.095, 0.109, 0.134]);
export const COPPER_L = copper('copper-l', [0.04, 0.045, 0.05, 0.055, 0.06, 0.07, 0.08, 0.09, 0.11]);
export const COPPER_M = copper('copper-m', [0.028, 0.032, 0.035, 0.042, 0.049, 0.058, 0.065, 0.072, 0.095]);

export const WATER_PIPES: readonly WaterPipe[] = [
  PVC_SCHEDULE_40,
  PVC_SCHEDULE_80,
  CPVC_SCHEDULE_40,
  CPVC_SCHEDULE_80,
  PVC_CLASS_160,
  COPPER_K,
  COPPER_L,
  COPPER_M,
];

/** A pipe by its id. */
export function waterPipe(id: string): WaterPipe | undefined {
  return WATER_PIPES.find((one) => one.id === id);
}

/** A size by its trade name, if the pipe is made in it. */
export function waterPipeSize(pipe: WaterPipe, id: string): WaterPipeSize | undefined {
  return pipe.sizes.find((one) => one.id === id);
}
