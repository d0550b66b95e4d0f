/**
 * Free area of an opening behind a louvre or grille whose own free area nobody states.
 *
 *     A = s·Ag        s = 0.75 for metal, 0.25 for wood
 *
 * Source: IFGC 304.10 (read as NFPA 54-2012 9.3.7.1 in the 2013 California Plumbing Code, 506.8).
 * Range: gross area 0 to 50 m2. Errors: range issues of `evaluate`.
 * Worked example: a metal louvre of 100 in2 → 75 in2.
 */
import { INCH } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

export const FREE_AREA_SOURCE: Source = {
  document: 'International Fuel Gas Code',
  at: '304.10, as NFPA 54-2012 9.3.7.1 in the 2013 California Plumbing Code',
  known: 'read in a public copy',
};

/** Share of a louvre that lets air through, where it is not stated. */
export const FREE_SHARE = { none: 1, metal: 0.75, wood: 0.25 } as const;

export type Louvre = keyof typeof FREE_SHARE;

/** Smallest mesh of a screen over an opening, m (1/4 in). */
export const LEAST_MESH = 0.25 * INCH;

export interface LouvredOpening {
  /** Ag, of the whole louvre, m2. */
  readonly grossArea: number;
  /** s, free over gross; see `FREE_SHARE`. */
  readonly share: number;
}

/** Free area, m2. */
export const freeArea: Formula<LouvredOpening> = {
  id: 'air.free-area',
  equation: 'A = s·Ag',
  inputs: {
    grossArea: { symbol: 'Ag', kind: 'area', min: 0, max: 50 },
    share: { symbol: 's', kind: 'ratio', min: 0, max: 1 },
  },
  result: { symbol: 'A', kind: 'area' },
  source: FREE_AREA_SOURCE,
  kernel: (x) => x.share * x.grossArea,
};
