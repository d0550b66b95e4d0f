/** Prints a plain number: digits, decimal sign, grouping. */

export interface NumberStyle {
  /** Significant digits; digits before the decimal sign are never cut. Trailing zeros stay. */
  readonly digits?: number;
  /** Digits after the decimal sign; wins over `digits`. Trailing zeros stay. */
  readonly decimals?: number;
  readonly decimal?: 'point' | 'comma';
  /** Part the digits before the decimal sign in threes: `250,000`, or with a comma as decimal sign `250 000`. */
  readonly group?: boolean;
}

const USUAL_DIGITS = 4;
const NO_BREAK_SPACE = '\u00a0';

/** Text of a finite number. */
export function formatNumber(value: number, style: NumberStyle = {}): string {
  const plain = rounded(value, style);
  const [mantissa = '', power] = plain.split('e');
  const [whole = '', part] = mantissa.split('.');
  const comma = style.decimal === 'comma';
  const front = style.group ? grouped(whole, comma ? NO_BREAK_SPACE : ',') : whole;
  const tail = part === undefined ? '' : `${comma ? ',' : '.'}${part}`;
  return `${front}${tail}${power === undefined ? '' : `e${power}`}`;
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

function grouped(whole: string, mark: string): string {
  return whole.replace(/\B(?=(\d{3})+$)/g, mark);
}
