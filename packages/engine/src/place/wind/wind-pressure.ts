/**
 * Pressure of the wind where it is stopped.
 *
 *     q = ½·ρ·Kz·V²        ρ = 1.225 kg/m3 (15 °C, sea level)
 *
 * Kz is the share of the pressure that is left near the ground: 0.85 in open country, 0.57 to 0.70 among houses and
 * trees, below 15 ft. The standard's factor in SI, 0.613, is half of that density. Its further factors (direction,
 * hills) are taken as 1: on the safe side for direction, and nothing for a heater on a crest.
 *
 * Source: ASCE/SEI 7-16, equation 26.10-1 and Table 26.10-1; from memory.
 * Range: wind 0 to 110 m/s, Kz 0.3 to 1.5. Errors: range issues of `evaluate`.
 * Worked example: 115 mph (51.41 m/s), Kz 0.85 → 1377 Pa (28.8 psf).
 */
import type { Formula, Source } from '../../trace/index.ts';

const HALF_DENSITY = 1.225 / 2;

export const WIND_SOURCE: Source = {
  document: 'ASCE/SEI 7-16',
  at: 'equation 26.10-1 and Table 26.10-1',
  known: 'from memory',
};

export interface Wind {
  /** Design wind speed, a gust of 3 s at 10 m, m/s. */
  readonly windSpeed: number;
  /** Kz. */
  readonly exposure: number;
}

/** Velocity pressure, Pa. */
export const windPressure: Formula<Wind> = {
  id: 'place.wind-pressure',
  equation: 'q = ½·ρ·Kz·V²',
  inputs: {
    windSpeed: { symbol: 'V', kind: 'velocity', min: 0, max: 110 },
    exposure: { symbol: 'Kz', kind: 'ratio', min: 0.3, max: 1.5 },
  },
  result: { symbol: 'q', kind: 'pressure-difference' },
  source: WIND_SOURCE,
  kernel: (x) => HALF_DENSITY * x.exposure * x.windSpeed ** 2,
};
