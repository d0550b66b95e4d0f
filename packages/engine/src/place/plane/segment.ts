/** Straight segments of a plan: how far a point is, how far another segment is, whether two meet. */
import { orientation } from './orientation.ts';
import { type Point, pointDistance } from './point.ts';

/** The point of the segment a–b nearest to p; a itself where the segment has no length. */
export function nearestOnSegment(p: Point, a: Point, b: Point): Point {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  if (square === 0) return a;
  const share = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return { x: a.x + share * dx, y: a.y + share * dy };
}

/** Distance from a point to a segment, m. Worked example: (0, 2) to (−1, 0)–(1, 0) → 2; to (1, 0)–(2, 0) → √5. */
export function pointSegmentDistance(p: Point, a: Point, b: Point): number {
  return pointDistance(p, nearestOnSegment(p, a, b));
}

/** Whether two segments share a point, ends included; decided exactly. */
export function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  const sides = [orientation(a, b, c), orientation(a, b, d), orientation(c, d, a), orientation(c, d, b)];
  const [s1 = 0, s2 = 0, s3 = 0, s4 = 0] = sides.map(Math.sign);
  if (s1 * s2 < 0 && s3 * s4 < 0) return true;
  return (
    (s1 === 0 && inBox(c, a, b)) ||
    (s2 === 0 && inBox(d, a, b)) ||
    (s3 === 0 && inBox(a, c, d)) ||
    (s4 === 0 && inBox(b, c, d))
  );
}

/** Distance between two segments, m; zero where they meet. */
export function segmentDistance(a: Point, b: Point, c: Point, d: Point): number {
  if (segmentsMeet(a, b, c, d)) return 0;
  return Math.min(
    pointSegmentDistance(a, c, d),
    pointSegmentDistance(b, c, d),
    pointSegmentDistance(c, a, b),
    pointSegmentDistance(d, a, b),
  );
}

function inBox(p: Point, a: Point, b: Point): boolean {
  return (
    Math.min(a.x, b.x) <= p.x &&
    p.x <= Math.max(a.x, b.x) &&
    Math.min(a.y, b.y) <= p.y &&
    p.y <= Math.max(a.y, b.y)
  );
}
