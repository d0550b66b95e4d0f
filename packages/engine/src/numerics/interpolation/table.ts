/**
 * A table of one argument: points with rising arguments, and the rule for arguments beyond them, which the caller
 * must state.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';

/**
 * `issue`: out of range is reported. `hold`: the end value goes on. `extend`: the line at the end goes on with the
 * slope it has there.
 */
export type Extrapolation = 'issue' | 'hold' | 'extend';

export interface TableSpec {
  /** Name for issues. */
  readonly where: string;
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly beyond: Extrapolation;
}

/** A table ready to be read. */
export interface Table {
  readonly min: number;
  readonly max: number;
  /** The value, or an issue when the rule is `issue` and `x` lies outside. */
  readonly at: (x: number) => Result<number>;
  /** The same as a plain number, for arguments that are known to be allowed; NaN where `at` has an issue. */
  readonly value: (x: number) => number;
}

/** Arguments finite and rising, as many values as arguments, at least two. */
export function tableIssues({ where, xs, ys }: TableSpec): Issue[] {
  if (xs.length !== ys.length || xs.length < 2)
    return [{ code: 'ill-formed', where, found: xs.length, min: 2, reason: 'table-points' }];
  if (![...xs, ...ys].every(Number.isFinite)) return [{ code: 'not-finite', where }];
  const rising = xs.every((x, i) => i === 0 || x > xs[i - 1]!);
  return rising ? [] : [{ code: 'contradiction', where, reason: 'table-not-rising' }];
}

/** How one interval is filled: the value at `x` between points `k` and `k + 1`. */
export interface Fill {
  readonly inside: (k: number, x: number) => number;
  readonly slopeAtStart: number;
  readonly slopeAtEnd: number;
}

/** Puts search and extrapolation around a way to fill the intervals. */
export function makeTable(spec: TableSpec, fill: Fill): Table {
  const { where, xs, ys, beyond } = spec;
  const [min, max] = [xs[0]!, xs.at(-1)!];
  const outside = (x: number, end: number, value: number, slope: number): number => {
    if (beyond === 'issue') return Number.NaN;
    return beyond === 'hold' ? value : value + slope * (x - end);
  };
  const value = (x: number): number => {
    if (x < min) return outside(x, min, ys[0]!, fill.slopeAtStart);
    if (x > max) return outside(x, max, ys.at(-1)!, fill.slopeAtEnd);
    return fill.inside(intervalOf(xs, x), x);
  };
  const at = (x: number): Result<number> => {
    if (!Number.isFinite(x)) return fail({ code: 'not-finite', where, found: String(x) });
    if (beyond === 'issue' && (x < min || x > max))
      return fail({ code: 'out-of-range', where, found: x, min, max });
    return ok(value(x));
  };
  return { min, max, at, value };
}

/** The interval that holds `x`, by halving; the last one for its end. */
export function intervalOf(xs: readonly number[], x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x < xs[middle]!) high = middle;
    else low = middle;
  }
  return low;
}
