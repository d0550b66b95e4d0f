/** What each key does to what is typed. A unit is a key: it labels the number before it, and never converts it. */

/** A unit at the end, behind a number: no word of it begins with a digit. */
const UNIT_AT_END = /^(.*\d)\s*([^\d\s.,/\-−]\S*(?: [^\d\s]\S*)*)$/u;
const FRACTION_AT_END = /^(.*?)(\s|-)?(\d+)\/(\d+)$/u;
const SIXTEENTHS = 16;

/** `27` and ft → `27 ft `, so that `9` may follow; a unit pressed after a unit takes its place. */
export function withUnit(typed: string, unit: string): string {
  const bare = typed.trimEnd();
  if (bare === '' || bare === '-') return typed;
  return `${UNIT_AT_END.exec(bare)?.[1] ?? bare} ${unit} `;
}

/**
 * `27 ft 9` and 1/2 → `27 ft 9-1/2`. A fraction that stands is replaced, or taken away when pressed again; 1/16 goes
 * up by one at each tap: 1/2 → 9/16 → 5/8.
 */
export function withFraction(typed: string, fraction: string): string {
  const inches = /^(.*\d)\s*in\s*$/u.exec(typed)?.[1];
  if (inches !== undefined) return `${withFraction(inches, fraction)} in`;
  const [, before = '', joint = '', over, under] = FRACTION_AT_END.exec(typed) ?? [];
  if (over === undefined || under === undefined) return joined(typed, fraction);
  const next = fraction === '1/16' ? oneUp(Number(over), Number(under)) : fraction;
  const bare = joint === '-' || before === '' ? before : `${before}${joint}`;
  return next === undefined || next === `${over}/${under}` ? bare : joined(bare, next);
}

function oneUp(over: number, under: number): string | undefined {
  if (under === 0 || SIXTEENTHS % under !== 0) return '1/16';
  const parts = (over * SIXTEENTHS) / under + 1;
  if (parts >= SIXTEENTHS) return undefined;
  let [top, bottom] = [parts, SIXTEENTHS];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

function joined(before: string, fraction: string): string {
  return /\d$/u.test(before) ? `${before}-${fraction}` : `${before}${fraction}`;
}

/** The fraction that stands at the end, so that its key is seen as pressed. */
export function fractionOf(typed: string): string | undefined {
  const [, , , over, under] = FRACTION_AT_END.exec(typed.replace(/\s*in\s*$/u, '')) ?? [];
  return over === undefined ? undefined : `${over}/${under}`;
}

/** A digit after a unit stands apart from it. */
export function withDigit(typed: string, digit: string): string {
  return /[^\d\s.,/\-−]$/u.test(typed) ? `${typed} ${digit}` : `${typed}${digit}`;
}

/** Takes away a whole unit, a whole fraction, else one sign. */
export function withoutLast(typed: string): string {
  const bare = typed.trimEnd();
  const unit = UNIT_AT_END.exec(bare);
  if (unit !== null) return unit[1] ?? '';
  const fraction = FRACTION_AT_END.exec(bare);
  if (fraction === null) return bare.slice(0, -1).trimEnd();
  const [, before = '', joint = ''] = fraction;
  return joint === '-' ? before : `${before}${joint}`;
}

/** Above or below zero, without a minus key: the sign stands in front whatever was typed first. */
export function withSign(typed: string, below: boolean): string {
  const bare = typed.replace(/^\s*[-−+]\s*/u, '');
  return below ? `-${bare}` : bare;
}

export function isBelow(typed: string): boolean {
  return /^\s*[-−]/u.test(typed);
}

/** Whether a key's unit is in what is typed. */
export function hasUnit(typed: string, unit: string): boolean {
  const escaped = unit.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&');
  return new RegExp(`\\d\\s*${escaped}(?=\\s|$)`, 'u').test(typed);
}

/** Pasted text without what cannot be seen: marks of writing direction, zero widths, ends of lines. */
export function withoutUnseen(pasted: string): string {
  return pasted.replace(/\p{Cf}/gu, '').replace(/\p{Cc}+/gu, ' ');
}
