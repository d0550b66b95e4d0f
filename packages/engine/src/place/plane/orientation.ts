/**
 * On which side of a line a point lies, decided exactly.
 *
 * The plain determinant is trusted where it is larger than its own rounding could be; otherwise the six products it
 * expands to are summed without rounding, each product and each sum kept as a value and its error. So three points
 * that lie on one line are said to, and no two tests of one plan contradict each other.
 *
 * Source: J. R. Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates (1997),
 * theorems 2, 7, 10, 18 and the error bound (3 + 16ε)ε; from memory.
 * Range: any finite coordinates whose products neither overflow nor underflow, as no plan in metres does. Errors: none.
 * Worked example: (0, 0), (1, 0), (0, 1) → positive.
 */
import type { Point } from './point.ts';

const EPSILON = 2 ** -53;
const BOUND = (3 + 16 * EPSILON) * EPSILON;
const SPLITTER = 2 ** 27 + 1;

/** Positive where c lies to the left of the way from a to b, negative to the right, zero on the line. */
export function orientation(a: Point, b: Point, c: Point): number {
  const left = (a.x - c.x) * (b.y - c.y);
  const right = (a.y - c.y) * (b.x - c.x);
  const determinant = left - right;
  const bound = BOUND * (Math.abs(left) + Math.abs(right));
  if (determinant > bound || -determinant > bound) return determinant;
  return exactSign(a, b, c);
}

function exactSign(a: Point, b: Point, c: Point): number {
  const sum: number[] = [];
  addProduct(sum, a.x, b.y);
  addProduct(sum, -a.x, c.y);
  addProduct(sum, -c.x, b.y);
  addProduct(sum, -a.y, b.x);
  addProduct(sum, a.y, c.x);
  addProduct(sum, c.y, b.x);
  // No two parts overlap, so that the last that is not zero has the sign of all.
  return sum.findLast((part) => part !== 0) ?? 0;
}

function addProduct(sum: number[], x: number, y: number): void {
  const product = x * y;
  const [xHigh, xLow] = split(x);
  const [yHigh, yLow] = split(y);
  const error = xLow * yLow - (product - xHigh * yHigh - xLow * yHigh - xHigh * yLow);
  grow(sum, error);
  grow(sum, product);
}

function split(value: number): readonly [high: number, low: number] {
  const large = SPLITTER * value;
  const high = large - (large - value);
  return [high, value - high];
}

/** Adds a number to an expansion whose parts stand smallest first. */
function grow(sum: number[], value: number): void {
  let carried = value;
  for (let i = 0; i < sum.length; i += 1) {
    const part = sum[i] ?? 0;
    const whole = carried + part;
    const virtual = whole - carried;
    sum[i] = carried - (whole - virtual) + (part - virtual);
    carried = whole;
  }
  sum.push(carried);
}
