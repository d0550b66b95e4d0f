/**
 * The least value of a function with one valley between two arguments: golden section with parabolas.
 *
 * Convergence: the argument is known to within √ε·|x| + tolerance (no method can know it better from values
 * alone). Bounded at `maxIterations` evaluations.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5 (from memory).
 * Range: finite ends, low < high. Errors: `not-finite`, `not-converged`. With several valleys the answer is one
 * of them.
 *
 * Worked example: (x − 2)² + 1 between 0 and 5 → x = 2, value 1.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import type { Interval, Scalar } from './bracket.ts';
import type { RootOptions } from './brent.ts';

export interface Minimum {
  readonly at: number;
  readonly value: number;
}

/** (3 − √5)/2. */
const GOLDEN = 0.3819660112501051;
const ROOT_EPSILON = Math.sqrt(Number.EPSILON);

/** Best, second and third best points so far, and the interval they lie in. */
interface Valley {
  low: number;
  high: number;
  x: number;
  w: number;
  v: number;
  fx: number;
  fw: number;
  fv: number;
  step: number;
  before: number;
}

/** Least value of `f` between the two ends, and where it is; see the head of this file. */
export function brentMinimum(f: Scalar, { low, high }: Interval, options: RootOptions = {}): Result<Minimum> {
  const { tolerance = 0, maxIterations = 200 } = options;
  const x = low + GOLDEN * (high - low);
  const fx = f(x);
  const t: Valley = { low, high, x, w: x, v: x, fx, fw: fx, fv: fx, step: 0, before: 0 };
  for (let k = 0; k < maxIterations; k += 1) {
    if (!Number.isFinite(t.fx)) return fail({ code: 'not-finite', where: 'minimum', found: t.x });
    const near = ROOT_EPSILON * Math.abs(t.x) + Math.max(tolerance, Number.MIN_VALUE) / 3;
    const middle = (t.low + t.high) / 2;
    if (Math.abs(t.x - middle) <= 2 * near - (t.high - t.low) / 2) return ok({ at: t.x, value: t.fx });
    chooseStep(t, middle, near);
    const u = t.x + (Math.abs(t.step) >= near ? t.step : Math.sign(t.step) * near);
    take(t, u, f(u));
  }
  return fail({ code: 'not-converged', where: 'minimum', found: t.x });
}

function chooseStep(t: Valley, middle: number, near: number): void {
  const parabola = vertex(t);
  const useful =
    Math.abs(t.before) > near &&
    Math.abs(parabola) < Math.abs(t.before) / 2 &&
    t.x + parabola > t.low + near &&
    t.x + parabola < t.high - near;
  if (useful) {
    t.before = t.step;
    t.step = parabola;
  } else {
    t.before = t.x < middle ? t.high - t.x : t.low - t.x;
    t.step = GOLDEN * t.before;
  }
}

/** From x to the vertex of the parabola through the three best points; NaN when there is none. */
function vertex({ x, w, v, fx, fw, fv }: Valley): number {
  const r = (x - w) * (fx - fv);
  const q = (x - v) * (fx - fw);
  return -((x - v) * q - (x - w) * r) / (2 * (q - r));
}

function take(t: Valley, u: number, fu: number): void {
  if (fu <= t.fx) {
    if (u >= t.x) t.low = t.x;
    else t.high = t.x;
    [t.v, t.w, t.x] = [t.w, t.x, u];
    [t.fv, t.fw, t.fx] = [t.fw, t.fx, fu];
    return;
  }
  if (u < t.x) t.low = u;
  else t.high = u;
  if (fu <= t.fw || t.w === t.x) {
    [t.v, t.w] = [t.w, u];
    [t.fv, t.fw] = [t.fw, fu];
  } else if (fu <= t.fv || t.v === t.x || t.v === t.w) {
    t.v = u;
    t.fv = fu;
  }
}
