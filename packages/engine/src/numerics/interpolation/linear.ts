/**
 * Straight lines between the points of a table.
 *
 * Range: as the table's rule for arguments beyond it says. Errors: `ill-formed`, `not-finite` or `contradiction`
 * for the points; `out-of-range` from `at` when the rule is `issue`. Source: definition.
 * Worked example: (0, 0), (10, 5) at 4 → 2.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import { makeTable, type Table, type TableSpec, tableIssues } from './table.ts';

/** A table read along straight lines; see the head of this file. */
export function linearTable(spec: TableSpec): Result<Table> {
  const issues = tableIssues(spec);
  if (issues.length > 0) return fail(...issues);
  const { xs, ys } = spec;
  const slope = (k: number): number => (ys[k + 1]! - ys[k]!) / (xs[k + 1]! - xs[k]!);
  const inside = (k: number, x: number): number => {
    // From the nearer end, so that the value at a point is the point's own.
    const [x0, x1] = [xs[k]!, xs[k + 1]!];
    return x - x0 <= x1 - x ? ys[k]! + slope(k) * (x - x0) : ys[k + 1]! - slope(k) * (x1 - x);
  };
  return ok(makeTable(spec, { inside, slopeAtStart: slope(0), slopeAtEnd: slope(xs.length - 2) }));
}
