/**
 * Velocity in every pipe run of a solved pad.
 *
 * Source: `velocity`. Errors: none; the solution is already checked.
 *
 * Worked example: 93.9 gpm in 2 in Schedule 40 → 9.0 ft/s, over the 8 ft/s usual for returns.
 */
import { velocity } from '../pipe/velocity.ts';
import type { Side } from './layout.ts';
import type { Pad } from './pad.ts';
import type { PadSolution } from './solution.ts';

export interface RunVelocity {
  /** Id of the run in the network: its line and place, such as `returns.pool.0`. */
  readonly id: string;
  readonly side: Side;
  /** m. */
  readonly insideDiameter: number;
  /** m/s, without its direction. */
  readonly velocity: number;
}

/** One entry for each pipe run, in the order the water meets them. */
export function padVelocities(pad: Pad, solution: PadSolution): readonly RunVelocity[] {
  return pad.layout.parts.flatMap((part, link): RunVelocity[] => {
    if (part.part !== 'item' || part.item.type !== 'pipe') return [];
    const { insideDiameter } = part.item;
    const flow = Math.abs(solution.flows[link] ?? 0);
    const id = pad.layout.links[link]?.id ?? '';
    return [{ id, side: part.side, insideDiameter, velocity: velocity.kernel({ insideDiameter, flow }) }];
  });
}
