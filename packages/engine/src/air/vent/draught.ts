/**
 * Draught of a column of warm flue gas.
 *
 *     Δp = g·H·p/R·(1/Ta − 1/Tg)
 *
 * Flue gas is taken as air at its temperature: it is 1 to 3 % lighter at natural-gas excess airs, so the true draught
 * is a little more. What friction takes is not in it.
 *
 * Source: hydrostatics and the ideal-gas law, as in ASHRAE Handbook – HVAC Systems and Equipment, chimneys (from memory).
 * Range: height 0 to 100 m, gas up to 800 °C, barometer 50 to 110 kPa. Errors: range issues of `evaluate`.
 * Worked example: 10 m, gas 200 °C, air 10 °C, sea level → 49.1 Pa.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

/** Of dry air, J/(kg K). */
export const AIR_CONSTANT = 287.055;

export const DRAUGHT_SOURCE: Source = {
  document: 'Hydrostatics',
  at: 'two columns of ideal gas',
  known: 'physics',
};

export interface WarmColumn {
  /** H, m. */
  readonly height: number;
  /** Tg, mean of the column, K. */
  readonly gasTemperature: number;
  /** Ta outdoors, K. */
  readonly airTemperature: number;
  /** p, absolute, Pa. */
  readonly atmosphere: number;
}

/** Theoretical draught, Pa; below zero where the column is colder than the air. */
export const draught: Formula<WarmColumn> = {
  id: 'air.draught',
  equation: 'Δp = g·H·p/R·(1/Ta − 1/Tg)',
  inputs: {
    height: { symbol: 'H', kind: 'length', min: 0, max: 100 },
    gasTemperature: { symbol: 'Tg', kind: 'temperature', min: 223.15, max: 1073.15 },
    airTemperature: { symbol: 'Ta', kind: 'temperature', min: 213.15, max: 333.15 },
    atmosphere: { symbol: 'p', kind: 'absolute-pressure', min: 5e4, max: 1.1e5 },
  },
  result: { symbol: 'Δp', kind: 'pressure-difference' },
  source: DRAUGHT_SOURCE,
  kernel: (x) =>
    ((STANDARD_GRAVITY * x.height * x.atmosphere) / AIR_CONSTANT) *
    (1 / x.airTemperature - 1 / x.gasTemperature),
};
