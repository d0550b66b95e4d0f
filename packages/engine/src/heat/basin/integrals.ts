/**
 * What a basin needs integrated: water under a piece of outline, and wall along an edge.
 *
 *     ∫w dx and ∫x·w dx over a stretch, closed for straight and for elliptic widths, give the volume under an even
 *     floor exactly: ∫w·(d0 + s·x) dx = d0·∫w dx + s·∫x·w dx.
 *
 * Walls on an ellipse have no closed form; they are summed by Gauss's rule of 8 points over arcs of a sixteenth turn
 * or less, to better than 1e-9 of their length for ovals up to 5:1.
 */
import type { FloorPiece } from './floor.ts';
import type { CurvedEdge, CurvedPiece, Edge, StraightPiece, WidthPiece } from './plan.ts';

/** ∫w dx and ∫x·w dx of a piece between two places that it covers. */
export interface Moments {
  readonly area: number;
  readonly first: number;
}

/** The moments of the part of a width piece that lies between `from` and `to`. */
export function moments(piece: WidthPiece, from: number, to: number): Moments {
  const a = Math.max(from, piece.from);
  const b = Math.min(to, piece.to);
  if (!(b > a)) return { area: 0, first: 0 };
  return piece.kind === 'straight' ? straightMoments(piece, a, b) : curvedMoments(piece, a, b);
}

function straightMoments(piece: StraightPiece, a: number, b: number): Moments {
  const slope = (piece.widthTo - piece.widthFrom) / (piece.to - piece.from);
  const middle = (a + b) / 2;
  const area = (b - a) * (piece.widthFrom + slope * (middle - piece.from));
  return { area, first: middle * area + (slope * (b - a) ** 3) / 12 };
}

function curvedMoments(piece: CurvedPiece, a: number, b: number): Moments {
  const { centre, halfLength, halfWidth } = piece;
  const u = Math.max(-1, (a - centre) / halfLength);
  const v = Math.min(1, (b - centre) / halfLength);
  const cu = Math.sqrt(1 - u * u);
  const cv = Math.sqrt(1 - v * v);
  const area = halfLength * halfWidth * (v * cv + Math.asin(v) - u * cu - Math.asin(u));
  return { area, first: centre * area + (2 / 3) * halfLength ** 2 * halfWidth * (cu ** 3 - cv ** 3) };
}

/** Width of the water across at one place along the length, m; at a jump the mean of both sides. */
export function widthAt(pieces: readonly WidthPiece[], x: number): number {
  const touching = pieces.filter((p) => p.from <= x && x <= p.to);
  const sum = touching.reduce((total, p) => total + pieceWidth(p, x), 0);
  return touching.length === 0 ? 0 : sum / touching.length;
}

function pieceWidth(p: WidthPiece, x: number): number {
  if (p.kind === 'straight')
    return p.widthFrom + ((p.widthTo - p.widthFrom) * (x - p.from)) / (p.to - p.from);
  return 2 * p.halfWidth * Math.sqrt(Math.max(0, 1 - ((x - p.centre) / p.halfLength) ** 2));
}

/** Depth at a place along the length, m; at a step the deeper side. */
export function depthAt(floor: readonly FloorPiece[], x: number): number {
  let deepest = 0;
  for (const p of floor) {
    if (x < p.from || x > p.to) continue;
    const depth =
      p.to === p.from
        ? Math.max(p.depthFrom, p.depthTo)
        : p.depthFrom + ((p.depthTo - p.depthFrom) * (x - p.from)) / (p.to - p.from);
    deepest = Math.max(deepest, depth);
  }
  return deepest;
}

/** Length of an edge and area of the wall under it. */
export interface Wall {
  readonly length: number;
  readonly area: number;
}

/** The wall on one edge over a floor. */
export function wallOn(edge: Edge, floor: readonly FloorPiece[]): Wall {
  if (edge.kind === 'curved') return curvedWall(edge, floor);
  const low = Math.min(edge.from, edge.to);
  const high = Math.max(edge.from, edge.to);
  if (high === low) return { length: edge.length, area: edge.length * depthAt(floor, low) };
  let depthTimesLength = 0;
  for (const p of floor) {
    const a = Math.max(low, p.from);
    const b = Math.min(high, p.to);
    if (!(b > a)) continue;
    const slope = (p.depthTo - p.depthFrom) / (p.to - p.from);
    depthTimesLength += (b - a) * (p.depthFrom + slope * ((a + b) / 2 - p.from));
  }
  return { length: edge.length, area: (edge.length * depthTimesLength) / (high - low) };
}

/** Points and weights of Gauss's rule on −1 to 1, half of each (Abramowitz and Stegun, Table 25.4, n = 8). */
const GAUSS = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;
const WIDEST_ARC = Math.PI / 8;

function curvedWall(edge: CurvedEdge, floor: readonly FloorPiece[]): Wall {
  const cuts = arcCuts(edge, floor);
  let length = 0;
  let area = 0;
  for (let i = 1; i < cuts.length; i++) {
    const half = (cuts[i]! - cuts[i - 1]!) / 2;
    const middle = (cuts[i]! + cuts[i - 1]!) / 2;
    for (const [point, weight] of GAUSS) {
      for (const angle of [middle - half * point, middle + half * point]) {
        const step =
          weight * half * Math.hypot(edge.halfLength * Math.sin(angle), edge.halfWidth * Math.cos(angle));
        length += step;
        area += step * depthAt(floor, edge.centre + edge.halfLength * Math.cos(angle));
      }
    }
  }
  return { length, area };
}

/** Angles at which to cut an arc: evenly, and wherever the floor under it changes slope. */
function arcCuts(edge: CurvedEdge, floor: readonly FloorPiece[]): number[] {
  const { start, end, centre, halfLength } = edge;
  const parts = Math.max(1, Math.ceil((end - start) / WIDEST_ARC));
  const cuts = Array.from({ length: parts + 1 }, (_, i) => start + ((end - start) * i) / parts);
  for (const { from } of floor) {
    const cosine = (from - centre) / halfLength;
    if (Math.abs(cosine) >= 1) continue;
    const angle = Math.acos(cosine);
    for (const turned of [-angle, angle, 2 * Math.PI - angle])
      if (turned > start && turned < end) cuts.push(turned);
  }
  return cuts.sort((p, q) => p - q);
}
