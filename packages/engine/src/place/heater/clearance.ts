/** How far a placed heater is from the things around it: before each face, and in all. */
import { contains, forEachPart, type Point } from '../plane/index.ts';
import { addBefore, type Before, boxDistanceSquared, type HalfBox } from './box-kernel.ts';
import { FACES, type Face, footprint, type Placed } from './footprint.ts';
import type { Thing } from './thing.ts';

/** Clearance of each face, m; infinite where nothing stands before it. */
export type Clearances = Readonly<Record<Face, number>>;

/**
 * Distance in space between the heater and a thing, m; zero where they overlap. The flue outlet counts as any other
 * part of the heater, so that the distance is never more than that from the outlet.
 *
 * Range: measures that `placed` and `thing` accept. Worked example: a box 1 m wide at (0, 0) and a post at (2.5, 0) → 2.
 */
export function thingDistance(heater: Placed, one: Thing): number {
  return Math.hypot(planDistance(heater, one), heightBetween(heater, one));
}

/** The same seen from above: heights do not count. */
export function planDistance(heater: Placed, one: Thing): number {
  if (one.closed && contains(one.corners, heater.at)) return 0;
  const half = halfOf(heater);
  const inFrame = frameOf(heater);
  let least = Number.POSITIVE_INFINITY;
  forEachPart(one, (a, b) => {
    const [p, q] = [inFrame(a), inFrame(b)];
    least = Math.min(least, boxDistanceSquared(half, p.x, p.y, q.x, q.y));
  });
  return Math.max(0, Math.sqrt(least) - one.growth);
}

/**
 * Clearance of each face to the nearest of the things. The four sides count what stands between the heater's foot
 * and its top; above counts what hangs over the heater.
 *
 * Worked example: a box 1 m deep at (0, 0), a wall along y = 1 → 0.5 m behind it.
 */
export function clearances(heater: Placed, things: readonly Thing[]): Clearances {
  const half = halfOf(heater);
  const inFrame = frameOf(heater);
  const before: Before = { left: Infinity, right: Infinity, back: Infinity, front: Infinity };
  let above = Number.POSITIVE_INFINITY;
  for (const one of things) {
    const overhead = one.bottom - (heater.base + heater.height);
    if (overhead >= 0) {
      if (overhead < above && planDistance(heater, one) === 0) above = overhead;
    } else if (one.top > heater.base) {
      if (planDistance(heater, one) === 0) return surrounded();
      forEachPart(one, (a, b) => {
        const [p, q] = [inFrame(a), inFrame(b)];
        addBefore(before, half, { ax: p.x, ay: p.y, bx: q.x, by: q.y }, one.growth);
      });
    }
  }
  return { ...before, above };
}

/** What stands where the heater stands leaves it no clearance at all. */
function surrounded(): Clearances {
  return Object.fromEntries(FACES.map((face) => [face, 0])) as Record<Face, number>;
}

/** Height between the heater and what hangs over it or lies below its foot; zero where they stand side by side. */
function heightBetween(heater: Placed, one: Thing): number {
  return Math.max(0, one.bottom - (heater.base + heater.height), heater.base - one.top);
}

/** Whether the whole heater stands within a ring. */
export function standsWithin(ring: readonly Point[], heater: Placed): boolean {
  if (!contains(ring, heater.at)) return false;
  if (!footprint(heater).every((corner) => contains(ring, corner))) return false;
  const half = halfOf(heater);
  const inFrame = frameOf(heater);
  return !ring.some((corner) => {
    const p = inFrame(corner);
    return Math.abs(p.x) < half.x && Math.abs(p.y) < half.y;
  });
}

/**
 * Clear room before the front, over a width that is centred on it, m. Unlike the clearance of the front it counts a
 * wall beside the heater that runs on past it. Worked example: a wall 2 m before the front and nothing else → 2.
 */
export function roomBefore(heater: Placed, things: readonly Thing[], width: number): number {
  const half = { x: Math.max(width, heater.width) / 2, y: heater.depth / 2 };
  const inFrame = frameOf(heater);
  const before: Before = { left: Infinity, right: Infinity, back: Infinity, front: Infinity };
  for (const one of things) {
    if (one.bottom >= heater.base + heater.height || one.top <= heater.base) continue;
    forEachPart(one, (a, b) => {
      const [p, q] = [inFrame(a), inFrame(b)];
      addBefore(before, half, { ax: p.x, ay: p.y, bx: q.x, by: q.y }, one.growth);
    });
  }
  return before.front;
}

function halfOf({ width, depth }: Placed): HalfBox {
  return { x: width / 2, y: depth / 2 };
}

/** Points as seen from the heater: its middle at zero, unturned. */
function frameOf({ at, turn }: Placed): (p: Point) => Point {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return (p) => {
    const dx = p.x - at.x;
    const dy = p.y - at.y;
    return { x: dx * cos + dy * sin, y: dy * cos - dx * sin };
  };
}
