/**
 * Reads a quantity as the trade writes it, for the kind that is asked for.
 *
 * `3/4 in`, `1-1/2"`, `20 ft 6 in`, `7 in w.c.`, `14 oz` (of pressure or of mass), `250,000 BTU` (of a heat rate: per
 * hour), `250 MBH`, `84 °F`, `#8 AWG`, `1000 ft3/h (60 F, 14.73 psia)`. Never throws and never yields NaN: what is not
 * understood is an issue with the part, its position and what would be right.
 */
import { GAUGES, gaugeText, readGauge } from './awg.ts';
import { toSi } from './convert.ts';
import {
  baseNames,
  findUnit,
  hasUnknownBase,
  otherKinds,
  unitNames,
  unitsInOtherLetters,
} from './find-unit.ts';
import type { NumberMarks } from './format-number.ts';
import type { GasBase } from './gas-base.ts';
import { KINDS, type Kind } from './kinds.ts';
import type { DecimalSign } from './parse-digits.ts';
import type { Fault, ParseIssue } from './parse-issue.ts';
import { type NumberRead, readNumber } from './parse-number.ts';
import { readParts } from './parse-parts.ts';
import type { ParseNote, Unit } from './unit.ts';

export interface ParseOptions {
  /**
   * The decimal sign where a text could be read both ways (`1,234`); `either` refuses such a text. The marks of a place
   * take what that place writes at its word, and refuse only what it would write otherwise. Usually point.
   */
  readonly decimal?: DecimalSign | NumberMarks;
  /** Unit of a bare number; without it a bare number is refused (except of a pure ratio). */
  readonly defaultUnit?: string;
  /** Gas base of a standard volume whose text names none. */
  readonly base?: GasBase;
  /** Name of the quantity in the caller's eyes, carried into issues. */
  readonly where?: string;
}

export interface Quantity {
  readonly kind: Kind;
  readonly si: number;
  /** Id of the unit it was read in; the larger one of `20 ft 6 in`. */
  readonly unit: string;
  /** Value in that unit. */
  readonly value: number;
  /** Half of one unit in the last digit typed, as an SI difference. */
  readonly halfStep: number;
  /** How it was read, in plain ASCII: `250 kBtu/h`, `1000 ft3/h(60F,14.73psia)`. */
  readonly echo: string;
  readonly base?: GasBase;
  readonly notes: readonly ParseNote[];
}

export type Parsed =
  | { readonly ok: true; readonly value: Quantity }
  | { readonly ok: false; readonly issues: readonly ParseIssue[] };

/** Longest text that is looked at. */
export const LONGEST_TEXT = 100;

/**
 * Reads `text` as a quantity of `kind`.
 *
 * Errors: issues with `reason`, `position`, `found` and `expected`; throws only on a default unit that is no unit of
 * the kind, which is a bug of the caller.
 * Worked example: parseQuantity('1-1/2"', 'diameter') → si 0.0381, unit `in`, value 1.5.
 */
export function parseQuantity(text: string, kind: Kind, options: ParseOptions = {}): Parsed {
  const about = { kind, where: options.where ?? 'text' };
  const read = readText(text, kind, options);
  if ('fault' in read) return refused(read.fault, about);
  const { value, unit, step, notes } = read;
  // Adding zero turns −0 into 0.
  const si = (read.si ?? toSi(value, unit)) + 0;
  const fault = impossible(si, kind, text);
  if (fault) return refused(fault, about);
  const echo = read.echo ?? echoOf(value, unit);
  const halfStep = unit.gauge ? 0 : (step / 2) * unit.factor;
  const base = unit.base && { base: unit.base };
  return { ok: true, value: { kind, si, unit: unit.id, value: value + 0, halfStep, echo, notes, ...base } };
}

function echoOf(value: number, unit: Unit): string {
  if (unit.id === '1') return String(value);
  return `${unit.gauge ? gaugeText(value) : value} ${unit.id}`;
}

/** Every quantity that `text` may mean, one a kind. */
export function parseAny(text: string, options: ParseOptions = {}): readonly Quantity[] {
  return (Object.keys(KINDS) as Kind[]).flatMap((kind) => {
    const parsed = parseQuantity(text, kind, options);
    return parsed.ok ? [parsed.value] : [];
  });
}

interface TextRead {
  readonly value: number;
  readonly unit: Unit;
  readonly step: number;
  readonly notes: readonly ParseNote[];
  readonly si?: number;
  readonly echo?: string;
}

