/**
 * Points of a plan: x to the right, y up the page, in metres; angles anticlockwise from x.
 *
 * A plan is flat; heights stand beside it (see `thing.ts`).
 */

/** A point of a plan, m. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Distance between two points, m. Worked example: (0, 0) and (3, 4) → 5. */
export function pointDistance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** A point turned by an angle about another. Worked example: (1, 0) by a right angle about (0, 0) → (0, 1). */
export function turned(p: Point, angle: number, about: Point = { x: 0, y: 0 }): Point {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const dx = p.x - about.x;
  const dy = p.y - about.y;
  return { x: about.x + dx * cos - dy * sin, y: about.y + dx * sin + dy * cos };
}

/**
 * A point mirrored in the line through `on` at an angle to x.
 * Worked example: (3, 1) in the line along y through (1, 0) → (−1, 1).
 */
export function mirrored(p: Point, angle: number, on: Point = { x: 0, y: 0 }): Point {
  const cos = Math.cos(2 * angle);
  const sin = Math.sin(2 * angle);
  const dx = p.x - on.x;
  const dy = p.y - on.y;
  return { x: on.x + dx * cos + dy * sin, y: on.y + dx * sin - dy * cos };
}
