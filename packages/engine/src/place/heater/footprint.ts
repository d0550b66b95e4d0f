/**
 * The heater on the plan: a box that stands on its pad, turned about its middle.
 *
 * Unturned, the front looks down the page; left and right are those of a person who stands before the front and looks
 * at it. So an unturned heater has its left on the left of the page.
 */
import { fail, type Issue, ok, type Result, variableIssue } from '../../trace/index.ts';
import { type Point, turned } from '../plane/index.ts';

/** The sides of the heater that have a clearance of their own. */
export const FACES = ['left', 'right', 'back', 'front', 'above'] as const;

/** One of the five faces. */
export type Face = (typeof FACES)[number];

/** A side that stands upright. */
export type Side = Exclude<Face, 'above'>;

export interface Placed {
  /** Middle of the box on the plan. */
  readonly at: Point;
  /** Anticlockwise, rad. */
  readonly turn: number;
  /** Left to right, m. */
  readonly width: number;
  /** Front to back, m. */
  readonly depth: number;
  /** Of the box, m. */
  readonly height: number;
  /** Its underside above the ground, m: what it stands on. */
  readonly base: number;
}

const SIZE = { symbol: '', kind: 'length', min: 0.05, max: 10 } as const;
const BASE = { symbol: '', kind: 'length', min: -10, max: 10 } as const;

/** The heater as placed, or what is wrong with its measures. */
export function placed(heater: Placed): Result<Placed> {
  const sizes = (['width', 'depth', 'height'] as const).map((name) =>
    variableIssue(name, heater[name], SIZE),
  );
  const base = variableIssue('base', heater.base, BASE);
  const turn = variableIssue('turn', heater.turn, { symbol: '', kind: 'angle' });
  const issues = [...sizes, base, turn].filter((issue): issue is Issue => issue !== undefined);
  return issues.length > 0 ? fail(...issues) : ok(heater);
}

/** Corners on the plan, anticlockwise from the front's left. */
export function footprint({ at, turn, width, depth }: Placed): readonly Point[] {
  const [x, y] = [width / 2, depth / 2];
  return [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ].map(([dx = 0, dy = 0]) => turned({ x: at.x + dx, y: at.y + dy }, turn, at));
}

/** Where a side looks: the angle of its outward normal on the plan, rad. */
export function sideAngle(side: Side, turn: number): number {
  const unturned = { front: -Math.PI / 2, right: 0, back: Math.PI / 2, left: Math.PI };
  return unturned[side] + turn;
}

/**
 * Angle between where a side looks and the way to a point, 0 to π: 0 where it faces it, above π/2 where it turns away.
 * Worked example: the right of an unturned heater at (0, 0) and a pump at (2, 2) → π/4.
 */
export function facing({ at, turn }: Placed, side: Side, to: Point): number {
  const angle = Math.atan2(to.y - at.y, to.x - at.x) - sideAngle(side, turn);
  return Math.abs(Math.atan2(Math.sin(angle), Math.cos(angle)));
}

export interface Facing {
  readonly side: 'left' | 'right';
  /** rad, one of the four quarter turns from the present one. */
  readonly turn: number;
  readonly angle: number;
}

/**
 * Each way the water connections can face a point: four quarter turns, and the other side too where the header can be
 * moved across. Best first; of two as good the one that takes least: no move, then a turn, then the header.
 */
export function waysToFace(
  heater: Placed,
  { side, reversible }: { readonly side: 'left' | 'right'; readonly reversible: boolean },
  to: Point,
): readonly Facing[] {
  const other = side === 'left' ? 'right' : 'left';
  const sides = reversible ? ([side, other] as const) : ([side] as const);
  const ways = sides.flatMap((hand) =>
    [0, 1, 3, 2].map((quarters): Facing => {
      const turn = heater.turn + (quarters * Math.PI) / 2;
      return { side: hand, turn, angle: facing({ ...heater, turn }, hand, to) };
    }),
  );
  return ways.sort((a, b) => (Math.abs(a.angle - b.angle) < 1e-9 ? 0 : a.angle - b.angle));
}
