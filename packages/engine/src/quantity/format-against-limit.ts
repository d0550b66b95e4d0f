/** Prints a value beside its limit with enough digits to tell them apart. */
import { type FormatOptions, formatQuantity } from './format.ts';

export interface AgainstLimit {
  readonly value: string;
  readonly limit: string;
}

const MOST_DIGITS = 15;

/**
 * Texts of a value and its limit that differ wherever the two differ: never "6.0 of 6.0".
 *
 * Starts at `digits` (usually 3) and takes more until the texts part; equal values give equal texts.
 * Worked example: 5.996 and 6 in w.c. at 2 digits → `5.996 in w.c.` and `6.000 in w.c.`.
 */
export function formatAgainstLimit(
  [value, limit]: readonly [value: number, limit: number],
  unit: string,
  options: FormatOptions = {},
): AgainstLimit {
  for (let digits = options.digits ?? 3; ; digits++) {
    const texts = {
      value: formatQuantity(value, unit, { ...options, digits }),
      limit: formatQuantity(limit, unit, { ...options, digits }),
    };
    if (texts.value !== texts.limit || value === limit || digits >= MOST_DIGITS) return texts;
  }
}
