/**
 * r·|q|^(n−1), the dearest number of the inner loop. Within a hundredth of the flow it was last taken at, seven
 * terms of the binomial series give it to the last digit for a third of the price.
 *
 * A law keeps r at `at`, n at `at + 1`, and here one over that flow at `at + 5` and the term there at `at + 6`.
 */
export const LAST_FLOW = 5;
export const LAST_TERM = 6;
const REACH = 0.01;

/** r·size^(n−1) for a flow of this size above zero, from the numbers of the law at `at`. */
export function powerTerm(p: Float64Array, at: number, size: number): number {
  const n = p[at + 1]!;
  const e = size * p[at + LAST_FLOW]! - 1;
  if (e < REACH && e > -REACH) return p[at + LAST_TERM]! * binomial(n - 1, e);
  const term = p[at]! * size ** (n - 1);
  p[at + LAST_FLOW] = 1 / size;
  p[at + LAST_TERM] = term;
  return term;
}

/** Multiplied by, since a division costs as much as the rest of a term. */
const THIRD = 1 / 3;
const SIXTH = 1 / 6;
const SEVENTH = 1 / 7;

/** (1 + e)^k for small e, to the seventh power of e. */
function binomial(k: number, e: number): number {
  const last = (k - 5) * SIXTH * e * (1 + (k - 6) * SEVENTH * e);
  const middle = (k - 3) * 0.25 * e * (1 + (k - 4) * 0.2 * e * (1 + last));
  return 1 + k * e * (1 + (k - 1) * 0.5 * e * (1 + (k - 2) * THIRD * e * (1 + middle)));
}
