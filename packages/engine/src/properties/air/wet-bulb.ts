/**
 * Wet-bulb temperature, and the humidity ratio a wet bulb tells: the pair an installer's sling psychrometer needs.
 *
 *     over water   W = ((2501 − 2.326·t*)·Ws* − 1.006·(t − t*)) / (2501 + 1.86·t − 4.186·t*)
 *     over ice     W = ((2830 − 0.24·t*)·Ws* − 1.006·(t − t*)) / (2830 + 1.86·t − 2.1·t*)
 *
 * with t and t* in °C. The wet bulb is found by halving between the dew point and the dry bulb, where W(t*) rises
 * all the way; at 0 °C it jumps by the heat of melting, so that a slope would mislead.
 *
 * Convergence: bracket under 1e-7 K, at most 60 halvings (which divide any bracket by 1e18).
 *
 * Source: ASHRAE Handbook-Fundamentals 2017, chapter 1, Equations 33 and 35.
 * Range: −100 to 200 °C, 10 to 200 kPa, humidity ratio up to saturation at the dry bulb.
 * Errors: out of range an issue; more vapour than saturation holds has no wet bulb (`no-solution`).
 *
 * Worked example: 25 °C, 50 %, 101.325 kPa → 17.9 °C.
 */
import { ZERO_CELSIUS } from '../../quantity/index.ts';
import type { Formula } from '../../trace/index.ts';
import { dewPointOf } from './dew-point.ts';
import { BAROMETRIC, HUMIDITY_RATIO, humidityRatioAt, WATER_TO_AIR } from './humidity.ts';
import { AIR_TEMPERATURE, PSYCHROMETRICS, saturationPressureAt, TRIPLE_POINT } from './saturation.ts';

const TOLERANCE = 1e-7;
const MOST_STEPS = 60;
/** Vapour so thin that a frost point under −100 °C stands for it, kg/kg. */
const DRY = 1e-8;

/** Humidity ratio (kg/kg) told by a dry bulb and a wet bulb (K) under a pressure (Pa). */
export function humidityRatioOfWetBulb(T: number, wetBulb: number, pressure: number): number {
  const t = T - ZERO_CELSIUS;
  const star = wetBulb - ZERO_CELSIUS;
  const saturated = humidityRatioAt(saturationPressureAt(wetBulb), pressure);
  return wetBulb >= TRIPLE_POINT
    ? ((2501 - 2.326 * star) * saturated - 1.006 * (t - star)) / (2501 + 1.86 * t - 4.186 * star)
    : ((2830 - 0.24 * star) * saturated - 1.006 * (t - star)) / (2830 + 1.86 * t - 2.1 * star);
}

/** Wet bulb (K) of a dry bulb (K), humidity ratio (kg/kg) and pressure (Pa); NaN above saturation. */
export function wetBulbOf(T: number, ratio: number, pressure: number): number {
  if (ratio > humidityRatioAt(saturationPressureAt(T), pressure) * (1 + 1e-9)) return Number.NaN;
  const vapour = (pressure * Math.max(ratio, DRY)) / (WATER_TO_AIR + Math.max(ratio, DRY));
  let low = Math.min(dewPointOf(vapour), T);
  let high = T;
  for (let step = 0; step < MOST_STEPS && high - low > TOLERANCE; step++) {
    const middle = (low + high) / 2;
    if (humidityRatioOfWetBulb(T, middle, pressure) > ratio) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

export interface MoistAirState {
  /** T, K. */
  readonly temperature: number;
  /** W, kg/kg. */
  readonly humidityRatio: number;
  /** P, Pa. */
  readonly pressure: number;
}

/** Wet-bulb temperature, K. */
export const wetBulb: Formula<MoistAirState> = {
  id: 'properties.wet-bulb',
  equation: 'W(t, t*, P) = W',
  inputs: { temperature: AIR_TEMPERATURE, humidityRatio: HUMIDITY_RATIO, pressure: BAROMETRIC },
  result: { symbol: 'T*', kind: 'temperature' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equations 33 and 35, inverted' },
  kernel: (x) => wetBulbOf(x.temperature, x.humidityRatio, x.pressure),
};

export interface WetBulbReading {
  /** T, K. */
  readonly temperature: number;
  /** T*, K. */
  readonly wetBulb: number;
  /** P, Pa. */
  readonly pressure: number;
}

/** Humidity ratio of a wet-bulb reading, kg/kg. A wet bulb above the dry bulb, or too far below, has none. */
export const wetBulbHumidityRatio: Formula<WetBulbReading> = {
  id: 'properties.wet-bulb-humidity-ratio',
  equation: 'W = ((2501 − 2.326·t*)·Ws* − 1.006·(t − t*))/(2501 + 1.86·t − 4.186·t*)',
  inputs: {
    temperature: AIR_TEMPERATURE,
    wetBulb: { ...AIR_TEMPERATURE, symbol: 'T*' },
    pressure: BAROMETRIC,
  },
  result: { symbol: 'W', kind: 'ratio' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equations 33 and 35' },
  kernel: (x) => {
    if (x.wetBulb > x.temperature) return Number.NaN;
    const ratio = humidityRatioOfWetBulb(x.temperature, x.wetBulb, x.pressure);
    return ratio >= 0 ? ratio : Number.NaN;
  },
};
