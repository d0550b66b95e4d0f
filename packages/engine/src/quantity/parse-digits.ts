/**
 * A run of digits, points and commas as a number.
 *
 * Where only one reading is possible it is taken, whichever decimal sign was asked for (`1,5`, `1.234,5`,
 * `1,234,567`), and marked when it is the other one. Where both are possible (`1,234`) the sign asked for decides; with `either` it
 * is refused, and both readings are named.
 */
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

/** Reads the digits; `decimal` left out means point. */
export function readDigits(text: string, decimal: DecimalSign = 'point'): DigitsRead | DigitsFault {
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

function lastPlace(plain: string): number {
  const point = plain.indexOf('.');
  return point < 0 ? 1 : Number(`1e-${plain.length - point - 1}`);
}
