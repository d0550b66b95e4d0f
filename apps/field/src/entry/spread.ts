/** The ± of a reading: the larger of what its instrument is good for and half the last digit typed, unless it is given. */
import { quantity } from '@firstfire/engine';
import { type HowKnown, usualPlusMinus } from '@firstfire/job';
import type { Typing } from './understood.ts';

export interface SpreadOf {
  readonly kind: quantity.Kind;
  readonly how: HowKnown;
  readonly si: number;
  /** Half of one unit in the last digit typed, as an SI difference. */
  readonly halfStep: number;
  /** As somebody gave it, an SI difference. */
  readonly given?: number;
}

export interface Spread {
  readonly si: number;
  /** The usual one need not be stored: it follows from how the reading is known. */
  readonly from: 'usual' | 'digit' | 'given';
}

export function spreadOf({ kind, how, si, halfStep, given }: SpreadOf): Spread {
  if (given !== undefined) return { si: given, from: 'given' };
  const usual = usualPlusMinus(how, kind, si);
  // A plate and a drawing mean the figure they print; only what is read off an instrument has a last digit.
  if (how !== 'measured' || halfStep <= usual * (1 + 1e-9)) return { si: usual, from: 'usual' };
  return { si: halfStep, from: 'digit' };
}

/** The kind of a difference of two values. */
export function differenceOf(kind: quantity.Kind): quantity.Kind {
  return kind === 'temperature' ? 'temperature-difference' : kind;
}

/** An SI difference in the unit of the value, as a reading stores it. */
export function inUnitOf(difference: number, unit: string, kind: quantity.Kind): number {
  const step = quantity.si(1, unit, kind) - quantity.si(0, unit, kind);
  return Number((difference / step).toPrecision(6));
}

/** A typed ±: an SI difference, undefined where it is none; a bare number is in the unit of the value. */
export function readSpread(typed: string, { kind, unit, marks }: Typing): number | undefined {
  const text = typed.replace(/^\s*(?:±|\+\/-)/u, '').trim();
  if (text === '') return undefined;
  const read = quantity.parseQuantity(text, differenceOf(kind), {
    defaultUnit: differenceUnit(unit),
    ...(marks === undefined ? {} : { decimal: marks }),
  });
  return read.ok && read.value.si >= 0 ? read.value.si : undefined;
}

function differenceUnit(unit: string): string {
  return /^deg[CF]$/.test(unit) ? `delta ${unit}` : unit;
}
