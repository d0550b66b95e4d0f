/**
 * Friction table of a university course for PVC class 160 pipe: velocity and pressure lost in 100 ft.
 *
 * The table names no law; its figures are those of Hazen–Williams with C = 150.
 */
import { quantity, water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Misfit, Suite } from '../suite.ts';

const { FOOT, MINUTE, PSI, STANDARD_GRAVITY, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;
/** Conventional water: 2.307 ft to a psi. */
const DENSITY = 1000;

/** Size → gpm, ft/s, psi in 100 ft. */
const TABLE: Readonly<Record<string, readonly (readonly [gpm: number, fps: number, psi: number])[]>> = {
  '1/2': [
    [1, 0.8, 0.2],
    [2, 1.6, 0.75],
    [3, 2.4, 1.56],
    [4, 3.2, 2.68],
    [5, 4, 4.04],
    [6, 4.8, 5.76],
    [7, 5.6, 7.66],
    [8, 6.4, 9.78],
  ],
  '1': [
    [1, 0.28, 0.02],
    [2, 0.57, 0.06],
    [3, 0.85, 0.14],
    [4, 1.14, 0.23],
    [5, 1.42, 0.35],
    [6, 1.17, 0.49],
    [7, 1.99, 0.66],
    [8, 2.28, 0.84],
    [10, 2.85, 1.27],
    [16, 4.57, 3.04],
    [20, 5.71, 4.59],
    [40, 11.42, 16.59],
  ],
  '2': [
    [10, 0.84, 0.07],
    [16, 1.35, 0.16],
    [20, 1.69, 0.24],
    [40, 3.39, 0.86],
    [55, 4.66, 1.56],
    [80, 6.78, 3.12],
    [100, 8.48, 4.72],
  ],
  '3': [
    [20, 0.78, 0.04],
    [40, 1.58, 0.13],
    [55, 2.15, 0.24],
    [80, 3.12, 0.47],
    [100, 3.91, 0.72],
    [130, 5.08, 1.17],
  ],
  '4': [
    [20, 0.47, 0.01],
    [40, 0.94, 0.04],
    [55, 1.3, 0.07],
    [80, 1.89, 0.14],
    [100, 2.36, 0.21],
    [130, 3.07, 0.34],
    [200, 4.72, 0.76],
    [225, 5.31, 0.95],
  ],
};

function bore(size: string): number {
  return catalog.water.waterPipeSize(catalog.water.PVC_CLASS_160, size)?.insideDiameter ?? Number.NaN;
}

function cases(column: 1 | 2, computed: (insideDiameter: number, flow: number) => number): Case[] {
  return Object.entries(TABLE).flatMap(([size, rows]) =>
    rows.map((row) => ({
      id: `${size} in, ${row[0]} gpm`,
      published: row[column],
      computed: () => computed(bore(size), row[0] * GPM),
    })),
  );
}

const VELOCITY_MISFITS: readonly Misfit[] = [
  {
    cases: [2, 3, 4, 5, 6, 7, 8].map((gpm) => `1/2 in, ${gpm} gpm`),
    because:
      'The column is 0.8 ft/s for each gpm, which is a bore of 0.715 in and not the 0.72 in printed over it.',
  },
  { cases: ['1 in, 6 gpm'], because: 'Printed 1.17, a misprint for 1.71.' },
  {
    cases: ['3 in, 40 gpm'],
    because: 'Printed 1.58, twice the rounded entry at 20 gpm; the bore gives 1.57.',
  },
];

const LOSS_MISFITS: readonly Misfit[] = [
  {
    cases: ['1/2 in, 1 gpm', '1/2 in, 3 gpm', '1/2 in, 5 gpm'],
    because:
      'The smallest column stands 2 to 5 % under Hazen–Williams with the bore printed over it, by different amounts from row to row; a footnote mark has run into some of its digits.',
  },
];

const SOURCE = {
  area: 'water',
  kind: 'published',
  document: 'University course table IR-BH-1, PVC class 160 pipe',
} as const;

export const CLASS_160: readonly Suite[] = [
  {
    ...SOURCE,
    id: 'water/class-160-velocity',
    at: 'velocity columns',
    quantity: 'velocity, ft/s',
    band: { relative: 0.004, absolute: 0.0125 },
    bandBecause: 'Worked out with 0.408 for 0.4085 and cut off, not rounded, at a hundredth.',
    cases: cases(1, (insideDiameter, flow) => water.velocity.kernel({ insideDiameter, flow }) / FOOT),
    misfits: VELOCITY_MISFITS,
  },
  {
    ...SOURCE,
    id: 'water/class-160-loss',
    at: 'loss columns',
    quantity: 'pressure loss, psi per 100 ft',
    band: { relative: 0.02, absolute: 0.006 },
    bandBecause:
      'Printed to a hundredth of a psi; the printed forms of Hazen–Williams stand up to 1.5 % apart.',
    cases: cases(2, (insideDiameter, flow) => {
      const run = { insideDiameter, length: 100 * FOOT, cFactor: 150, flow };
      return (water.hazenWilliamsLoss.kernel(run) * DENSITY * STANDARD_GRAVITY) / PSI;
    }),
    misfits: LOSS_MISFITS,
  },
];
