/** The quantities at a water surface and the ranges in which the correlations may be used. */
import { RELATIVE_HUMIDITY } from '../../properties/index.ts';
import type { Variable } from '../../trace/index.ts';

export const WATER_TEMPERATURE: Variable = { symbol: 'Tw', kind: 'temperature', min: 273.15, max: 323.15 };
export const AIR_TEMPERATURE_AT_POOL: Variable = {
  symbol: 'Ta',
  kind: 'temperature',
  min: 223.15,
  max: 333.15,
};
export const AIR_SPEED: Variable = { symbol: 'v', kind: 'velocity', min: 0, max: 15 };
export const PRESSURE_AT_POOL: Variable = { symbol: 'P', kind: 'absolute-pressure', min: 5e4, max: 1.1e5 };
export const ACTIVITY: Variable = { symbol: 'Fa', kind: 'ratio', min: 0, max: 5 };
export { RELATIVE_HUMIDITY };

/** Water and the air over it. */
export interface WaterAndAir {
  /** Tw, K. */
  readonly waterTemperature: number;
  /** Ta, K. */
  readonly airTemperature: number;
  /** φ, 0 to 1. */
  readonly relativeHumidity: number;
}

export const WATER_AND_AIR = {
  waterTemperature: WATER_TEMPERATURE,
  airTemperature: AIR_TEMPERATURE_AT_POOL,
  relativeHumidity: RELATIVE_HUMIDITY,
} as const;
