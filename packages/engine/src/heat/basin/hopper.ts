/**
 * A hopper: a pit under the floor with four sloping sides, the deep end of a diving pool.
 *
 *     V = h/6·(A_top + 4·A_middle + A_bottom)
 *
 * the prismoidal formula, exact for any pit whose sides are flat, whether or not they run out to one line.
 *
 * Source: solid geometry.
 * Range: a bottom no larger than the top, all lengths 10 mm to 500 m, depth to 30 m.
 * Errors: issues with the name of the length that is wrong.
 *
 * Worked example: top 4 m × 3 m, bottom 2 m × 1 m, 1.2 m deep → 7.6 m3.
 */
import type { Issue } from '../../trace/index.ts';
import { depthIssues, lengthIssues } from './measures.ts';

export interface Hopper {
  /** Opening in the floor, m. */
  readonly topLength: number;
  readonly topWidth: number;
  /** Flat bottom, m. */
  readonly bottomLength: number;
  readonly bottomWidth: number;
  /** From the floor about it down to its bottom, m. */
  readonly depth: number;
}

/** What a hopper adds to a basin that has none. */
export interface HopperAddition {
  /** m3. */
  readonly volume: number;
  /** Wetted floor more than the opening it replaces, m2. */
  readonly floorArea: number;
}

/** The issues of a hopper's measures. */
export function hopperIssues(hopper: Hopper): Issue[] {
  const { depth, ...lengths } = hopper;
  const issues = [...lengthIssues(lengths), ...depthIssues({ depth })];
  if (hopper.bottomLength > hopper.topLength) issues.push(tooLarge('bottomLength', hopper.topLength));
  if (hopper.bottomWidth > hopper.topWidth) issues.push(tooLarge('bottomWidth', hopper.topWidth));
  return issues.map((issue) => ({ ...issue, where: `hopper.${issue.where}` }));
}

function tooLarge(where: string, max: number): Issue {
  return { code: 'contradiction', where, max, kind: 'length' };
}

/** Volume and floor a hopper adds; its measures are checked before. */
export function hopperAddition(hopper: Hopper): HopperAddition {
  const { topLength, topWidth, bottomLength, bottomWidth, depth } = hopper;
  const top = topLength * topWidth;
  const bottom = bottomLength * bottomWidth;
  const middle = ((topLength + bottomLength) / 2) * ((topWidth + bottomWidth) / 2);
  const sideSlant = Math.hypot(depth, (topWidth - bottomWidth) / 2);
  const endSlant = Math.hypot(depth, (topLength - bottomLength) / 2);
  const sides = (topLength + bottomLength) * sideSlant + (topWidth + bottomWidth) * endSlant;
  return { volume: (depth / 6) * (top + 4 * middle + bottom), floorArea: sides + bottom - top };
}
