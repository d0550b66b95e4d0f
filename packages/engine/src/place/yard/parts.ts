/** The straight parts of a yard's things, laid out flat for the scan, as seen by a heater at one turn. */
import { forEachPart } from '../plane/index.ts';
import type { YardQuestion, YardThing } from './question.ts';

/** One straight part, with everything the scan needs to know of its thing. */
export interface Part {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly growth: number;
  /** Distance asked for, m. */
  readonly least: number;
  /** Height between the heater and the thing, m. */
  readonly apart: number;
  /** Hangs over a heater that stands below it: its margin then; infinite where it does not hang. */
  readonly overhead: number;
  /** Takes room from the sides. */
  readonly beside: boolean;
  /** The heater cannot stand where it is. */
  readonly solid: boolean;
  /** Largest distance at which the part asks anything, m: divides its distance into a least margin. */
  readonly reach: number;
}

/** How a thing stands to the heater's box in height. */
export interface Standing {
  readonly apart: number;
  readonly overhead: number;
  readonly beside: boolean;
  readonly solid: boolean;
}

/** Above and beside by the same measure as the clearances of one placed heater. */
export function standingOf({ heater, faces }: YardQuestion, one: YardThing): Standing {
  const top = heater.base + heater.height;
  const gap = one.bottom - top;
  const hangs = gap >= 0;
  const marginAbove = faces.above > 0 ? gap / faces.above - 1 : Number.POSITIVE_INFINITY;
  return {
    apart: Math.max(0, gap, heater.base - one.top),
    overhead: hangs && one.solid ? marginAbove : Number.POSITIVE_INFINITY,
    beside: one.solid && !hangs && one.top > heater.base,
    solid: one.solid && !hangs,
  };
}

/** Every part, turned so that the heater looks unturned. */
export function partsAt(asked: YardQuestion, turn: number): readonly Part[] {
  const { left, right, back, front } = asked.faces;
  const widest = Math.max(left, right, back, front);
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return asked.things.flatMap((one) => {
    const standing = standingOf(asked, one);
    const reach = Math.max(one.least, standing.beside ? widest : 0, Number.MIN_VALUE);
    const parts: Part[] = [];
    forEachPart(one, (a, b) => {
      parts.push({
        ax: a.x * cos + a.y * sin,
        ay: a.y * cos - a.x * sin,
        bx: b.x * cos + b.y * sin,
        by: b.y * cos - b.x * sin,
        growth: one.growth,
        least: one.least,
        ...standing,
        reach,
      });
    });
    return parts;
  });
}
