/**
 * Temperature of undisturbed ground by depth and day, at a point and as the mean of the layer above it.
 *
 *     T(z, t) = Tm − A·e^(−z/d)·cos(2π·(t − t0)/365.25 d − z/d),   d = √(α·365.25 d/π)
 *     mean of 0 to z = Tm − A·Re[e^(iφ)·(1 − e^(−(1+i)·z/d))/((1 + i)·z/d)],   φ = 2π·(t − t0)/365.25 d
 *
 * Tm and A are the mean and half the yearly swing at the surface, t0 its coldest day. What a pool wall feels is the
 * mean of the layer. The surface is taken to follow the first harmonic of the monthly air means: real ground under
 * grass or snow swings less, under paving more, and stands up to 2 K warmer than the air in the mean of the year.
 *
 * How sources disagree: weather file headers print a diffusivity of 2.3225760e-3 m2/day beside their ground
 * temperatures. That figure is 0.025 ft2/h in m2 an *hour*, and only so do the temperatures beside it come out
 * (misprint of the unit; see the validation). Their temperatures are means of the layer, not those at its foot.
 *
 * Source: Kusuda and Achenbach (1965), ASHRAE Transactions 71(1):61 (from memory); the layer is its integral.
 * Range: depth from 0 m; diffusivity 1e-8 to 2e-6 m2/s.
 * Errors: none; the functions are total.
 *
 * Worked example: Tm 10 °C, A 12 K, coldest 20 January, 0.05 m2/day → at 2 m, d = 2.41 m: 4.8 °C at the coldest, 48
 * days late.
 */
import { DAY, HOUR, SQUARE_FOOT } from '../../quantity/index.ts';
import { MONTHS, monthLengths, monthStarts } from './calendar.ts';

const DAYS_A_YEAR = 365.25;

/** α of an ordinary soil, 0.025 ft2/h in m2/s: that of the ground temperatures in weather file headers. */
export const SOIL_DIFFUSIVITY = (0.025 * SQUARE_FOOT) / HOUR;

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
  const reach = dampingDepth(diffusivity);
  const phase = phaseOf(surface, day) - depth / reach;
  return surface.mean - surface.amplitude * Math.exp(-depth / reach) * Math.cos(phase);
}

/** Mean of T from the surface to z, K. */
export function groundLayerTemperature({ surface, depth, day, diffusivity }: GroundPoint): number {
  const b = depth / dampingDepth(diffusivity);
  const phase = phaseOf(surface, day);
  if (b < 1e-9) return surface.mean - surface.amplitude * Math.cos(phase);
  // (1 − e^(−(1+i)b))/(1 + i) as real and imaginary parts.
  const [c, s] = [1 - Math.exp(-b) * Math.cos(b), Math.exp(-b) * Math.sin(b)];
  const [real, imaginary] = [(c + s) / 2, (s - c) / 2];
  return surface.mean - (surface.amplitude * (real * Math.cos(phase) - imaginary * Math.sin(phase))) / b;
}

/** d: depth at which the swing has fallen to 1/e, m. */
function dampingDepth(diffusivity: number): number {
  return Math.sqrt((diffusivity * DAYS_A_YEAR * DAY) / Math.PI);
}

function phaseOf({ coldest }: YearWave, day: number): number {
  return (2 * Math.PI * (day - coldest)) / DAYS_A_YEAR;
}
