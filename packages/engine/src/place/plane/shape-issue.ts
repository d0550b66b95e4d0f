/**
 * What is wrong with the corners of a thing on a plan: not a number, too far, too few or too many, an edge without
 * length, an outline that crosses itself. The issue names the corner, counted from 0, and for a crossing both edges.
 */
import type { Issue } from '../../trace/index.ts';
import { orientation } from './orientation.ts';
import type { Point } from './point.ts';
import { segmentsMeet } from './segment.ts';

const MOST_CORNERS = 500;
/** Farthest from the plan's zero, m. */
const FARTHEST = 1000;

export interface Drawn {
  readonly corners: readonly Point[];
  /** The last corner is joined to the first. */
  readonly closed: boolean;
}

/** The first thing that is wrong, or none. A single point is a thing too; an open line may cross itself. */
export function shapeIssue({ corners, closed }: Drawn): Issue | undefined {
  const where = 'corners';
  const least = closed ? 3 : 1;
  if (corners.length < least)
    return {
      code: 'ill-formed',
      where,
      found: corners.length,
      reason: closed ? 'too-few-corners' : 'no-corners',
    };
  if (corners.length > MOST_CORNERS)
    return { code: 'ill-formed', where, found: corners.length, reason: 'too-many-corners' };
  const bad = corners.findIndex((p) => !(Math.abs(p.x) <= FARTHEST && Math.abs(p.y) <= FARTHEST));
  if (bad >= 0)
    return { code: 'out-of-range', where: `corners.${bad}`, kind: 'length', min: -FARTHEST, max: FARTHEST };
  return edgeWithoutLength(corners, closed) ?? (closed ? crossing(corners) : undefined);
}

function edgeWithoutLength(corners: readonly Point[], closed: boolean): Issue | undefined {
  const edges = closed ? corners.length : corners.length - 1;
  for (let i = 0; i < edges; i += 1) {
    const a = corners[i]!;
    const b = corners[(i + 1) % corners.length]!;
    if (a.x === b.x && a.y === b.y)
      return { code: 'ill-formed', where: `corners.${i}`, reason: 'edge-without-length' };
  }
  return undefined;
}

function crossing(ring: readonly Point[]): Issue | undefined {
  const n = ring.length;
  for (let i = 0; i < n; i += 1) {
    const [a, b, c] = [ring[i]!, ring[(i + 1) % n]!, ring[(i + 2) % n]!];
    if (foldsBack(a, b, c))
      return { code: 'ill-formed', where: `corners.${(i + 1) % n}`, reason: 'edge-folds-back' };
    for (let j = i + 2; j < n; j += 1) {
      if (i === 0 && j === n - 1) continue;
      if (!segmentsMeet(a, b, ring[j]!, ring[(j + 1) % n]!)) continue;
      const found = `${i}-${j}`;
      return { code: 'ill-formed', where: `corners.${i}`, found, reason: 'outline-crosses-itself' };
    }
  }
  return undefined;
}

function foldsBack(a: Point, b: Point, c: Point): boolean {
  return orientation(a, b, c) === 0 && (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) < 0;
}
