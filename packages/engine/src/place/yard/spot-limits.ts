/**
 * What limits one spot of a yard: every clearance and distance asked there, with what is found, least margin first.
 *
 * The map keeps a spot's least margin only; this tells whose it is, by the same clearances and distances.
 */
import {
  clearances,
  FACES,
  type Face,
  type Placed,
  planDistance,
  standsWithin,
  thingDistance,
} from '../heater/index.ts';
import type { Point } from '../plane/index.ts';
import type { YardQuestion } from './question.ts';

export interface SpotLimit {
  /** The face whose clearance it is; none where a distance is asked of the thing itself. */
  readonly face?: Face;
  /** Which of the things it is asked of. */
  readonly thing: number;
  /** m. */
  readonly required: number;
  readonly found: number;
  /** Found over required, less 1. */
  readonly margin: number;
}

export interface SpotLimits {
  /** The whole heater stands within the yard. */
  readonly inYard: boolean;
  /** Things it would stand in. */
  readonly standsIn: readonly number[];
  /** Least margin first; faces with nothing before them are left out. */
  readonly limits: readonly SpotLimit[];
}

/**
 * The limits of a spot at one turn, rad.
 *
 * Range: a question that `yardQuestion` accepts. Errors: none of its own. Source: plane geometry.
 * Worked example: a box 1 m deep, a wall 1 m behind its back of which 0.5 m is asked → margin 1.
 */
export function spotLimits(asked: YardQuestion, at: Point, turn: number): SpotLimits {
  const heater: Placed = { ...asked.heater, at, turn };
  const top = heater.base + heater.height;
  const standsIn = asked.things.flatMap((one, thing) =>
    one.solid && one.bottom < top && planDistance(heater, one) === 0 ? [thing] : [],
  );
  const limits = [...faceLimits(asked, heater), ...thingLimits(asked, heater)];
  limits.sort((a, b) => a.margin - b.margin);
  return { inYard: standsWithin(asked.yard, heater), standsIn, limits };
}

function thingLimits({ things }: YardQuestion, heater: Placed): SpotLimit[] {
  return things.flatMap((one, thing) =>
    one.least > 0 ? [limitOf({ thing, required: one.least, found: thingDistance(heater, one) })] : [],
  );
}

/** Of each face, by the thing that stands nearest before it. */
function faceLimits({ things, faces }: YardQuestion, heater: Placed): SpotLimit[] {
  const before = things.map((one) => (one.solid ? clearances(heater, [one]) : undefined));
  return FACES.flatMap((face) => {
    const required = faces[face];
    let thing = -1;
    let found = Number.POSITIVE_INFINITY;
    before.forEach((one, i) => {
      if (one !== undefined && one[face] < found) {
        found = one[face];
        thing = i;
      }
    });
    return required > 0 && thing >= 0 ? [{ face, ...limitOf({ thing, required, found }) }] : [];
  });
}

function limitOf(one: Pick<SpotLimit, 'thing' | 'required' | 'found'>): SpotLimit {
  return { ...one, margin: one.found / one.required - 1 };
}
