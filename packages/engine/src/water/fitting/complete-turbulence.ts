/**
 * Friction factor of clean commercial steel in complete turbulence, on which Crane's fitting coefficients stand.
 *
 *     fT = 0.25 / log10( (ε/D)/3.7 )²        ε = 0.0018 in
 *
 * It is the limit of Colebrook's equation at Re → ∞. Fittings of plastic are given the same K by custom, for want of
 * measurements of their own.
 *
 * Source: Crane TP-410 (1986), page A-26 (table of fT by size; from the fourth printing on also as this equation).
 * Range: inside diameter 5 mm to 2 m.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 2 in Schedule 40 (2.067 in) → 0.0190.
 */
import { INCH } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const COMMERCIAL_STEEL = 0.0018 * INCH;

export const CRANE_SOURCE: Source = {
  document: 'Crane TP-410 (1986)',
  at: 'pages A-26 to A-29',
  known: 'read in a public copy',
};

export interface SteelSize {
  /** D, m, of the Schedule 40 pipe of that nominal size. */
  readonly insideDiameter: number;
}

/** fT, dimensionless. */
export const completeTurbulence: Formula<SteelSize> = {
  id: 'water.complete-turbulence',
  equation: 'fT = 0.25/log10((ε/D)/3.7)², ε = 0.0018 in',
  inputs: { insideDiameter: { symbol: 'D', kind: 'diameter', min: 0.005, max: 2 } },
  result: { symbol: 'fT', kind: 'ratio' },
  source: CRANE_SOURCE,
  kernel: (x) => 0.25 / Math.log10(COMMERCIAL_STEEL / x.insideDiameter / 3.7) ** 2,
};
