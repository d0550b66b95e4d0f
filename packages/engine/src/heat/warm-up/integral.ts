/**
 * The integral of a smooth function by Simpson's rule, halving an interval until both halves agree with the whole.
 *
 * Convergence: the halves agree with the whole within 15 times the share of the tolerance that falls to the interval;
 * intervals are halved at most 40 times, and where that does not do the answer is NaN.
 *
 * Source: adaptive Simpson's rule, e.g. Press et al., Numerical Recipes, section 4.2 (method only).
 */
const DEEPEST = 40;

export interface Span {
  readonly from: number;
  readonly to: number;
  /** Absolute tolerance of the whole. */
  readonly tolerance: number;
}

export function integrate(f: (x: number) => number, { from, to, tolerance }: Span): number {
  const middle = (from + to) / 2;
  const ends = { a: from, b: to, fa: f(from), fm: f(middle), fb: f(to) };
  return refine(f, ends, { whole: simpson(ends), tolerance, depth: 0 });
}

interface Panel {
  readonly a: number;
  readonly b: number;
  readonly fa: number;
  readonly fm: number;
  readonly fb: number;
}

function simpson({ a, b, fa, fm, fb }: Panel): number {
  return ((b - a) / 6) * (fa + 4 * fm + fb);
}

interface Wanted {
  readonly whole: number;
  readonly tolerance: number;
  readonly depth: number;
}

function refine(f: (x: number) => number, panel: Panel, { whole, tolerance, depth }: Wanted): number {
  const { a, b, fa, fm, fb } = panel;
  const m = (a + b) / 2;
  const left = { a, b: m, fa, fm: f((a + m) / 2), fb: fm };
  const right = { a: m, b, fa: fm, fm: f((m + b) / 2), fb };
  const [l, r] = [simpson(left), simpson(right)];
  const off = l + r - whole;
  if (Math.abs(off) <= 15 * tolerance) return l + r + off / 15;
  if (!(depth < DEEPEST)) return Number.NaN;
  const next = { tolerance: tolerance / 2, depth: depth + 1 };
  return refine(f, left, { whole: l, ...next }) + refine(f, right, { whole: r, ...next });
}
