/** Reads a quantity written in parts: `20 ft 6 in`, `27' 9-1/2"`, `5 lb 3 oz`, `1 h 30 min`. */
import { findUnit } from './find-unit.ts';
import type { NumberMarks } from './format-number.ts';
import type { Kind } from './kinds.ts';
import type { DecimalSign } from './parse-digits.ts';
import type { Fault } from './parse-issue.ts';
import { readNumber } from './parse-number.ts';
import type { Unit } from './unit.ts';

/** Units that follow one another, largest first. */
const CHAINS: Partial<Record<Kind, readonly (readonly string[])[]>> = {
  length: [
    ['mi', 'yd', 'ft', 'in'],
    ['km', 'm', 'cm', 'mm'],
  ],
  diameter: [['ft', 'in']],
  head: [['ft', 'in']],
  mass: [
    ['lb', 'oz'],
    ['t', 'kg', 'g'],
  ],
  time: [['wk', 'd', 'h', 'min', 's']],
};

export interface PartsRead {
  readonly value: number;
  /** The first unit. */
  readonly unit: Unit;
  /** Of the last part, in the first unit. */
  readonly step: number;
  readonly si: number;
  readonly echo: string;
}

interface Part {
  readonly value: number;
  readonly step: number;
  readonly whole: boolean;
  readonly unit: Unit;
  readonly position: number;
}

/** The unit of a part, and what may stand between it and the next part. */
const MARK = /\s*-?([a-zA-Z]+\.?|'|"|′|″|’|”)(?:\s*,\s*|\s*-\s+|-|\s*)/y;

/** The parts of `text`; undefined where it is not written in parts. */
export function readParts(
  text: string,
  kind: Kind,
  decimal: DecimalSign | NumberMarks | undefined,
): PartsRead | { readonly fault: Fault } | undefined {
  const chains = CHAINS[kind];
  if (chains === undefined) return undefined;
  const parts: Part[] = [];
  for (let at = 0; at < text.length; ) {
    const number = readNumber(text, at, decimal);
    if ('fault' in number) return undefined;
    MARK.lastIndex = number.end;
    const mark = MARK.exec(text);
    const unit = unitOfPart(mark?.[1], kind, parts.at(-1)?.unit);
    if (unit === undefined || (parts.length > 0 && number.value < 0)) return undefined;
    if (mark === null && !endsWell(text, at, number.end)) return undefined;
    parts.push({ ...number, unit, position: at });
    at = mark === null ? text.length : MARK.lastIndex;
  }
  if (parts.length < 2 || !chains.some((chain) => follow(chain, parts))) return undefined;
  return fault(parts, text) ?? sum(parts);
}

/** A last number without a unit ends the text; `ft2` and `ft3` are another unit, not feet and inches. */
function endsWell(text: string, start: number, end: number): boolean {
  const bare = text.slice(start, end).trim();
  const isPower = /[a-zA-Z]$/.test(text.slice(0, start)) && (bare === '2' || bare === '3');
  return text.slice(end).trim() === '' && !isPower;
}

/** `20' 6` leaves out the inches. */
function unitOfPart(mark: string | undefined, kind: Kind, before: Unit | undefined): Unit | undefined {
  if (mark === undefined) return before?.id === 'ft' ? findUnit('in', kind)?.unit : undefined;
  return findUnit(mark, kind)?.unit;
}

function follow(chain: readonly string[], parts: readonly Part[]): boolean {
  const places = parts.map((part) => chain.indexOf(part.unit.id));
  return places.every((place, i) => place >= 0 && place > (places[i - 1] ?? -1));
}

function fault(parts: readonly Part[], text: string): { readonly fault: Fault } | undefined {
  for (const [i, part] of parts.entries()) {
    const next = parts[i + 1];
    const before = parts[i - 1];
    const found = text.slice(part.position, next?.position).trim();
    const at = { position: part.position, found };
    if (next !== undefined && !part.whole) return { fault: { reason: 'part-not-whole', ...at } };
    if (before !== undefined && part.value * part.unit.factor >= before.unit.factor * (1 - 1e-12))
      return { fault: { reason: 'part-too-large', ...at } };
  }
  return undefined;
}

function sum(parts: readonly Part[]): PartsRead | undefined {
  const [first] = parts;
  const last = parts.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const sign = first.value < 0 || Object.is(first.value, -0) ? -1 : 1;
  let si = 0;
  for (const part of parts) si += Math.abs(part.value) * part.unit.factor;
  si *= sign;
  return {
    value: si / first.unit.factor,
    unit: first.unit,
    step: (last.step * last.unit.factor) / first.unit.factor,
    si,
    echo: (sign < 0 ? '-' : '') + parts.map((part) => `${Math.abs(part.value)} ${part.unit.id}`).join(' '),
  };
}
