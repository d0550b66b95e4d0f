/**
 * Length of straight pipe that loses what a fitting loses: L = (L/D) · D.
 *
 * The code's table of equivalent lengths is this product, rounded; the ratios stand in the catalogue of fittings.
 *
 * Source: IFGC 2018 Appendix A, Table A.2.2 (its row L/d; read in the 2018 residential code).
 * Range: ratio 0 to 2000, diameter 5 to 700 mm. Errors: range issues of `evaluate`.
 * Worked example: 90° elbow, 30 diameters of 1.049 in → 2.62 ft.
 */
import type { Formula, Source } from '../../trace/index.ts';

export const EQUIVALENT_LENGTH_SOURCE: Source = {
  document: 'International Fuel Gas Code 2018',
  at: 'Appendix A, Table A.2.2',
  known: 'read in a public copy',
};

export interface FittingRun {
  /** L/D of one fitting, or the sum over several. */
  readonly lengthOverDiameter: number;
  /** D, m. */
  readonly insideDiameter: number;
}

/** Equivalent length, m. */
export const equivalentLength: Formula<FittingRun> = {
  id: 'gas.equivalent-length',
  equation: 'L = (L/D)·D',
  inputs: {
    lengthOverDiameter: { symbol: 'L/D', kind: 'ratio', min: 0, max: 2000 },
    insideDiameter: { symbol: 'D', kind: 'diameter', min: 0.005, max: 0.7 },
  },
  result: { symbol: 'L', kind: 'length' },
  source: EQUIVALENT_LENGTH_SOURCE,
  kernel: (x) => x.lengthOverDiameter * x.insideDiameter,
};

export interface CorrugatedBends {
  /** n: bends and fittings beyond the four that the tables already hold. */
  readonly count: number;
}

/** Added length (m) of corrugated tubing with more than four bends or fittings: L = 1.3·n ft. From memory. */
export const corrugatedAddedLength: Formula<CorrugatedBends> = {
  id: 'gas.corrugated-added-length',
  equation: 'L = 1.3·n ft',
  inputs: { count: { symbol: 'n', kind: 'ratio', min: 0, max: 200 } },
  result: { symbol: 'L', kind: 'length' },
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'note to the tables of corrugated tubing',
    known: 'from memory',
  },
  kernel: (x) => 1.3 * 0.3048 * x.count,
};
