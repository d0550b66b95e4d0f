/**
 * A root of a continuous function between two arguments of opposite sign: inverse quadratic interpolation or the
 * secant where they behave, halving where they do not.
 *
 * Convergence: the root is known to within 2·ε·|x| + tolerance/2, or the function is exactly zero. Bounded at
 * `maxIterations` evaluations.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4 (from memory).
 * Range: finite ends. Errors: `no-solution` when the ends do not differ in sign; `not-converged` at the bound;
 * `not-finite` when the function is.
 *
 * Worked example: cos x − x between 0 and 1 → 0.7390851332.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import type { Interval, Scalar } from './bracket.ts';

export interface RootOptions {
  /** Greatest error of the root, in its own unit; 0 asks for all the digits there are. */
  readonly tolerance?: number;
  readonly maxIterations?: number;
}

/** The best estimate, the one before it, and the end of opposite sign. */
interface Trial {
  a: number;
  b: number;
  c: number;
  fa: number;
  fb: number;
  fc: number;
  step: number;
  before: number;
}

/** Root of `f` between the two ends, in the unit of its argument; see the head of this file. */
export function brentRoot(f: Scalar, { low, high }: Interval, options: RootOptions = {}): Result<number> {
  const { tolerance = 0, maxIterations = 100 } = options;
  const t: Trial = { a: low, b: high, c: high, fa: f(low), fb: f(high), fc: 0, step: 0, before: 0 };
  if (t.fa === 0) return ok(low);
  if (t.fb === 0) return ok(high);
  if (Number.isNaN(t.fa + t.fb)) return fail({ code: 'not-finite', where: 'root' });
  if (t.fa > 0 === t.fb > 0)
    return fail({ code: 'no-solution', where: 'root', reason: 'no-sign-change', min: low, max: high });
  t.fc = t.fb;
  for (let k = 0; k < maxIterations; k += 1) {
    keepBracket(t);
    const near = 2 * Number.EPSILON * Math.abs(t.b) + tolerance / 2;
    const half = (t.c - t.b) / 2;
    if (Math.abs(half) <= near || t.fb === 0) return ok(t.b);
    chooseStep(t, half, near);
    t.a = t.b;
    t.fa = t.fb;
    t.b += Math.abs(t.step) > near ? t.step : Math.sign(half) * near;
    t.fb = f(t.b);
    if (Number.isNaN(t.fb)) return fail({ code: 'not-finite', where: 'root', found: t.b });
  }
  return fail({ code: 'not-converged', where: 'root', found: t.b });
}

/** `b` is the best of the two ends, `c` the other: signs differ. */
function keepBracket(t: Trial): void {
  if (t.fb > 0 === t.fc > 0) {
    t.c = t.a;
    t.fc = t.fa;
    t.step = t.b - t.a;
    t.before = t.step;
  }
  if (Math.abs(t.fc) >= Math.abs(t.fb)) return;
  [t.a, t.b, t.c] = [t.b, t.c, t.b];
  [t.fa, t.fb, t.fc] = [t.fb, t.fc, t.fb];
}

function chooseStep(t: Trial, half: number, near: number): void {
  const bisect = Math.abs(t.before) < near || Math.abs(t.fa) <= Math.abs(t.fb);
  const tried = bisect ? Number.POSITIVE_INFINITY : interpolated(t, half);
  const inside = tried * Math.sign(half) > 0 && Math.abs(tried) < 1.5 * Math.abs(half) - Math.abs(near) / 2;
  const shrinking = Math.abs(tried) < Math.abs(t.before) / 2;
  if (inside && shrinking) {
    t.before = t.step;
    t.step = tried;
  } else {
    t.step = half;
    t.before = half;
  }
}

/** Secant through two points, inverse parabola through three. */
function interpolated(t: Trial, half: number): number {
  const s = t.fb / t.fa;
  if (t.a === t.c) return (2 * half * s) / (s - 1);
  const q = t.fa / t.fc;
  const r = t.fb / t.fc;
  const p = s * (2 * half * q * (q - r) - (t.b - t.a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
