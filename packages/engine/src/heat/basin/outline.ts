/**
 * From the measures of a shape to its outline.
 *
 * Kidney: the trade takes 0.45·(A + B)·L for its area, A and B the widths of the two ends and L the overall length
 * (*common practice, no source*). That is within 4 % of two circles joined by straight tangents, so the dent on the
 * inner side is left out, and a deep dent makes the pool smaller than this says. Here the tangent outline gives the
 * wall, and its widths are scaled to the trade's area. Who needs better gives corners.
 *
 * All other shapes are exact.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import { lengthIssues } from './measures.ts';
import type { CurvedEdge, Edge, Outline, Plan, Point, StraightEdge, WidthPiece } from './plan.ts';
import { polygonOutline } from './polygon.ts';

const KIDNEY_FACTOR = 0.45;

/** The outline of a plan, or what is wrong with its measures. */
export function planOutline(plan: Plan): Result<Outline> {
  if (plan.shape === 'polygon') return polygonOutline(plan.corners, plan.lengthAngle);
  const { shape: _, ...lengths } = plan;
  const issues = lengthIssues(lengths);
  if (issues.length > 0) return fail(...issues);
  switch (plan.shape) {
    case 'rectangle':
      return polygonOutline(rectangle(plan.length, plan.width));
    case 'round':
      return ok(oval(plan.diameter, plan.diameter));
    case 'oval':
      return ok(oval(plan.length, plan.width));
    case 'stadium':
      return stadium(plan.length, plan.width);
    case 'kidney':
      return kidney(plan.firstDiameter, plan.lastDiameter, plan.length);
    case 'l':
      return letterL(plan.length, plan.width, [plan.legLength, plan.legWidth]);
  }
}

function rectangle(length: number, width: number): Point[] {
  return [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width },
    { x: 0, y: width },
  ];
}

function letterL(length: number, width: number, [out, along]: readonly [number, number]): Result<Outline> {
  if (along > length)
    return fail({ code: 'contradiction', where: 'legWidth', found: along, max: length, kind: 'length' });
  if (along === length) return polygonOutline(rectangle(length, width + out));
  return polygonOutline([
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width + out },
    { x: length - along, y: width + out },
    { x: length - along, y: width },
    { x: 0, y: width },
  ]);
}

function oval(length: number, width: number): Outline {
  const ellipse = { centre: length / 2, halfLength: length / 2, halfWidth: width / 2 };
  return {
    length,
    pieces: [{ kind: 'curved', from: 0, to: length, ...ellipse }],
    edges: [{ kind: 'curved', start: 0, end: 2 * Math.PI, ...ellipse }],
  };
}

function stadium(length: number, width: number): Result<Outline> {
  if (width > length)
    return fail({ code: 'contradiction', where: 'width', found: width, max: length, kind: 'length' });
  return ok(joinedRounds(width, width, length));
}

function kidney(first: number, last: number, length: number): Result<Outline> {
  const widest = Math.max(first, last);
  if (widest > length)
    return fail({ code: 'contradiction', where: 'length', found: length, min: widest, kind: 'length' });
  const hull = joinedRounds(first, last, length);
  const scale = (KIDNEY_FACTOR * (first + last) * length) / hullArea(first / 2, last / 2, length);
  return ok({ ...hull, pieces: hull.pieces.map((piece) => widened(piece, scale)) });
}

function widened(piece: WidthPiece, scale: number): WidthPiece {
  return piece.kind === 'curved'
    ? { ...piece, halfWidth: piece.halfWidth * scale }
    : { ...piece, widthFrom: piece.widthFrom * scale, widthTo: piece.widthTo * scale };
}

/** Area inside two circles of radii r and s at the ends of a length, and their outer tangents. */
function hullArea(r: number, s: number, length: number): number {
  const distance = length - r - s;
  const tilt = distance === 0 ? 0 : Math.asin((r - s) / distance);
  const between = distance * Math.cos(tilt) * (r + s);
  return between + (Math.PI / 2 + tilt) * r * r + (Math.PI / 2 - tilt) * s * s;
}

/** Two circles at the ends of a length, joined by their outer tangents. */
function joinedRounds(first: number, last: number, length: number): Outline {
  const r = first / 2;
  const s = last / 2;
  const distance = length - r - s;
  const tilt = distance === 0 ? 0 : Math.asin((r - s) / distance);
  const left = r + r * Math.sin(tilt);
  const right = length - s + s * Math.sin(tilt);
  const firstRound = { centre: r, halfLength: r, halfWidth: r };
  const lastRound = { centre: length - s, halfLength: s, halfWidth: s };
  const [widthFrom, widthTo] = [2 * r * Math.cos(tilt), 2 * s * Math.cos(tilt)];
  const tangent: StraightEdge = {
    kind: 'straight',
    from: left,
    to: right,
    length: distance * Math.cos(tilt),
  };
  const turn = Math.PI / 2 - tilt;
  const firstArc: CurvedEdge = { kind: 'curved', start: turn, end: 2 * Math.PI - turn, ...firstRound };
  const lastArc: CurvedEdge = { kind: 'curved', start: -turn, end: turn, ...lastRound };
  const edges: Edge[] = [firstArc, lastArc, tangent, tangent];
  const pieces: WidthPiece[] = [
    { kind: 'curved', from: 0, to: left, ...firstRound },
    { kind: 'straight', from: left, to: right, widthFrom, widthTo },
    { kind: 'curved', from: right, to: length, ...lastRound },
  ];
  return { length, pieces: pieces.filter((p) => p.to > p.from), edges };
}
