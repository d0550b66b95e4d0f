/** What it takes that a heater's water connections look at the pump, where it stands. */
import { place } from '@firstfire/engine';
import { type Site, wordAt } from './sources.ts';

/** How the connections come to face the pump. */
export type FacingWay = 'as it stands' | 'header' | 'turn' | 'header and turn' | 'none';

export interface WayToFace {
  readonly way: FacingWay;
  /** Of the heater then, rad. */
  readonly turn: number;
  readonly side: 'left' | 'right';
  /** Between where the connections look and the way to the pump then, rad. */
  readonly angle: number;
}

export interface FacingQuestion {
  readonly heater: place.Placed;
  readonly things: readonly place.Thing[];
  /** Clearance asked of each face as it stands, m. */
  readonly faces: Readonly<Record<place.Face, number>>;
  readonly side: 'left' | 'right';
  /** The header can be moved across to the other side. */
  readonly reversible: boolean;
  readonly pump: place.Point;
}

/** More than a quarter turn looks away. */
const LOOKS_AWAY = Math.PI / 2;
const SAME = 1e-9;
/** Moving the header costs less than turning the heater with its gas, wiring and pad. */
const COST: Readonly<Record<FacingWay, number>> = {
  'as it stands': 0,
  header: 1,
  turn: 2,
  'header and turn': 3,
  none: 4,
};

/** The way that takes least and keeps the clearances; `none` with the best angle where nothing does. */
export function wayToFace(asked: FacingQuestion): WayToFace {
  const { heater, side, reversible, pump } = asked;
  const ways = place.waysToFace(heater, { side, reversible }, pump);
  const fitting = ways.filter((one) => one.angle <= LOOKS_AWAY + SAME && hasRoom(asked, one));
  const named = fitting.map((one): WayToFace => ({ ...one, way: wayOf(asked, one) }));
  const [least] = named.sort((a, b) => COST[a.way] - COST[b.way]);
  return least ?? { way: 'none', turn: heater.turn, side, angle: place.facing(heater, side, pump) };
}

function wayOf({ heater, side }: FacingQuestion, { side: hand, turn }: place.Facing): FacingWay {
  const stays = Math.abs(turn - heater.turn) < SAME;
  if (hand === side) return stays ? 'as it stands' : 'turn';
  return stays ? 'header' : 'header and turn';
}

/** The water side's clearance goes with the header. As it stands it is judged by its own rules. */
function hasRoom(asked: FacingQuestion, { side, turn }: place.Facing): boolean {
  const { heater, faces } = asked;
  if (side === asked.side && Math.abs(turn - heater.turn) < SAME) return true;
  const needed = side === asked.side ? faces : { ...faces, left: faces.right, right: faces.left };
  const found = place.clearances({ ...heater, turn }, asked.things);
  return place.FACES.every((face) => found[face] >= needed[face] - SAME);
}

/** Whether the header can be moved across; not where nobody said so. */
export function isReversible({ view, heater }: Site): boolean {
  return wordAt(view, { collection: 'heaters', id: heater, field: 'waterSideMovable' }) === 'yes';
}
