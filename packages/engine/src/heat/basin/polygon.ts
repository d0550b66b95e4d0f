/**
 * A basin by its corner points: checked, turned so that the length lies along x, and cut into widths.
 *
 * Between two neighbouring corner positions along the length no edge begins or ends, so that the width across,
 * summed over all arms of the shape, changes evenly: a handful of trapezia is the exact shape, dents included.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import type { Outline, Point, StraightEdge, StraightPiece } from './plan.ts';

const MOST_CORNERS = 500;
const LARGEST = 1000;

/** The outline of a simple polygon; a ring that crosses or touches itself is an issue. */
export function polygonOutline(corners: readonly Point[], lengthAngle = 0): Result<Outline> {
  const issue = cornersIssue(corners, lengthAngle);
  if (issue) return fail(issue);
  const turned = alongLength(corners, lengthAngle);
  const length = Math.max(...turned.map((p) => p.x));
  return ok({ length, pieces: widths(turned), edges: edges(turned) });
}

function cornersIssue(corners: readonly Point[], lengthAngle: number): Issue | undefined {
  const where = 'corners';
  if (!Number.isFinite(lengthAngle))
    return { code: 'not-finite', where: 'lengthAngle', found: String(lengthAngle) };
  if (corners.length < 3)
    return { code: 'ill-formed', where, found: corners.length, reason: 'too-few-corners' };
  if (corners.length > MOST_CORNERS)
    return { code: 'ill-formed', where, found: corners.length, reason: 'too-many-corners' };
  const bad = corners.findIndex((p) => !(Math.abs(p.x) <= LARGEST && Math.abs(p.y) <= LARGEST));
  if (bad >= 0)
    return { code: 'out-of-range', where: `corners.${bad}`, kind: 'length', min: -LARGEST, max: LARGEST };
  return crossing(corners);
}

/** The first pair of edges that meet where they should not, corners counted from 0. */
function crossing(corners: readonly Point[]): Issue | undefined {
  const n = corners.length;
  for (let i = 0; i < n; i++) {
    const a = corners[i]!;
    const b = corners[(i + 1) % n]!;
    if (a.x === b.x && a.y === b.y)
      return { code: 'ill-formed', where: `corners.${i}`, reason: 'corner-twice' };
    if (foldsBack(a, b, corners[(i + 2) % n]!))
      return { code: 'ill-formed', where: `corners.${(i + 1) % n}`, reason: 'edge-folds-back' };
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      if (meet(a, b, corners[j]!, corners[(j + 1) % n]!))
        return {
          code: 'ill-formed',
          where: `corners.${i}`,
          found: `${i}-${j}`,
          reason: 'outline-crosses-itself',
        };
    }
  }
  return undefined;
}

function side(a: Point, b: Point, p: Point): number {
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

function foldsBack(a: Point, b: Point, c: Point): boolean {
  const straight = side(a, b, c) === 0;
  return straight && (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) < 0;
}

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const s1 = side(a, b, c);
  const s2 = side(a, b, d);
  const s3 = side(c, d, a);
  const s4 = side(c, d, b);
  if (s1 * s2 < 0 && s3 * s4 < 0) return true;
  return (
    (s1 === 0 && within(a, b, c)) ||
    (s2 === 0 && within(a, b, d)) ||
    (s3 === 0 && within(c, d, a)) ||
    (s4 === 0 && within(c, d, b))
  );
}

function within(a: Point, b: Point, p: Point): boolean {
  return (
    Math.min(a.x, b.x) <= p.x &&
    p.x <= Math.max(a.x, b.x) &&
    Math.min(a.y, b.y) <= p.y &&
    p.y <= Math.max(a.y, b.y)
  );
}

function alongLength(corners: readonly Point[], angle: number): Point[] {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const turned = corners.map((p) => ({ x: p.x * cos + p.y * sin, y: p.y * cos - p.x * sin }));
  const start = Math.min(...turned.map((p) => p.x));
  return turned.map((p) => ({ x: p.x - start, y: p.y }));
}

function edges(corners: readonly Point[]): StraightEdge[] {
  return corners.map((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return { kind: 'straight', from: a.x, to: b.x, length: Math.hypot(b.x - a.x, b.y - a.y) };
  });
}

function widths(corners: readonly Point[]): StraightPiece[] {
  const cuts = [...new Set(corners.map((p) => p.x))].sort((p, q) => p - q);
  return cuts.slice(1).map((to, i) => {
    const from = cuts[i]!;
    return { kind: 'straight', from, to, ...trapezium(corners, from, to) };
  });
}

/** Width across at both ends of a strip: crossings of its middle, sorted, taken two by two, followed to its ends. */
function trapezium(corners: readonly Point[], from: number, to: number) {
  const middle = (from + to) / 2;
  const crossings = corners
    .map((a, i): [Point, Point] => [a, corners[(i + 1) % corners.length]!])
    .filter(([a, b]) => Math.min(a.x, b.x) < middle && middle < Math.max(a.x, b.x))
    .map(([a, b]) => {
      const at = (x: number) => a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
      return { middle: at(middle), from: at(from), to: at(to) };
    })
    .sort((p, q) => p.middle - q.middle);
  let widthFrom = 0;
  let widthTo = 0;
  crossings.forEach((c, i) => {
    const sign = i % 2 === 0 ? -1 : 1;
    widthFrom += sign * c.from;
    widthTo += sign * c.to;
  });
  return { widthFrom, widthTo };
}
