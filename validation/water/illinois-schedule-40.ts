/**
 * Friction table of an American state code: Schedule 40 plastic pipe, C = 150, in feet of head for 100 ft.
 *
 * The code names the method by its C. Bores are those that the minimum wall leaves.
 */
import { quantity, water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { FOOT, INCH, MINUTE, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;

/** Size → gpm and the head lost in 100 ft. */
const TABLE: Readonly<Record<string, readonly (readonly [gpm: number, feet: number])[]>> = {
  '1': [
    [1, 0.07],
    [2, 0.28],
    [3, 0.6],
    [4, 1.01],
    [5, 1.52],
    [6, 2.14],
    [7, 2.89],
    [8, 3.63],
    [9, 4.57],
    [10, 5.5],
  ],
  '1-1/4': [
    [2, 0.07],
    [3, 0.16],
    [4, 0.25],
    [5, 0.39],
    [6, 0.55],
    [7, 0.76],
    [8, 0.97],
    [9, 1.21],
    [10, 1.46],
    [11, 1.77],
    [12, 2.09],
    [13, 2.42],
    [14, 2.74],
    [15, 3.06],
    [16, 3.49],
    [17, 3.93],
    [18, 4.37],
    [19, 4.81],
    [20, 5.23],
  ],
  '1-1/2': [
    [3, 0.07],
    [4, 0.12],
    [5, 0.18],
    [6, 0.25],
    [7, 0.36],
    [8, 0.46],
    [9, 0.58],
    [10, 0.7],
    [11, 0.84],
    [12, 1.01],
    [13, 1.17],
    [14, 1.33],
    [15, 1.45],
    [16, 1.65],
    [17, 1.86],
    [18, 2.07],
    [19, 2.28],
    [20, 2.46],
    [25, 3.75],
    [30, 5.22],
  ],
  '2': [
    [6, 0.07],
    [7, 0.1],
    [8, 0.14],
    [9, 0.17],
    [10, 0.21],
    [11, 0.25],
    [12, 0.3],
    [13, 0.35],
    [14, 0.39],
    [15, 0.44],
    [16, 0.5],
    [17, 0.56],
    [18, 0.62],
    [19, 0.68],
    [20, 0.74],
    [25, 1.1],
    [30, 1.54],
    [35, 2.05],
    [40, 2.62],
    [45, 3.27],
    [50, 3.98],
  ],
  '3': [
    [15, 0.07],
    [16, 0.08],
    [17, 0.09],
    [18, 0.1],
    [19, 0.11],
    [20, 0.12],
    [25, 0.16],
    [30, 0.23],
    [35, 0.3],
    [40, 0.39],
    [45, 0.48],
    [50, 0.58],
    [60, 0.81],
    [70, 1.08],
    [80, 1.38],
    [90, 1.73],
    [100, 2.09],
  ],
  '4': [
    [35, 0.07],
    [40, 0.09],
    [45, 0.12],
    [50, 0.16],
    [60, 0.21],
    [70, 0.28],
    [80, 0.37],
    [90, 0.46],
    [100, 0.55],
    [150, 1.17],
  ],
  '6': [
    [100, 0.07],
    [150, 0.16],
    [200, 0.28],
    [250, 0.41],
    [300, 0.58],
    [350, 0.78],
    [400, 0.99],
    [450, 1.22],
  ],
  '8': [
    [200, 0.07],
    [250, 0.11],
    [300, 0.16],
    [350, 0.2],
    [400, 0.26],
    [450, 0.32],
    [500, 0.38],
    [600, 0.54],
    [700, 0.72],
  ],
  '10': [
    [350, 0.07],
    [400, 0.09],
    [450, 0.11],
    [500, 0.14],
    [600, 0.18],
    [700, 0.24],
    [800, 0.32],
    [900, 0.38],
    [1000, 0.46],
  ],
};

/** Bore (m) of a size; 10 in stands in no table of the catalogue (ASTM D1785, from memory: 10.020 in). */
function bore(size: string): number {
  const found = catalog.water.waterPipeSize(catalog.water.PVC_SCHEDULE_40, size);
  return found?.insideDiameter ?? 10.02 * INCH;
}

const CASES: readonly Case[] = Object.entries(TABLE).flatMap(([size, rows]) =>
  rows.map(([gpm, feet]) => ({
    id: `${size} in, ${gpm} gpm`,
    published: feet,
    computed: () =>
      water.hazenWilliamsLoss.kernel({
        insideDiameter: bore(size),
        length: 100 * FOOT,
        cFactor: 150,
        flow: gpm * GPM,
      }) / FOOT,
  })),
);

const BULGE: Readonly<Record<string, readonly number[]>> = {
  '1-1/4': [11, 12, 13],
  '1-1/2': [9, 10, 11, 12, 13, 14, 18],
  '2': [12, 13, 16, 17, 18, 19],
};

const MISFITS = Object.entries(BULGE).flatMap(([size, flows]) =>
  flows.map((gpm) => `${size} in, ${gpm} gpm`),
);

export const ILLINOIS_SCHEDULE_40: Suite = {
  id: 'water/illinois-schedule-40',
  area: 'water',
  kind: 'published',
  document: 'Illinois Administrative Code, Title 77, Part 906',
  at: 'Appendix A, Exhibit I (Register Vol. 49 No. 2, 2025)',
  quantity: 'head loss, ft per 100 ft',
  band: { relative: 0.02, absolute: 0.0165 },
  bandBecause:
    'Small entries step by 0.01 psi (0.0231 ft), as if turned from a table in psi: half a step, and half of the printed hundredth. The printed forms of Hazen–Williams stand up to 1.5 % apart and the table names none.',
  cases: CASES,
  misfits: [
    {
      cases: MISFITS,
      because:
        'A bulge in the printed columns: these entries stand 2 to 6 % over the law that the entries before and after them follow.',
    },
  ],
};
