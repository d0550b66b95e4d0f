/**
 * A run of digits, points and commas as a number.
 *
 * Where only one reading is possible it is taken, whichever decimal sign was asked for (`1,5`, `1.234,5`,
 * `1,234,567`), and marked when it is the other one. Where both are possible (`1,234`) the sign asked for decides; with
 * `either` it is refused, and both readings are named.
 *
 * The marks of a place go further: what that place writes is taken at its word, be it the decimal sign or the mark
 * between thousands; only what it would write otherwise is refused where both readings are possible. `3,450` is 3450 in
 * the United States, which part thousands so; `3.450` is asked about in Spain, where four digits are not parted, and in
 * France, where a space parts them.
 */
import type { NumberMarks } from './format-number.ts';

export type DecimalSign = 'point' | 'comma' | 'either';

export interface DigitsRead {
  readonly value: number;
  /** The digits as a plain number, `1234.5`. */
  readonly plain: string;
  readonly step: number;
  readonly otherSign: boolean;
}

export interface DigitsFault {
  readonly reason: 'digits-misplaced' | 'decimal-sign-unclear' | 'number-beyond-range';
  readonly expected?: readonly string[];
}

const POINT = /^(?:\d*|[1-9]\d{0,2}(?:,\d{3})+|[1-9]\d{0,2}(?:\s\d{3})+)(?:\.\d+)?$/;
const COMMA = /^(?:\d*|[1-9]\d{0,2}(?:\.\d{3})+|[1-9]\d{0,2}(?:\s\d{3})+)(?:,\d+)?$/;

/** Reads the digits; `asked` left out means point. */
export function readDigits(
  text: string,
  asked: DecimalSign | NumberMarks = 'point',
): DigitsRead | DigitsFault {
  const decimal = typeof asked === 'string' ? asked : signIn(text, asked);
  const asPoint = POINT.test(text) ? text.replace(/[,\s]/g, '') : undefined;
  const asComma = COMMA.test(text) ? text.replace(/[.\s]/g, '').replace(',', '.') : undefined;
  if (asPoint === undefined && asComma === undefined) return { reason: 'digits-misplaced' };
  const both = asPoint !== undefined && asComma !== undefined && asPoint !== asComma;
  if (both && decimal === 'either') return { reason: 'decimal-sign-unclear', expected: [asPoint, asComma] };
  const wanted = decimal === 'comma' ? asComma : asPoint;
  const plain = wanted ?? asPoint ?? asComma ?? '';
  const value = Number(plain);
  if (!Number.isFinite(value)) return { reason: 'number-beyond-range' };
  return { value, plain, step: lastPlace(plain), otherSign: decimal !== 'either' && wanted === undefined };
}

/** The place's own sign where the text is written as the place writes; else either. */
function signIn(text: string, { decimal, group, groupFrom }: NumberMarks): DecimalSign {
  const own = decimal === ',' ? 'comma' : 'point';
  if (text.includes(decimal)) return own;
  const digits = text.replace(/\D/g, '').length;
  return text.includes(group) && digits >= groupFrom ? own : 'either';
}

function lastPlace(plain: string): number {
  const point = plain.indexOf('.');
  return point < 0 ? 1 : Number(`1e-${plain.length - point - 1}`);
}
