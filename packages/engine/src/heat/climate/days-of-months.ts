/**
 * A value for every day, smooth from month to month, whose mean in each month is the month's own.
 *
 * Each day starts at its month's mean and is replaced by the mean of itself and its two neighbours, thirty times;
 * after each pass every month is shifted back to its mean. The year closes on itself. Where a value may not fall
 * below a floor (a wind of 0), days under it are lifted and the others of the month give up the same amount in
 * proportion to what they have above it.
 *
 * Source: after Rymes and Myers (2001), Solar Energy 71(4):225, Mean preserving algorithm for smoothly interpolating
 * averaged data (from memory; the correction for floors is ours).
 * Range: twelve finite means, none below the floor.
 * Errors: none.
 */
import { MONTHS, monthStarts } from './calendar.ts';

const PASSES = 30;

export interface MonthlyMeans {
  readonly means: readonly number[];
  readonly leap: boolean;
  readonly floor?: number;
}

/** One value a day. */
export function daysOfMonths({ means, leap, floor = Number.NEGATIVE_INFINITY }: MonthlyMeans): Float64Array {
  const starts = monthStarts(leap);
  const days = new Float64Array(starts.at(-1) ?? 0);
  for (let m = 0; m < MONTHS; m++) days.fill(means[m] ?? 0, starts[m], starts[m + 1]);
  for (let pass = 0; pass < PASSES; pass++) {
    smooth(days);
    for (let m = 0; m < MONTHS; m++) restore(days.subarray(starts[m], starts[m + 1]), means[m] ?? 0, floor);
  }
  return days;
}

function smooth(days: Float64Array): void {
  const n = days.length;
  const first = days[0] ?? 0;
  let before = days[n - 1] ?? 0;
  for (let i = 0; i < n; i++) {
    const here = days[i] ?? 0;
    const after = i + 1 < n ? (days[i + 1] ?? 0) : first;
    days[i] = (before + here + after) / 3;
    before = here;
  }
}

/** Brings one month back to its mean, by a shift, then by what stands above the floor. */
function restore(days: Float64Array, mean: number, floor: number): void {
  const shift = mean - meanOf(days);
  for (let i = 0; i < days.length; i++) days[i] = Math.max(floor, (days[i] ?? 0) + shift);
  const found = meanOf(days);
  if (!Number.isFinite(floor) || !(found > mean && found > floor)) return;
  const ratio = (mean - floor) / (found - floor);
  for (let i = 0; i < days.length; i++) days[i] = floor + ((days[i] ?? 0) - floor) * ratio;
}

/** Arithmetic mean. */
export function meanOf(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}
