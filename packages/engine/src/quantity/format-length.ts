/** Prints inches in fractions, and feet with inches, as a tape is read. */

/** The finest part of an inch that is printed without being asked for. */
const FINEST = 64;
/** Closer than half a thousandth of an inch counts as the fraction. */
const CLOSE = 0.0005;

/** Longer than any tape, in inches: its fractions are lost in the digits before them. */
export const BEYOND_TAPES = 1e9;

/** `1-1/2`, `3/4`, `6`; undefined where the inches are no plain fraction and no parts were asked for. */
export function formatInches(inches: number, parts?: number): string | undefined {
  const size = Math.abs(inches);
  if (size > BEYOND_TAPES) return undefined;
  const wanted = parts ?? FINEST;
  const count = Math.round(size * wanted);
  if (parts === undefined && (Math.abs(count / wanted - size) > CLOSE || size > 1000)) return undefined;
  const sign = inches < 0 && count > 0 ? '-' : '';
  return sign + withFraction(Math.floor(count / wanted), count % wanted, wanted);
}

/** What feet and inches are called. */
export type LengthNames = readonly [feet: string, inches: string];

/** `20 ft 6 in`, rounded to 1/`parts` of an inch. */
export function formatFeetAndInches(feet: number, [ft, inch]: LengthNames, parts = 8): string {
  const count = Math.round(Math.abs(feet) * 12 * parts);
  const sign = feet < 0 && count > 0 ? '-' : '';
  const whole = Math.floor(count / (12 * parts));
  const rest = count - whole * 12 * parts;
  const inches = withFraction(Math.floor(rest / parts), rest % parts, parts);
  if (rest === 0) return `${sign}${whole} ${ft}`;
  return whole === 0 ? `${sign}${inches} ${inch}` : `${sign}${whole} ${ft} ${inches} ${inch}`;
}

function withFraction(whole: number, over: number, under: number): string {
  if (over === 0) return String(whole);
  const shared = divisor(over, under);
  const fraction = `${over / shared}/${under / shared}`;
  return whole === 0 ? fraction : `${whole}-${fraction}`;
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
