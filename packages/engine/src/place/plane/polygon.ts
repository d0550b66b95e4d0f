/** Rings of corners, the last joined to the first: area, middle, what lies inside. */
import { orientation } from './orientation.ts';
import type { Point } from './point.ts';
import { segmentsMeet } from './segment.ts';

/**
 * Area of a ring, positive where its corners run anticlockwise, m2.
 *
 *     A = ½·Σ (xi·yi+1 − xi+1·yi)
 *
 * Source: surveyor's formula; P. Bourke, Calculating the area and centroid of a polygon (1988), from memory.
 * Worked example: (0, 0), (4, 0), (4, 3) → 6.
 */
export function signedArea(ring: readonly Point[]): number {
  const [origin] = ring;
  if (origin === undefined) return 0;
  let twice = 0;
  // Counted from the first corner, so that a plan drawn far from its zero loses nothing.
  forEachEdge(ring, (a, b) => {
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
  });
  return twice / 2;
}

/**
 * Middle of the area of a ring; undefined where it encloses none.
 * Worked example: a triangle (0, 0), (3, 0), (0, 3) → (1, 1).
 */
export function centroid(ring: readonly Point[]): Point | undefined {
  const [origin] = ring;
  const area = signedArea(ring);
  if (origin === undefined || area === 0) return undefined;
  let x = 0;
  let y = 0;
  forEachEdge(ring, (a, b) => {
    const [ax, ay, bx, by] = [a.x - origin.x, a.y - origin.y, b.x - origin.x, b.y - origin.y];
    const cross = ax * by - bx * ay;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  });
  return { x: origin.x + x / (6 * area), y: origin.y + y / (6 * area) };
}

/**
 * Whether a point lies in a ring or on its edge: an odd number of edges passes to its right.
 * Worked example: (1, 1) in the square (0, 0)–(2, 2) → true; its corner too; (3, 1) → false.
 */
export function contains(ring: readonly Point[], p: Point): boolean {
  let odd = false;
  let onEdge = false;
  forEachEdge(ring, (a, b) => {
    if (segmentsMeet(a, b, p, p)) onEdge = true;
    if (a.y > p.y === b.y > p.y) return;
    const side = orientation(a, b, p);
    if (a.y < b.y ? side > 0 : side < 0) odd = !odd;
  });
  return onEdge || odd;
}

/** Calls with both ends of each edge of a ring. */
export function forEachEdge(ring: readonly Point[], call: (a: Point, b: Point, index: number) => void): void {
  ring.forEach((a, i) => {
    call(a, ring[(i + 1) % ring.length] ?? a, i);
  });
}
