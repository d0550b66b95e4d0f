/**
 * Root of a nearly straight function whose values at both ends are known already.
 *
 * The chord's zero, again and again; from the third point on the parabola through the last three, with x as its
 * height, where that stays between the ends. Where one end stays put twice its value is halved for the next chord
 * (the Illinois rule), so that a bend does not hold the search up. Two or three evaluations are usual for heater flow
 * against bypass flow.
 *
 * Convergence: |f| at most `small`. Bounded at 60 evaluations. Errors: `not-converged`; `no-solution` without a change
 * of sign; `not-finite` where the function is.
 *
 * Source: Dowell and Jarratt, BIT 11 (1971); inverse quadratic interpolation: Brent, Algorithms for Minimization
 * Without Derivatives, 1973, chapter 4 (both from memory). Worked example: x² − 2 from 1 to 2 → 1.4142.
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

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The last argument evaluated is the root returned, so that what the function left behind belongs to it. */
export function falsePosition(f: (x: number) => number, ends: KnownEnds): Result<number> {
  let low: Point = { x: ends.low, y: ends.atLow };
  let high: Point = { x: ends.high, y: ends.atHigh };
  if (low.y > 0 === high.y > 0) return fail({ code: 'no-solution', where: 'root', reason: 'no-sign-change' });
  let dropped: Point | undefined;
  let stayed = 0;
  for (let k = 0; k < EVALUATIONS_AT_MOST; k++) {
    const x = (Math.abs(stayed) > 1 ? undefined : bent(low, high, dropped)) ?? chord(low, high, stayed);
    const y = f(x);
    if (Number.isNaN(y)) return fail({ code: 'not-finite', where: 'root', found: x });
    if (Math.abs(y) <= ends.small) return ok(x);
    if (y > 0 === low.y > 0) {
      dropped = low;
      low = { x, y };
      stayed = Math.max(stayed, 0) + 1;
    } else {
      dropped = high;
      high = { x, y };
      stayed = Math.min(stayed, 0) - 1;
    }
  }
  return fail({ code: 'not-converged', where: 'root', found: low.x });
}

/** Zero of the chord; `stayed` above 1: the high end has stayed put so often, below −1: the low end. */
function chord(low: Point, high: Point, stayed: number): number {
  const atHigh = stayed > 1 ? high.y * 0.5 ** (stayed - 1) : high.y;
  const atLow = stayed < -1 ? low.y * 0.5 ** (-stayed - 1) : low.y;
  return (low.x * atHigh - high.x * atLow) / (atHigh - atLow);
}

/** Inverse quadratic interpolation; undefined where it leaves the ends or cannot be told. */
function bent(low: Point, high: Point, other: Point | undefined): number | undefined {
  if (other === undefined || other.y === low.y || other.y === high.y) return undefined;
  const r = high.y / other.y;
  const s = high.y / low.y;
  const t = low.y / other.y;
  const step = s * (t * (r - t) * (other.x - high.x) - (1 - r) * (high.x - low.x));
  const x = high.x + step / ((t - 1) * (r - 1) * (s - 1));
  const span = Math.abs(high.x - low.x);
  const inside = Math.abs(x - low.x) < span && Math.abs(x - high.x) < span;
  return inside ? x : undefined;
}
