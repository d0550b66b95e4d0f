/**
 * The columns of a weather file that a pool feels, with the value that stands for *missing* and the range a value may
 * have. At or above its missing value a field holds nothing; a blank field holds nothing either.
 *
 * Source: EnergyPlus Weather File (EPW) Data Dictionary, EnergyPlus Auxiliary Programs, fields N6 to N23.
 */
export interface Column {
  /** Place in the comma-separated line, from 0. */
  readonly at: number;
  readonly missing: number;
  readonly min: number;
  readonly max: number;
}

export const COLUMNS = {
  /** °C. */
  airTemperature: { at: 6, missing: 99.9, min: -70, max: 70 },
  /** °C. */
  dewPoint: { at: 7, missing: 99.9, min: -70, max: 70 },
  /** %. */
  relativeHumidity: { at: 8, missing: 999, min: 0, max: 110 },
  /** Pa. */
  pressure: { at: 9, missing: 999_999, min: 31_000, max: 120_000 },
  /** Wh/m2 in the hour. */
  skyRadiation: { at: 12, missing: 9999, min: 0, max: 9998 },
  /** Wh/m2 in the hour. */
  globalRadiation: { at: 13, missing: 9999, min: 0, max: 1600 },
  /** m/s. */
  windSpeed: { at: 21, missing: 999, min: 0, max: 40 },
  /** Tenths. */
  totalCover: { at: 22, missing: 99, min: 0, max: 10 },
  /** Tenths. */
  opaqueCover: { at: 23, missing: 99, min: 0, max: 10 },
} as const satisfies Record<string, Column>;

export type ColumnName = keyof typeof COLUMNS;
export const COLUMN_NAMES = Object.keys(COLUMNS) as readonly ColumnName[];
export const FIELDS_NEEDED = 24;
