/**
 * Free area of the openings that give a burner its air.
 *
 *     A = I/d        d = 4000 Btu/h a square inch for each of two openings straight or by vertical ducts to outdoors,
 *                    2000 by horizontal ducts, 3000 for one opening high up; 1000 for each of two to other rooms,
 *                    these at least 100 in2
 *
 * Source: IFGC 304.5.3.1, 304.6.1, 304.6.2 (read as NFPA 54-2012 9.3 in the 2013 California Plumbing Code).
 * Range: input 0 to 10 MW. Errors: range issues of `evaluate`.
 * Worked example: 140,000 Btu/h, one opening → 46.7 in2 (NFPA 54 annex J prints 47).
 */
import { BTU, HOUR, INCH } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

export const OPENINGS_SOURCE: Source = {
  document: 'International Fuel Gas Code',
  at: '304.5.3.1, 304.6.1 and 304.6.2, as NFPA 54-2012 9.3 in the 2013 California Plumbing Code',
  known: 'read in a public copy',
};

/** Heat input a square metre of opening serves, W/m2. */
const perSquareInch = (btu: number): number => (btu * BTU) / HOUR / INCH ** 2;

export const OPENING_RATES = {
  'two-direct': perSquareInch(4000),
  'two-horizontal': perSquareInch(2000),
  one: perSquareInch(3000),
  'two-indoor': perSquareInch(1000),
} as const;

export type OpeningMethod = keyof typeof OPENING_RATES;

/** Least area of an opening to another room, m2 (100 in2). */
export const LEAST_INDOOR_OPENING = 100 * INCH ** 2;

export interface OpeningNeed {
  /** I of all burners in the room, W. */
  readonly heatInput: number;
  /** Heat input a square metre serves, W/m2: see `OPENING_RATES`. */
  readonly rate: number;
  /** No opening smaller than this, m2. */
  readonly leastArea: number;
}

/** Free area of each opening, m2. */
export const openingArea: Formula<OpeningNeed> = {
  id: 'air.opening-area',
  equation: 'A = max(I/d, Amin)',
  inputs: {
    heatInput: { symbol: 'I', kind: 'heat-rate', min: 0, max: 1e7 },
    rate: { symbol: 'd', kind: 'heat-flux', min: 1e5, max: 1e7 },
    leastArea: { symbol: 'Amin', kind: 'area', min: 0, max: 10 },
  },
  result: { symbol: 'A', kind: 'area' },
  source: OPENINGS_SOURCE,
  kernel: (x) => Math.max(x.heatInput / x.rate, x.leastArea),
};
