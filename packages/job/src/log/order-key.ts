/**
 * Fractional order: a key can always be found between two others, so moving one element writes one operation.
 *
 * A key is a fraction between 0 and 1 in base 62, its digits after the point, compared as a string. It never ends in
 * `0`: `V` and `V0` would be the same fraction with nothing between them. Two devices that insert at the same place at
 * the same time make the same key; the element id then decides, alike on both.
 */
const DIGITS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
const BASE = DIGITS.length;
/** Keys at either end step in the last of these digits, so that a list may grow by millions before keys lengthen. */
const STEP_DIGITS = 4;
const STEPS = BASE ** STEP_DIGITS;
const KEY = /^[0-9A-Za-z]{0,999}[1-9A-Za-z]$/;

export function isOrderKey(text: string): boolean {
  return KEY.test(text);
}

/**
 * A key after `low` and before `high`; undefined stands for the end of the list. Where `high` is not above `low`
 * nothing lies between them, and the key comes after `low`.
 */
export function orderBetween(low?: string, high?: string): string {
  if (low === undefined) return high === undefined ? DIGITS[BASE >> 1]! : orderBefore(high);
  return high === undefined || high <= low ? orderAfter(low) : midpoint(low, high);
}

/** `count` keys in order, evenly one step apart. */
export function orderKeys(count: number): string[] {
  const keys: string[] = [];
  for (let i = 0; i < count; i++) keys.push(orderBetween(keys.at(-1)));
  return keys;
}

function orderAfter(low: string): string {
  const next = stepNumber(low) + 1;
  return next < STEPS ? stepText(next) : midpoint(low, undefined);
}

function orderBefore(high: string): string {
  const previous = stepNumber(high) - 1;
  return previous > 0 ? stepText(previous) : midpoint('', high);
}

function stepNumber(key: string): number {
  let n = 0;
  for (let i = 0; i < STEP_DIGITS; i++) n = n * BASE + digitAt(key, i);
  return n;
}

function stepText(step: number): string {
  let text = '';
  for (let n = step, i = 0; i < STEP_DIGITS; i++, n = Math.floor(n / BASE)) text = DIGITS[n % BASE] + text;
  return text.replace(/0+$/, '');
}

function digitAt(key: string, at: number): number {
  return at < key.length ? DIGITS.indexOf(key[at]!) : 0;
}

/** The fraction halfway between two keys, cut to the fewest digits that stand strictly between them. */
function midpoint(low: string, high: string | undefined): string {
  let text = '';
  let bounded = high !== undefined;
  for (let i = 0; ; i++) {
    const a = digitAt(low, i);
    const b = bounded ? digitAt(high!, i) : BASE;
    if (b - a > 1) return text + DIGITS[(a + b) >> 1];
    text += DIGITS[a];
    // One digit apart: any longer fraction that follows `low` here stays under `high`.
    if (b > a) bounded = false;
  }
}
