/**
 * What the code takes off a capacity of its vent tables.
 *
 *     elbows       s = 1 − 0.10·n90 − 0.05·n45, beyond the two 90° elbows that a row with a lateral holds already
 *     connector    s = 1 − 0.10·m, m whole lengths of 1.5 ft for each inch of diameter beyond the first
 *
 * Source: IFGC 504.2.3, 504.3.2, 504.3.3, 504.3.6 (read as NFPA 54-2012 13.1.3 and 13.2.2 in the 2013 California
 * Plumbing Code; 504.3.3 in the 2018 International Residential Code, G2428.3.3).
 * Range: 0 to 20 elbows; lengths 0 to 100 m. Errors: range issues of `evaluate`.
 * Worked example: a lateral with three 90° elbows → 0.90, so that 122 becomes 110 (IFGC appendix B, example 1b).
 */
import type { Formula, Source } from '../../trace/index.ts';

export const VENT_RULES_SOURCE: Source = {
  document: 'International Fuel Gas Code',
  at: '504.2.3 and 504.3.2 to 504.3.6, as NFPA 54-2012 13.1 and 13.2 in the 2013 California Plumbing Code',
  known: 'read in a public copy',
};

export interface VentElbows {
  /** n90, over 45 to 90°. */
  readonly sharp: number;
  /** n45, up to 45°. */
  readonly slight: number;
  /** Elbows that the row holds already: 2 with a lateral, 0 without. */
  readonly included: number;
}

/** Share of the capacity that the elbows leave. */
export const elbowShare: Formula<VentElbows> = {
  id: 'air.elbow-share',
  equation: 's = 1 − 0.10·n90 − 0.05·n45',
  inputs: {
    sharp: { symbol: 'n90', kind: 'ratio', min: 0, max: 20 },
    slight: { symbol: 'n45', kind: 'ratio', min: 0, max: 20 },
    included: { symbol: 'n0', kind: 'ratio', min: 0, max: 2 },
  },
  result: { symbol: 's', kind: 'ratio' },
  source: VENT_RULES_SOURCE,
  kernel: ({ sharp, slight, included }) => {
    const moreSharp = Math.max(sharp - included, 0);
    const moreSlight = Math.max(slight - Math.max(included - sharp, 0), 0);
    return Math.max(1 - 0.1 * moreSharp - 0.05 * moreSlight, 0);
  },
};

/** Share of the capacity that a corrugated liner of a chimney leaves. IFGC 504.2.7, NFPA 54-2012 13.1.7. */
export const CORRUGATED_SHARE = 0.8;

/** Share of a common vent’s capacity that a level manifold before it leaves. IFGC 504.3.4. */
export const MANIFOLD_SHARE = 0.9;

export interface Connector {
  /** L, horizontal, m. */
  readonly length: number;
  /** d, m. */
  readonly diameter: number;
}

/** Horizontal length that a connector may have at full capacity, over its diameter: 1.5 ft for each inch. */
export const CONNECTOR_LENGTH_BY_DIAMETER = 18;

/** Share of the capacity that the length of a connector leaves. */
export const connectorShare: Formula<Connector> = {
  id: 'air.connector-share',
  equation: 's = 1 − 0.10·(⌈L/(18·d)⌉ − 1)',
  inputs: {
    length: { symbol: 'L', kind: 'length', min: 0, max: 100 },
    diameter: { symbol: 'd', kind: 'diameter', min: 0.02, max: 3 },
  },
  result: { symbol: 's', kind: 'ratio' },
  source: VENT_RULES_SOURCE,
  kernel: ({ length, diameter }) => {
    const lengths = Math.ceil(length / (CONNECTOR_LENGTH_BY_DIAMETER * diameter) - 1e-9);
    return Math.max(1 - 0.1 * Math.max(lengths - 1, 0), 0);
  },
};
