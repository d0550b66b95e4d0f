/**
 * Two arguments between which a function changes its sign, found by widening an interval.
 *
 * Source: the usual expansion by a constant factor; e.g. Press et al., Numerical Recipes, section 9.1 (method only).
 * Range: finite ends with `low < high`. Errors: `no-solution` when the sign never changes within `limit` or the
 * bound of 60 widenings; `not-finite` when the function is.
 *
 * Worked example: f = x² − 50 from 0 to 1 → 0 to 8 or wider on the right.
 */
import { fail, ok, type Result } from '../../trace/index.ts';

export type Scalar = (x: number) => number;

export interface Interval {
  readonly low: number;
  readonly high: number;
}

const MOST_WIDENINGS = 60;
const GROWTH = 2;

/** Widens the interval at the end where |f| is smaller, never beyond `limit`. */
export function bracket(f: Scalar, first: Interval, limit: Interval): Result<Interval> {
  let { low, high } = first;
  let atLow = f(low);
  let atHigh = f(high);
  for (let k = 0; k < MOST_WIDENINGS; k += 1) {
    if (Number.isNaN(atLow) || Number.isNaN(atHigh)) return fail({ code: 'not-finite', where: 'bracket' });
    if (atLow === 0 || atHigh === 0 || atLow > 0 !== atHigh > 0) return ok({ low, high });
    if (low === limit.low && high === limit.high) break;
    const width = GROWTH * (high - low);
    const downwards = high === limit.high || (Math.abs(atLow) < Math.abs(atHigh) && low > limit.low);
    if (downwards) {
      low = Math.max(limit.low, high - width);
      atLow = f(low);
    } else {
      high = Math.min(limit.high, low + width);
      atHigh = f(high);
    }
  }
  return fail({ code: 'no-solution', where: 'bracket', reason: 'no-sign-change', min: low, max: high });
}
