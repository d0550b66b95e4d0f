/**
 * The standard atmosphere at 15 altitudes.
 *
 * Source: U.S. Standard Atmosphere 1976 (NOAA-S/T 76-1562), first layer, worked from its defining constants; boiling
 * point of water at that pressure by IAPWS-IF97.
 */
import { properties, quantity } from '@firstfire/engine';
import type { Band, Suite } from '../suite.ts';

/** m, K, Pa, inHg, kg/m3, °C, °F. */
const ROWS = [
  [0, 288.15, 101325.0, 29.921, 1.225, 99.97, 212.0],
  [250, 286.525, 98357.7, 29.045, 1.1959, 99.14, 210.5],
  [500, 284.9, 95461.3, 28.19, 1.1673, 98.31, 209.0],
  [750, 283.276, 92634.6, 27.355, 1.1392, 97.48, 207.5],
  [1000, 281.651, 89876.3, 26.54, 1.1117, 96.65, 206.0],
  [1250, 280.027, 87185.1, 25.746, 1.0846, 95.82, 204.5],
  [1500, 278.402, 84559.7, 24.97, 1.0581, 94.98, 203.0],
  [1750, 276.778, 81998.9, 24.214, 1.0321, 94.15, 201.5],
  [2000, 275.154, 79501.4, 23.477, 1.0066, 93.32, 200.0],
  [2250, 273.53, 77066.1, 22.758, 0.9815, 92.48, 198.5],
  [2500, 271.906, 74691.8, 22.056, 0.957, 91.65, 197.0],
  [2750, 270.283, 72377.2, 21.373, 0.9329, 90.81, 195.5],
  [3000, 268.659, 70121.2, 20.707, 0.9093, 89.98, 194.0],
  [3250, 267.036, 67922.6, 20.058, 0.8861, 89.14, 192.5],
  [3500, 265.413, 65780.4, 19.425, 0.8634, 88.3, 190.9],
] as const;

interface Column {
  readonly id: string;
  readonly quantity: string;
  readonly at: number;
  readonly band: Band;
  readonly of: (altitude: number) => number;
}

const { boilingPoint, standardDensity, standardPressure, standardTemperature } = properties;
const celsius = (altitude: number) => boilingPoint.kernel({ altitude }) - quantity.ZERO_CELSIUS;

const COLUMNS: readonly Column[] = [
  {
    id: 'temperature',
    quantity: 'temperature, K',
    at: 1,
    band: { absolute: 6e-4 },
    of: (altitude) => standardTemperature.kernel({ altitude }),
  },
  {
    id: 'pressure',
    quantity: 'pressure, Pa',
    at: 2,
    band: { absolute: 0.06 },
    of: (altitude) => standardPressure.kernel({ altitude }),
  },
  {
    id: 'pressure-inhg',
    quantity: 'pressure, inHg',
    at: 3,
    band: { absolute: 6e-4 },
    of: (altitude) => standardPressure.kernel({ altitude }) / quantity.INCH_OF_MERCURY,
  },
  {
    id: 'density',
    quantity: 'density, kg/m3',
    at: 4,
    band: { absolute: 6e-5 },
    of: (altitude) => standardDensity.kernel({ altitude }),
  },
  { id: 'boiling', quantity: 'boiling point, °C', at: 5, band: { absolute: 6e-3 }, of: celsius },
  {
    id: 'boiling-f',
    quantity: 'boiling point, °F',
    at: 6,
    band: { absolute: 0.06 },
    of: (altitude) => 32 + 1.8 * celsius(altitude),
  },
];

export const STANDARD_ATMOSPHERE_SUITES: readonly Suite[] = COLUMNS.map((column) => ({
  id: `altitude/standard-atmosphere-${column.id}`,
  area: 'altitude',
  kind: 'stored',
  document: 'U.S. Standard Atmosphere 1976',
  at: 'first layer, 0 to 3500 m',
  quantity: column.quantity,
  band: column.band,
  bandBecause: 'half of the last printed digit, and a tenth more for the conversion',
  cases: ROWS.map((row) => ({
    id: `${row[0]} m`,
    published: row[column.at]!,
    computed: () => column.of(row[0]),
  })),
}));
