/**
 * Temperature of undisturbed ground by depth and day.
 *
 *     T(z, t) = Tm − A·e^(−z/d)·cos(2π·(t − t0)/365.25 d − z/d),   d = √(α·365.25 d/π)
 *
 * Tm and A are the mean and half the yearly swing at the surface, t0 its coldest day. The surface is taken to follow
 * the first harmonic of the monthly air means: real ground under grass or snow swings less, under paving more, and
 * stands up to 2 K warmer than the air in the mean of the year.
 *
 * Source: Kusuda and Achenbach (1965), ASHRAE Transactions 71(1):61 (from memory); the diffusivity 2.3225760e-3
 * m2/day is the one printed in the headers of typical-year weather files, a dry soil. Moist soils reach 0.05 to 0.1.
 * Range: depth from 0 m; diffusivity 1e-3 to 0.2 m2/day.
 * Errors: none; the functions are total.
 *
 * Worked example: Tm 10 °C, A 12 K, coldest 20 January, α 0.05 m2/day → at 2 m, d = 2.41 m: 4.9 °C at the coldest, 48
 * days late.
 */
import { DAY } from '../../quantity/index.ts';
import { MONTHS, monthLengths, monthStarts } from './calendar.ts';

const DAYS_A_YEAR = 365.25;

/** α of typical-year weather file headers, m2/s. */
export const HEADER_DIFFUSIVITY = 2.322576e-3 / DAY;
/** α of a moist soil, m2/s: common practice, no source. */
export const MOIST_DIFFUSIVITY = 0.05 / DAY;

/** A wave over the year. */
export interface YearWave {
  /** Tm, K. */
  readonly mean: number;
  /** A, K. */
  readonly amplitude: number;
  /** t0, days after the new year. */
  readonly coldest: number;
}

/** First harmonic of twelve monthly means (K), corrected for what averaging over a month takes off it. */
export function yearWave(months: readonly number[]): YearWave {
  const starts = monthStarts(false);
  const lengths = monthLengths(false);
  const mean = months.reduce((sum, T) => sum + T, 0) / MONTHS;
  let [cosine, sine] = [0, 0];
  for (let m = 0; m < MONTHS; m++) {
    const angle = (2 * Math.PI * ((starts[m] ?? 0) + (lengths[m] ?? 0) / 2)) / 365;
    // The mean is taken off first: months of unequal length would let it leak into the harmonic.
    const above = (months[m] ?? 0) - mean;
    cosine += (above * Math.cos(angle)) / (MONTHS / 2);
    sine += (above * Math.sin(angle)) / (MONTHS / 2);
  }
  const ofMonth = Math.PI / MONTHS / Math.sin(Math.PI / MONTHS);
  const coldest = (Math.atan2(-sine, -cosine) / (2 * Math.PI)) * DAYS_A_YEAR;
  return {
    mean,
    amplitude: Math.hypot(cosine, sine) * ofMonth,
    coldest: (coldest + DAYS_A_YEAR) % DAYS_A_YEAR,
  };
}

export interface GroundPoint {
  readonly surface: YearWave;
  /** z, m. */
  readonly depth: number;
  /** t, days after the new year. */
  readonly day: number;
  /** α, m2/s. */
  readonly diffusivity: number;
}

/** T(z, t), K. */
export function groundTemperature({ surface, depth, day, diffusivity }: GroundPoint): number {
  const reach = Math.sqrt((diffusivity * DAYS_A_YEAR * DAY) / Math.PI);
  const phase = (2 * Math.PI * (day - surface.coldest)) / DAYS_A_YEAR - depth / reach;
  return surface.mean - surface.amplitude * Math.exp(-depth / reach) * Math.cos(phase);
}
