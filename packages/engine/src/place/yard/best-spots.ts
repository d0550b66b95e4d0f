/** The best spots of a yard map, each so far from the others that two heaters would not stand in one another. */
import type { Point } from '../plane/index.ts';
import type { YardMap } from './yard-map.ts';

export interface GoodSpot {
  readonly at: Point;
  /** Which of the turns asked for. */
  readonly turn: number;
  /** Zero or more. */
  readonly margin: number;
}

/**
 * At most `count` spots whose margin is zero or more, best first, no two nearer than `apart`.
 *
 * Range: any map; spots as good are taken in the order of the map. Errors: none; a yard without room gives none.
 * Source: plane geometry. Worked example: a row of spots 1 m apart with margins 3, 2, 1, two of them, 1.5 m apart: the
 * first and the third.
 */
export function bestSpots(
  map: YardMap,
  { count, apart }: { readonly count: number; readonly apart: number },
): readonly GoodSpot[] {
  const found: GoodSpot[] = [];
  while (found.length < count) {
    const next = bestBeyond(map, found, apart);
    if (next === undefined) break;
    found.push(next);
  }
  return found;
}

/** How many spots of a map have a margin of zero or more. */
export function allowedSpots({ margins }: YardMap): number {
  let count = 0;
  for (const margin of margins) if (margin >= 0) count += 1;
  return count;
}

function bestBeyond(map: YardMap, taken: readonly GoodSpot[], apart: number): GoodSpot | undefined {
  const { margins, turns, columns, x, y, step } = map;
  let best: GoodSpot | undefined;
  for (let spot = 0; spot < margins.length; spot += 1) {
    const margin = margins[spot] ?? Number.NaN;
    if (!(margin >= 0 && margin > (best?.margin ?? Number.NEGATIVE_INFINITY))) continue;
    const at = { x: x + (spot % columns) * step, y: y + Math.floor(spot / columns) * step };
    if (taken.some((one) => Math.hypot(one.at.x - at.x, one.at.y - at.y) < apart)) continue;
    best = { at, turn: turns[spot] ?? 0, margin };
  }
  return best;
}
