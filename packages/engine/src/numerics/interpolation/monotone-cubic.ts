/**
 * A smooth curve through the points of a table that rises where the points rise and falls where they fall: cubic
 * pieces whose slopes at the points are limited so that none overshoots.
 *
 * Slope at an inner point: zero where the lines on both sides differ in sign, else their weighted harmonic mean
 * (weights 2·h₁ + h₀ and h₁ + 2·h₀). At the ends: the three-point formula, limited the same way.
 *
 * Source: Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980); the mean after Fritsch and Butland, SIAM J. Sci.
 * Stat. Comput. 5 (1984) (from memory). Range and errors: as `linear.ts`; with `extend` the slope at the end point
 * goes on.
 * Worked example: (0, 0), (1, 1), (2, 1) at 1.5 → 1 (no overshoot where the table is flat).
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import { makeTable, type Table, type TableSpec, tableIssues } from './table.ts';

/** A table read along cubics that do not overshoot; see the head of this file. */
export function monotoneCubicTable(spec: TableSpec): Result<Table> {
  const issues = tableIssues(spec);
  if (issues.length > 0) return fail(...issues);
  const { xs, ys } = spec;
  const slopes = pointSlopes(xs, ys);
  const inside = (k: number, x: number): number => {
    const h = xs[k + 1]! - xs[k]!;
    const t = (x - xs[k]!) / h;
    const u = 1 - t;
    const left = ys[k]! * (1 + 2 * t) + slopes[k]! * h * t;
    const right = ys[k + 1]! * (1 + 2 * u) - slopes[k + 1]! * h * u;
    return u * u * left + t * t * right;
  };
  return ok(makeTable(spec, { inside, slopeAtStart: slopes[0]!, slopeAtEnd: slopes.at(-1)! }));
}

function pointSlopes(xs: readonly number[], ys: readonly number[]): number[] {
  const h = xs.slice(1).map((x, k) => x - xs[k]!);
  const line = h.map((width, k) => (ys[k + 1]! - ys[k]!) / width);
  if (line.length === 1) return [line[0]!, line[0]!];
  const inner = line.slice(1).map((after, k) => harmonic([line[k]!, after], [h[k]!, h[k + 1]!]));
  const last = line.length - 1;
  return [
    endSlope([line[0]!, line[1]!], [h[0]!, h[1]!]),
    ...inner,
    endSlope([line[last]!, line[last - 1]!], [h[last]!, h[last - 1]!]),
  ];
}

type Pair = readonly [number, number];

function harmonic([before, after]: Pair, [h0, h1]: Pair): number {
  if (before * after <= 0) return 0;
  const w0 = 2 * h1 + h0;
  const w1 = h1 + 2 * h0;
  return (w0 + w1) / (w0 / before + w1 / after);
}

/** Slope at an end from the two intervals next to it, the nearer first. */
function endSlope([near, next]: Pair, [h0, h1]: Pair): number {
  const slope = ((2 * h0 + h1) * near - h0 * next) / (h0 + h1);
  if (slope * near <= 0) return 0;
  return near * next <= 0 && Math.abs(slope) > 3 * Math.abs(near) ? 3 * near : slope;
}
