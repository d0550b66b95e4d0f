/** Anything on a plan that a heater keeps its distance from: a wall, a window, a shrub, a boundary. */

import { fail, ok, type Result } from '../../trace/index.ts';
import { type Drawn, shapeIssue } from '../plane/index.ts';

export interface Thing extends Drawn {
  /** Its underside above the ground, m: zero for what stands on it. */
  readonly bottom: number;
  /** Its top above the ground, m. */
  readonly top: number;
  /** How far it may grow outwards, m: a shrub. */
  readonly growth: number;
}

/** The thing, or what is wrong with it. */
export function thing(one: Thing): Result<Thing> {
  const issue = shapeIssue(one);
  if (issue) return fail(issue);
  if (!(one.growth >= 0 && one.growth <= 20))
    return fail({
      code: 'out-of-range',
      where: 'growth',
      found: one.growth,
      kind: 'length',
      min: 0,
      max: 20,
    });
  if (!(one.top >= one.bottom))
    return fail({ code: 'contradiction', where: 'top', found: one.top, min: one.bottom, kind: 'length' });
  return ok(one);
}
