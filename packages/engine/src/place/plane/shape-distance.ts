/** Straight parts of what is drawn on a plan, and the distance between two drawn things. */
import type { Point } from './point.ts';
import { contains } from './polygon.ts';
import { segmentDistance } from './segment.ts';
import type { Drawn } from './shape-issue.ts';

/** Calls with both ends of each straight part; with a point twice where the thing is a point. */
export function forEachPart({ corners, closed }: Drawn, call: (a: Point, b: Point) => void): void {
  const [first] = corners;
  if (first === undefined) return;
  const parts = closed ? corners.length : Math.max(1, corners.length - 1);
  for (let i = 0; i < parts; i += 1) call(corners[i] ?? first, corners[(i + 1) % corners.length] ?? first);
}

/**
 * Distance between two drawn things, m; zero where they meet or one lies in the other; infinite where one has no corner.
 * Worked example: the line x = 0 and the square (2, 0)–(3, 1) → 2.
 */
export function shapeDistance(a: Drawn, b: Drawn): number {
  if (a.closed && b.corners[0] !== undefined && contains(a.corners, b.corners[0])) return 0;
  if (b.closed && a.corners[0] !== undefined && contains(b.corners, a.corners[0])) return 0;
  let least = Number.POSITIVE_INFINITY;
  forEachPart(a, (p, q) => {
    forEachPart(b, (r, s) => {
      least = Math.min(least, segmentDistance(p, q, r, s));
    });
  });
  return least;
}
