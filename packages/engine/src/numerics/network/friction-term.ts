/**
 * The root 1/√f of the turbulent law, whose logarithms are the dearest numbers of a pipe. Near the Reynolds number it
 * was last taken at, the last root is a start from which one step or two leave rounding only (see `colebrook`).
 *
 * A law keeps ε/D at `at + 2`, and here the last Reynolds number, its root and how that rises with the logarithm of
 * the Reynolds number.
 */
import { COLEBROOK_VISCOUS, colebrookStart, colebrookStep, TWO_LOG } from './friction.ts';

const ROUGHNESS = 2;
export const LAST_REYNOLDS = 6;
export const LAST_ROOT = 7;
export const LAST_RISE = 8;

/** Within this part of the last Reynolds number its tangent is met by one step, within the other its root by two. */
const NEAR = 0.03;
const AROUND = 0.7;

/** 1/√f at a Reynolds number of 4000 or more, from the numbers of the law at `at`; and its rise there, kept. */
export function frictionRoot(p: Float64Array, at: number, reynolds: number): number {
  const a = p[at + ROUGHNESS]! / 3.7;
  const b = COLEBROOK_VISCOUS / reynolds;
  const last = p[at + LAST_REYNOLDS]!;
  const e = last === 0 ? Number.POSITIVE_INFINITY : reynolds / last - 1;
  let x = p[at + LAST_ROOT]!;
  if (e < NEAR && e > -NEAR) x = colebrookStep(a, b, x + p[at + LAST_RISE]! * e * (1 - 0.5 * e));
  else {
    if (!(e < AROUND && e > -AROUND)) x = colebrookStart(a, b);
    x = colebrookStep(a, b, colebrookStep(a, b, x));
  }
  const k = (TWO_LOG * b) / (a + b * x);
  p[at + LAST_REYNOLDS] = reynolds;
  p[at + LAST_ROOT] = x;
  p[at + LAST_RISE] = (k * x) / (1 + k);
  return x;
}
