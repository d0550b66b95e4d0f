/** Plastic pipe of ASTM D1785 and F441: printed bores and walls against the catalogue's outside diameter and wall. */
import { quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { INCH } = quantity;

/** Size, printed bore (in) and minimum wall (mm) in Schedule 40, then in Schedule 80. */
const TABLE: readonly (readonly [id: string, bore40: number, mm40: number, bore80: number, mm80: number])[] =
  [
    ['1/2', 0.622, 2.77, 0.546, 3.73],
    ['3/4', 0.824, 2.87, 0.742, 3.91],
    ['1', 1.049, 3.38, 0.957, 4.55],
    ['1-1/4', 1.38, 3.56, 1.278, 4.85],
    ['1-1/2', 1.61, 3.68, 1.5, 5.08],
    ['2', 2.067, 3.91, 1.939, 5.54],
    ['2-1/2', 2.469, 5.16, 2.323, 7.01],
    ['3', 3.068, 5.49, 2.9, 7.62],
    ['4', 4.026, 6.02, 3.826, 8.56],
    ['6', 6.065, 7.11, 5.761, 10.97],
    ['8', 7.981, 8.18, 7.625, 12.7],
  ];

const PIPES = [catalog.water.PVC_SCHEDULE_40, catalog.water.PVC_SCHEDULE_80] as const;

function cases(column: 1 | 2, value: (size: catalog.water.WaterPipeSize) => number): Case[] {
  return PIPES.flatMap((pipe, i) =>
    TABLE.map((row) => {
      const size = catalog.water.waterPipeSize(pipe, row[0]);
      return {
        id: `${pipe.id}, ${row[0]} in`,
        published: row[(column + 2 * i) as 1 | 2 | 3 | 4],
        computed: () => (size ? value(size) : Number.NaN),
      };
    }),
  );
}

const SOURCE = { area: 'water', kind: 'published', document: 'ASTM D1785' } as const;

export const PIPE_DIMENSIONS: readonly Suite[] = [
  {
    ...SOURCE,
    id: 'water/pipe-bores',
    carried: true,
    at: 'bores as tables derived from it print them',
    quantity: 'inside diameter, in',
    band: { absolute: 5e-4 },
    bandBecause: 'Printed to a thousandth of an inch.',
    cases: cases(1, (size) => size.insideDiameter / INCH),
  },
  {
    ...SOURCE,
    id: 'water/pipe-walls',
    carried: true,
    at: 'Table 2, minimum wall in millimetres',
    quantity: 'wall, mm',
    band: { absolute: 0.011 },
    bandBecause: 'The standard rounds its inches to hundredths of a millimetre, not always to the nearest.',
    cases: cases(2, (size) => (size.wall ?? Number.NaN) * 1000),
  },
];
