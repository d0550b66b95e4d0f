/**
 * A fitting as the length of straight pipe that loses the same, and back.
 *
 *     L = K·D/f        K = f·L/D
 *
 * How sources disagree: f may be that of the pipe at the flow asked for, or the fT of clean steel in full turbulence
 * that Crane's L/D values stand on. In smooth plastic the two differ by a third, so that the pair must not be mixed:
 * the factor is an argument.
 *
 * Source: Darcy–Weisbach set equal to the definition of K; Crane TP-410 equation for K = fT·L/D.
 * Range: friction factor 0.005 to 0.2.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 150 mm globe valve, K = 3.6, D = 0.154 m, f = 0.015 → 37.0 m, 240 diameters
 * (Crane TP-410M, Example 7-2).
 */
import type { Formula, Source } from '../../trace/index.ts';
import { DIAMETER, LENGTH, RESISTANCE } from '../variables.ts';

const SOURCE: Source = {
  document: 'Crane TP-410',
  at: 'K = f·L/D',
  known: 'read in a public copy',
};

const FACTOR = { symbol: 'f', kind: 'ratio', min: 0.005, max: 0.2 } as const;

export interface FittingK {
  readonly k: number;
  /** D, m. */
  readonly insideDiameter: number;
  /** Darcy's f. */
  readonly frictionFactor: number;
}

/** Straight pipe that loses what the fitting loses, m. */
export const equivalentLength: Formula<FittingK> = {
  id: 'water.equivalent-length',
  equation: 'L = K·D/f',
  inputs: { k: RESISTANCE, insideDiameter: DIAMETER, frictionFactor: FACTOR },
  result: LENGTH,
  source: SOURCE,
  kernel: (x) => (x.k * x.insideDiameter) / x.frictionFactor,
};

export interface FittingLength {
  /** L, m. */
  readonly length: number;
  /** D, m. */
  readonly insideDiameter: number;
  /** Darcy's f. */
  readonly frictionFactor: number;
}

/** K of a fitting given as a length of pipe: the inverse of `equivalentLength`. */
export const kOfLength: Formula<FittingLength> = {
  id: 'water.k-of-length',
  equation: 'K = f·L/D',
  inputs: { length: LENGTH, insideDiameter: DIAMETER, frictionFactor: FACTOR },
  result: RESISTANCE,
  source: SOURCE,
  kernel: (x) => (x.frictionFactor * x.length) / x.insideDiameter,
};
