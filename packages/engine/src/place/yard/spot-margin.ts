/** The margin of one spot at one turn: the smallest over all that the parts around it ask. */
import { addBefore, type Before, boxDistanceSquared, type HalfBox } from '../heater/box-kernel.ts';
import type { Side } from '../heater/index.ts';
import type { Part } from './parts.ts';

export interface Scan {
  readonly half: HalfBox;
  readonly faces: Readonly<Record<Side, number>>;
}

const PART = { ax: 0, ay: 0, bx: 0, by: 0 };

/**
 * Margin at (x, y) in the turned frame; NaN where the heater cannot stand. Parts come nearest first, each with a
 * margin it cannot go below; the rest is not looked at once it can no longer lower what was found, nor once the spot
 * is no better than `floor`.
 */
export function spotMargin(
  scan: Scan,
  {
    x,
    y,
    most,
    floor,
  }: { readonly x: number; readonly y: number; readonly most: number; readonly floor: number },
  near: { readonly parts: readonly Part[]; readonly bounds: Float64Array },
): number {
  const before: Before = { left: Infinity, right: Infinity, back: Infinity, front: Infinity };
  let margin = most;
  for (let i = 0; i < near.parts.length; i += 1) {
    if ((near.bounds[i] ?? 0) >= margin) break;
    const part = near.parts[i]!;
    PART.ax = part.ax - x;
    PART.ay = part.ay - y;
    PART.bx = part.bx - x;
    PART.by = part.by - y;
    const asked = partMargin(scan, part, before);
    if (asked < margin) margin = asked;
    else if (Number.isNaN(asked)) return asked;
    if (margin <= floor) break;
  }
  return margin;
}

/** What one part asks at PART, given what stood before the sides already. */
function partMargin({ half, faces }: Scan, part: Part, before: Before): number {
  const square = boxDistanceSquared(half, PART.ax, PART.ay, PART.bx, PART.by);
  const touches = square <= part.growth * part.growth;
  if (touches && part.solid) return Number.NaN;
  let margin = touches ? part.overhead : Number.POSITIVE_INFINITY;
  if (part.least > 0) {
    const plan = touches ? 0 : Math.sqrt(square) - part.growth;
    const distance = part.apart === 0 ? plan : Math.hypot(plan, part.apart);
    margin = Math.min(margin, distance / part.least - 1);
  }
  if (!part.beside) return margin;
  addBefore(before, half, PART, part.growth);
  return Math.min(margin, sidesMargin(before, faces));
}

function sidesMargin(before: Before, faces: Readonly<Record<Side, number>>): number {
  let margin = Number.POSITIVE_INFINITY;
  if (faces.left > 0) margin = Math.min(margin, before.left / faces.left - 1);
  if (faces.right > 0) margin = Math.min(margin, before.right / faces.right - 1);
  if (faces.back > 0) margin = Math.min(margin, before.back / faces.back - 1);
  if (faces.front > 0) margin = Math.min(margin, before.front / faces.front - 1);
  return margin;
}
