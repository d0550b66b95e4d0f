/**
 * Pressure of water vapour over liquid water or ice, as moist-air work uses it.
 *
 *     liquid  ln p = C8/T + C9 + C10·T + C11·T² + C12·T³ + C13·ln T
 *     ice     ln p = C1/T + C2 + C3·T + C4·T² + C5·T³ + C6·T⁴ + C7·ln T
 *
 * Where the code departs from its source: the handbook changes from ice to liquid at 0 °C, where the two equations
 * differ; here they change at the triple point (0.01 °C), where they meet, so that the dew point has one answer.
 *
 * How sources disagree: see `../water/saturation`; 0.02 % at most between 0 and 50 °C.
 *
 * Source: ASHRAE Handbook-Fundamentals 2017, chapter 1, Equations 5 and 6 (Hyland and Wexler 1983).
 * Range: −100 to 200 °C.
 * Errors: outside 173.15 to 473.15 K an issue of `evaluate`; the plain functions check nothing.
 *
 * Worked example: 25 °C → 3169.2 Pa.
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';

export const PSYCHROMETRICS: Source = {
  document: 'ASHRAE Handbook-Fundamentals 2017',
  at: 'Chapter 1, Psychrometrics',
  known: 'read in a public copy',
};

/** Triple point of water, K. */
export const TRIPLE_POINT = 273.16;

/** Air temperatures at which the saturation equations hold, K. */
export const AIR_TEMPERATURE: Variable = { symbol: 'T', kind: 'temperature', min: 173.15, max: 473.15 };

/** ln p (p in Pa) over liquid water at T (K). */
export function logSaturationOverLiquid(T: number): number {
  return (
    -5800.2206 / T +
    1.3914993 +
    T * (-0.048640239 + T * (4.1764768e-5 - T * 1.4452093e-8)) +
    6.5459673 * Math.log(T)
  );
}

/** ln p (p in Pa) over ice at T (K). */
export function logSaturationOverIce(T: number): number {
  return (
    -5674.5359 / T +
    6.3925247 +
    T * (-0.009677843 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
    4.1635019 * Math.log(T)
  );
}

/** d(ln p)/dT (1/K) over liquid water at T (K). */
export function logSaturationSlopeOverLiquid(T: number): number {
  return 5800.2206 / (T * T) - 0.048640239 + T * (8.3529536e-5 - T * 4.3356279e-8) + 6.5459673 / T;
}

/** d(ln p)/dT (1/K) over ice at T (K). */
export function logSaturationSlopeOverIce(T: number): number {
  return (
    5674.5359 / (T * T) -
    0.009677843 +
    T * (1.24431402e-6 + T * (6.2243475e-9 - T * 3.7936096e-12)) +
    4.1635019 / T
  );
}

/** Saturation pressure (Pa) at T (K), over liquid water above the triple point and over ice below. */
export function saturationPressureAt(T: number): number {
  return Math.exp(T > TRIPLE_POINT ? logSaturationOverLiquid(T) : logSaturationOverIce(T));
}

/** Saturation pressure of moist air, Pa: `saturationPressureAt` with its range checked and its working shown. */
export const saturationPressure: Formula<{ readonly temperature: number }> = {
  id: 'properties.saturation-pressure',
  equation: 'ln p = C8/T + C9 + C10·T + C11·T² + C12·T³ + C13·ln T',
  inputs: { temperature: AIR_TEMPERATURE },
  result: { symbol: 'ps', kind: 'absolute-pressure' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equations 5 and 6' },
  kernel: (x) => saturationPressureAt(x.temperature),
};
