/**
 * Reads the number at the head of a text as people in the trade write it: decimals with point or comma, grouped
 * digits, fractions (`3/4`, `1-1/2`, `1 1/2`, `1½`), powers of ten.
 */
import type { NumberMarks } from './format-number.ts';
import { type DecimalSign, type DigitsRead, readDigits } from './parse-digits.ts';
import type { Fault } from './parse-issue.ts';

export interface NumberRead {
  readonly value: number;
  /** One unit of the last digit typed, or one part of the fraction. */
  readonly step: number;
  /** Where the text after the number begins. */
  readonly end: number;
  readonly whole: boolean;
  /** Read with the other decimal sign than the one asked for. */
  readonly otherSign: boolean;
}

export type NumberResult = NumberRead | { readonly fault: Fault };

const VULGAR: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
  ['⅒', [1, 10]],
]);

const SPACE = '[ \\t\\u00a0\\u2009\\u202f]';
const SIGN = /[+\-−]/y;
const DIGITS = new RegExp(
  `\\d{1,3}(?:${SPACE}\\d{3})+(?![\\d/⁄])(?:[.,]\\d+)?|[.,]?\\d(?:[\\d.,]*\\d)?`,
  'y',
);
const OVER = /[/⁄](\d+)/y;
const AND_OVER = new RegExp(`(?:${SPACE}+|-)(\\d+)[/⁄](\\d+)`, 'y');
const AND_VULGAR = new RegExp(`(?:${SPACE}*|-)([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒])`, 'y');
const POWER = /[eE]([+\-−]?\d+)|[ \u00a0]?[x×*·][ \u00a0]?10(?:\^([+\-−]?\d+)|([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))/y;
const BLANK = new RegExp(`${SPACE}*`, 'y');

/** The number at `start`; leading spaces are skipped. */
export function readNumber(
  text: string,
  start: number,
  decimal: DecimalSign | NumberMarks | undefined,
): NumberResult {
  const from = start + (match(BLANK, text, start)?.[0].length ?? 0);
  const sign = match(SIGN, text, from)?.[0] ?? '';
  const at = from + sign.length;
  if (sign !== '' && match(SIGN, text, at)) return faulty('two-signs', from, text.slice(from, at + 1));
  const read = unsigned(text, at, decimal);
  if ('fault' in read || sign === '' || sign === '+') return read;
  return { ...read, value: -read.value };
}

function unsigned(text: string, at: number, decimal: DecimalSign | NumberMarks | undefined): NumberResult {
  const digits = match(DIGITS, text, at)?.[0] ?? '';
  const end = at + digits.length;
  if (digits === '' || /^\d+$/.test(digits)) {
    const fraction = readFraction(text, at, digits);
    if (fraction !== undefined) return fraction;
  }
  if (digits === '') return faulty('number-expected', at, text.slice(at, at + 12));
  const read = readDigits(digits, decimal);
  if ('reason' in read) return { fault: { ...read, position: at, found: digits } };
  return powered(text, { ...read, end: end + (isFullStop(text, end) ? 1 : 0) }, at);
}

type Plain = DigitsRead & { readonly end: number };

function powered(text: string, plain: Plain, at: number): NumberResult {
  const power = match(POWER, text, plain.end);
  const exponent = power === null ? 0 : Number(ascii(power[1] ?? power[2] ?? power[3] ?? '0'));
  const end = plain.end + (power?.[0].length ?? 0);
  const value = exponent === 0 ? plain.value : Number(`${plain.plain}e${exponent}`);
  const step = exponent === 0 ? plain.step : Number(`${plain.step}e${exponent}`);
  if (!Number.isFinite(value) || (value === 0 && plain.value !== 0))
    return faulty('number-beyond-range', at, text.slice(at, end));
  return { ...plain, value, step, end, whole: Number.isInteger(value) && step >= 1 };
}

/** A fraction, alone or after the whole number `whole` that stands at `at`; undefined where there is none. */
function readFraction(text: string, at: number, whole: string): NumberResult | undefined {
  const after = at + whole.length;
  const vulgar = match(AND_VULGAR, text, after);
  const parts = VULGAR.get(vulgar?.[1] ?? '');
  if (vulgar !== null && parts !== undefined)
    return mixed(Number(whole), parts, { at, end: after + vulgar[0].length });
  if (whole === '') return undefined;
  const over = match(OVER, text, after);
  if (over !== null) return simple(text, whole, over[1] ?? '', { at, end: after + over[0].length });
  const both = match(AND_OVER, text, after);
  if (both === null) return undefined;
  const place = { at, end: after + both[0].length };
  if (Number(both[2]) === 0) return faulty('division-by-zero', at, text.slice(at, place.end));
  if (Number(both[1]) >= Number(both[2])) return faulty('digits-misplaced', at, text.slice(at, place.end));
  return mixed(Number(whole), [Number(both[1]), Number(both[2])], place);
}

interface Place {
  readonly at: number;
  readonly end: number;
}

function simple(text: string, over: string, under: string, place: Place): NumberResult {
  if (Number(under) === 0) return faulty('division-by-zero', place.at, text.slice(place.at, place.end));
  const lost = lostSpace(over, under);
  if (lost === undefined) return mixed(0, [Number(over), Number(under)], place);
  const expected = [lost, `${over}/${under} = ${Number(over) / Number(under)}`];
  const found = text.slice(place.at, place.end);
  return { fault: { reason: 'fraction-unclear', position: place.at, found, expected } };
}

/** `11/2` may be `1 1/2` with its space lost; `5/4` and `21/64` can only be what they say. */
function lostSpace(over: string, under: string): string | undefined {
  if (over.length < 2 || Number(over) <= Number(under)) return undefined;
  for (let cut = 1; cut < over.length; cut++) {
    const rest = over.slice(cut);
    if (!rest.startsWith('0') && Number(rest) < Number(under))
      return `${over.slice(0, cut)} ${rest}/${under}`;
  }
  return undefined;
}

function mixed(whole: number, [over, under]: readonly [number, number], place: Place): NumberResult {
  const value = whole + over / under;
  if (!Number.isFinite(value)) return faulty('number-beyond-range', place.at, '');
  return { value, step: 1 / under, end: place.end, whole: false, otherSign: false };
}

/** A full stop that ends a sentence, not a number: `5. in`. */
function isFullStop(text: string, at: number): boolean {
  return text[at] === '.' && !/[\d.,]/.test(text[at + 1] ?? '');
}

function ascii(exponent: string): string {
  const signs = exponent.replace(/[−⁻]/, '-').replace('⁺', '+');
  return signs.replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit)));
}

function faulty(reason: Fault['reason'], position: number, found: string): { readonly fault: Fault } {
  return { fault: { reason, position, found } };
}

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}
