/**
 * Boiling point of water by altitude, rounded to half a degree.
 *
 * Source: a kitchen table on the open web, thespruceeats.com/boiling-points-of-water-1328760; a coarse check.
 */
import { properties, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

/** ft, °F, °C. */
const ROWS = [
  [0, 212, 100],
  [500, 211, 99.5],
  [1000, 210, 99],
  [1500, 209, 98.5],
  [2000, 208, 98],
  [2500, 207, 97.5],
  [3000, 206, 97],
  [3500, 205.5, 96],
  [4000, 204, 95.5],
  [4500, 203.5, 95],
  [5000, 202, 94.5],
  [5500, 201.5, 94],
  [6000, 200.5, 93.5],
  [6500, 199.5, 93],
  [7000, 198.5, 92.5],
  [7500, 198, 92],
  [8000, 197, 91.5],
  [8500, 196, 91],
  [9000, 195, 90.5],
  [9500, 194, 90],
  [10000, 193, 89.5],
] as const;

const boiling = (feet: number) =>
  properties.boilingPoint.kernel({ altitude: feet * quantity.FOOT }) - quantity.ZERO_CELSIUS;

const COMMON = {
  area: 'altitude',
  kind: 'published',
  document: 'Boiling points of water by altitude, thespruceeats.com',
  at: 'table of half degrees',
} as const;

export const BOILING_TABLE_SUITES: readonly Suite[] = [
  {
    ...COMMON,
    id: 'altitude/boiling-table-fahrenheit',
    quantity: 'boiling point, °F',
    band: { absolute: 1 },
    bandBecause: 'rounded to half a degree, and not evenly: steps of 0.5, 1 and 1.5 stand side by side',
    cases: ROWS.map(([feet, published]) => ({
      id: `${feet} ft`,
      published,
      computed: () => 32 + 1.8 * boiling(feet),
    })),
  },
  {
    ...COMMON,
    id: 'altitude/boiling-table-celsius',
    quantity: 'boiling point, °C',
    band: { absolute: 5 / 9 },
    bandBecause: 'one degree Fahrenheit, as in the other column',
    cases: ROWS.map(([feet, , published]) => ({
      id: `${feet} ft`,
      published,
      computed: () => boiling(feet),
    })),
  },
];
