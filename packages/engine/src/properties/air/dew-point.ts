/**
 * Dew point (frost point below 0.01 °C): the temperature at which a vapour pressure is the saturation pressure.
 *
 *     ps(Td) = pw
 *
 * Newton's method on ln p, which is nearly straight in 1/T: from a guess within a few kelvins it halves its digits
 * in three or four steps. Liquid and ice are solved on their own smooth branch, chosen by the pressure.
 *
 * Convergence: |ΔT| < 1e-9 K, at most 40 steps; else the answer is NaN, which `evaluate` reports as `no-solution`.
 *
 * Source: the inverse of ASHRAE Handbook-Fundamentals 2017, chapter 1, Equations 5 and 6 (its own Equations 37 and
 * 38 are fits good to 0.3 K and are not used).
 * Range: 0.002 Pa (−100 °C) to 1.55 MPa (200 °C).
 * Errors: a vapour pressure outside the range is an issue; perfectly dry air has no dew point.
 *
 * Worked example: 1584.6 Pa → 13.87 °C.
 */
import type { Formula } from '../../trace/index.ts';
import {
  logSaturationOverIce,
  logSaturationOverLiquid,
  logSaturationSlopeOverIce,
  logSaturationSlopeOverLiquid,
  PSYCHROMETRICS,
  TRIPLE_POINT,
} from './saturation.ts';

const TOLERANCE = 1e-9;
const MOST_STEPS = 40;
const LOG_TRIPLE_PRESSURE = logSaturationOverLiquid(TRIPLE_POINT);

/** Dew point (K) of a vapour pressure (Pa); NaN where there is none. */
export function dewPointOf(vapour: number): number {
  const wanted = Math.log(vapour);
  return wanted >= LOG_TRIPLE_PRESSURE
    ? invert(wanted, logSaturationOverLiquid, logSaturationSlopeOverLiquid)
    : invert(wanted, logSaturationOverIce, logSaturationSlopeOverIce);
}

function invert(wanted: number, log: (T: number) => number, slope: (T: number) => number): number {
  let T = 1 / (1 / TRIPLE_POINT - (wanted - LOG_TRIPLE_PRESSURE) / 5700);
  for (let step = 0; step < MOST_STEPS; step++) {
    const change = (wanted - log(T)) / slope(T);
    T += change;
    if (Math.abs(change) < TOLERANCE) return T;
  }
  return Number.NaN;
}

/** Dew point of a vapour pressure, K. */
export const dewPoint: Formula<{ readonly vapourPressure: number }> = {
  id: 'properties.dew-point',
  equation: 'ps(Td) = pw',
  inputs: { vapourPressure: { symbol: 'pw', kind: 'absolute-pressure', min: 0.002, max: 1.55e6 } },
  result: { symbol: 'Td', kind: 'temperature' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equations 5 and 6, inverted' },
  kernel: (x) => dewPointOf(x.vapourPressure),
};
