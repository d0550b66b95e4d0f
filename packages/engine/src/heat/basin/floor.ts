/**
 * How deep a basin is along its length.
 *
 * Between two given depths the floor slopes evenly; before the first and after the last it is level. Two depths at one
 * place are a step. Depth is from the water line, not from the coping.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { depthIssues } from './measures.ts';

export interface DepthPoint {
  /** Distance along the length from its start, m. */
  readonly at: number;
  /** m. */
  readonly depth: number;
}

export type Floor =
  | { readonly form: 'level'; readonly depth: number }
  /** Level to `from`, sloping to `to`, level to the end; sloping all the way when these are left out. */
  | {
      readonly form: 'slope';
      readonly shallow: number;
      readonly deep: number;
      readonly from?: number;
      readonly to?: number;
    }
  | { readonly form: 'points'; readonly points: readonly DepthPoint[] };

/** An even stretch of floor. */
export interface FloorPiece {
  readonly from: number;
  readonly to: number;
  readonly depthFrom: number;
  readonly depthTo: number;
}

/** The floor as even stretches from 0 to the length, steps being stretches of no length. */
export function floorPieces(floor: Floor, length: number): Result<readonly FloorPiece[]> {
  const points = depthPoints(floor, length);
  const issues = pointsIssues(points, length);
  if (issues.length > 0) return fail(...issues);
  const first = points[0]!;
  const last = points.at(-1)!;
  const all = [{ at: 0, depth: first.depth }, ...points, { at: length, depth: last.depth }];
  const pieces = all.slice(1).map((to, i) => {
    const from = all[i]!;
    return { from: from.at, to: to.at, depthFrom: from.depth, depthTo: to.depth };
  });
  return ok(pieces.filter((p) => p.to > p.from || p.depthFrom !== p.depthTo));
}

function depthPoints(floor: Floor, length: number): readonly DepthPoint[] {
  switch (floor.form) {
    case 'level':
      return [{ at: 0, depth: floor.depth }];
    case 'slope':
      return [
        { at: floor.from ?? 0, depth: floor.shallow },
        { at: floor.to ?? length, depth: floor.deep },
      ];
    case 'points':
      return floor.points;
  }
}

function pointsIssues(points: readonly DepthPoint[], length: number): Issue[] {
  if (points.length === 0) return [{ code: 'ill-formed', where: 'floor', reason: 'no-depth' }];
  const issues = points.flatMap((p, i) => depthIssues({ [`floor.${i}.depth`]: p.depth }));
  points.forEach((p, i) => {
    const min = i === 0 ? 0 : points[i - 1]!.at;
    if (!(p.at >= min && p.at <= length * (1 + 1e-9)))
      issues.push({
        code: 'out-of-range',
        where: `floor.${i}.at`,
        found: p.at,
        kind: 'length',
        min,
        max: length,
      });
  });
  return issues;
}
