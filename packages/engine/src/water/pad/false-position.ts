/**
 * Root of a nearly straight function whose values at both ends are known already.
 *
 * The chord's zero, again and again; where one end stays put twice its value is halved (the Illinois rule), so that a
 * bend does not hold the search up. Three or four evaluations are usual for heater flow against bypass flow.
 *
 * Convergence: |f| at most `small`. Bounded at 60 evaluations. Errors: `not-converged`; `no-solution` without a change
 * of sign; `not-finite` where the function is.
 *
 * Source: Dowell and Jarratt, BIT 11 (1971) (from memory). Worked example: x² − 2 from 1 to 2 → 1.4142.
 */
import { fail, ok, type Result } from '../../trace/index.ts';

export interface KnownEnds {
  readonly low: number;
  readonly atLow: number;
  readonly high: number;
  readonly atHigh: number;
  /** |f| that counts as zero. */
  readonly small: number;
}

const EVALUATIONS_AT_MOST = 60;

/** The last argument evaluated is the root returned, so that what the function left behind belongs to it. */
export function falsePosition(f: (x: number) => number, ends: KnownEnds): Result<number> {
  let { low, atLow, high, atHigh } = ends;
  if (atLow > 0 === atHigh > 0) return fail({ code: 'no-solution', where: 'root', reason: 'no-sign-change' });
  let kept = 0;
  for (let k = 0; k < EVALUATIONS_AT_MOST; k++) {
    const x = (low * atHigh - high * atLow) / (atHigh - atLow);
    const value = f(x);
    if (Number.isNaN(value)) return fail({ code: 'not-finite', where: 'root', found: x });
    if (Math.abs(value) <= ends.small) return ok(x);
    if (value > 0 === atLow > 0) {
      low = x;
      atLow = value;
      if (kept === 1) atHigh /= 2;
      kept = 1;
    } else {
      high = x;
      atHigh = value;
      if (kept === -1) atLow /= 2;
      kept = -1;
    }
  }
  return fail({ code: 'not-converged', where: 'root', found: low });
}