type TextResult = TextRead | { readonly fault: Fault };

function readText(text: string, kind: Kind, options: ParseOptions): TextResult {
  if (text.length > LONGEST_TEXT) return faulty('too-long', LONGEST_TEXT, text.slice(0, 20));
  if (text.trim() === '') return faulty('empty', 0, '');
  if (kind === 'wire-size') {
    const gauge = readWireGauge(text, options);
    if (gauge !== undefined) return gauge;
  }
  const start = kind === 'flow-coefficient' ? (/^\s*[CK]v\s*=?\s*(?=\d)/i.exec(text)?.[0].length ?? 0) : 0;
  const number = readNumber(text, start, options.decimal);
  if ('fault' in number) return number;
  const unitText =
    start > 0
      ? text.slice(0, start).replace('=', '').trim()
      : text.slice(number.end).replace(/^\s*-(?=[A-Za-z"'])/, '');
  return withUnit(text, number, { kind, options, unitText });
}

interface UnitAsked {
  readonly kind: Kind;
  readonly options: ParseOptions;
  readonly unitText: string;
}

function withUnit(text: string, number: NumberRead, asked: UnitAsked): TextResult {
  const { kind, options } = asked;
  const bare = asked.unitText.trim() === '';
  const name = bare ? (options.defaultUnit ?? (KINDS[kind] === '1' ? '1' : undefined)) : asked.unitText;
  if (name === undefined) return faulty('unit-missing', number.end, '', unitNames(kind));
  const found = findUnit(name, kind, options.base);
  const notes: ParseNote[] = number.otherSign ? ['other-decimal-sign'] : [];
  if (found?.unit.gauge) return unknownGauge(text);
  if (found !== undefined) {
    if (found.note) notes.push(found.note);
    return { value: number.value, unit: found.unit, step: number.step, notes };
  }
  if (bare) throw new Error(`the default unit ${name} is no unit of ${kind}`);
  const parts = readParts(text, kind, options.decimal);
  if (parts !== undefined) return 'fault' in parts ? parts : { ...parts, notes };
  return unknownUnit(text, number.end, kind);
}

function readWireGauge(text: string, options: ParseOptions): TextResult | undefined {
  const value = readGauge(text, options.defaultUnit === 'AWG');
  if (value === undefined) return undefined;
  const unit = findUnit('AWG', 'wire-size')?.unit;
  if (unit === undefined || value > GAUGES.thinnest) return unknownGauge(text);
  return { value, unit, step: 0, notes: [] };
}

function unknownGauge(text: string): TextResult {
  return faulty('gauge-unknown', 0, text.trim(), ['4/0 AWG', '1/0 AWG', '8 AWG', '40 AWG']);
}

function unknownUnit(text: string, end: number, kind: Kind): TextResult {
  const found = text.slice(end).trim();
  const position = text.indexOf(found, end);
  const at = { position, found };
  const twins = unitsInOtherLetters(found, kind);
  if (twins.length > 0) return { fault: { reason: 'letter-case-matters', ...at, expected: twins } };
  if (hasUnknownBase(found, kind))
    return { fault: { reason: 'gas-base-unknown', ...at, expected: baseNames() } };
  const others = otherKinds(found, kind);
  const expected = unitNames(kind);
  if (others.length === 0) return { fault: { reason: 'unit-unknown', ...at, expected } };
  return { fault: { reason: 'unit-of-another-kind', ...at, expected, otherKinds: others } };
}

function impossible(si: number, kind: Kind, text: string): Fault | undefined {
  if (!Number.isFinite(si)) return { reason: 'number-beyond-range', position: 0, found: text };
  const absolute = kind === 'temperature' || kind === 'absolute-pressure';
  if (absolute && si < 0) return { reason: 'below-absolute-zero', position: 0, found: text };
  return undefined;
}

function faulty(
  reason: Fault['reason'],
  position: number,
  found: string,
  expected?: readonly string[],
): { readonly fault: Fault } {
  return { fault: { reason, position, found, ...(expected ? { expected } : {}) } };
}

function refused(
  fault: Fault,
  about: { readonly kind: Kind; readonly where: string },
): { readonly ok: false; readonly issues: readonly ParseIssue[] } {
  const code = fault.reason === 'below-absolute-zero' ? 'out-of-range' : 'not-understood';
  const min = code === 'out-of-range' ? { min: 0 } : {};
  return { ok: false, issues: [{ code, ...about, ...fault, ...min }] };
}
