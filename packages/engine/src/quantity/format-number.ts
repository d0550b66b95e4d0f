/** Prints a plain number: digits, decimal sign, grouping. */

export interface NumberStyle {
  /** Significant digits; digits before the decimal sign are never cut. Trailing zeros stay. */
  readonly digits?: number;
  /** Digits after the decimal sign; wins over `digits`. Trailing zeros stay. */
  readonly decimals?: number;
  readonly decimal?: 'point' | 'comma';
  /** Signs of a place, where neither `decimal` is its habit; they win over it. */
  readonly marks?: NumberMarks;
  /** Part the digits before the decimal sign in threes: `250,000`, or with a comma as decimal sign `250 000`. */
  readonly group?: boolean;
}

/** How a place writes numbers. */
export interface NumberMarks {
  readonly decimal: string;
  readonly group: string;
  /** Numbers with fewer digits before the decimal sign are not parted. */
  readonly groupFrom: number;
  /** What stands between a number and its per cent sign. */
  readonly percent: string;
}

const USUAL_DIGITS = 4;
const NO_BREAK_SPACE = '\u00a0';

/** Text of a finite number. */
export function formatNumber(value: number, style: NumberStyle = {}): string {
  const plain = rounded(value, style);
  const [mantissa = '', power] = plain.split('e');
  const [whole = '', part] = mantissa.split('.');
  const marks = marksOf(style);
  const front = style.group ? grouped(whole, marks) : whole;
  const tail = part === undefined ? '' : `${marks.decimal}${part}`;
  return `${front}${tail}${power === undefined ? '' : `e${power}`}`;
}

const POINT: NumberMarks = { decimal: '.', group: ',', groupFrom: 4, percent: '' };
const COMMA: NumberMarks = { decimal: ',', group: NO_BREAK_SPACE, groupFrom: 4, percent: '' };

function marksOf({ marks, decimal }: NumberStyle): NumberMarks {
  return marks ?? (decimal === 'comma' ? COMMA : POINT);
}

function rounded(value: number, style: NumberStyle): string {
  const size = Math.abs(value);
  if (size >= 1e15) return value.toExponential((style.digits ?? USUAL_DIGITS) - 1).replace('+', '');
  if (style.decimals !== undefined) return unsignedZero(value.toFixed(style.decimals));
  const digits = style.digits ?? USUAL_DIGITS;
  if (size !== 0 && size < 1e-4) {
    const text = value.toExponential(digits - 1);
    return style.digits === undefined ? text.replace(/\.?0*e/, 'e') : text;
  }
  const text = unsignedZero(value.toFixed(Math.max(0, digits - magnitude(value, digits))));
  return style.digits === undefined && text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** Digits before the decimal sign once rounded; negative for leading zeros after it. */
function magnitude(value: number, digits: number): number {
  return value === 0 ? 1 : Number(value.toExponential(digits - 1).split('e')[1]) + 1;
}

function unsignedZero(text: string): string {
  return /^-[0.]+$/.test(text) ? text.slice(1) : text;
}

function grouped(whole: string, { group, groupFrom }: NumberMarks): string {
  const digits = whole.startsWith('-') ? whole.length - 1 : whole.length;
  return digits < groupFrom ? whole : whole.replace(/\B(?=(\d{3})+$)/g, group);
}
