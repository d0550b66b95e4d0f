/**
 * How far a room’s own volume and its openings to outdoors together give the burners their air.
 *
 *     s = V/Vreq + A/Areq
 *
 * The code prints it the other way round: the openings may be smaller by the share that the volume already gives,
 * A = Areq·(1 − V/Vreq); s = 1 is the same line.
 *
 * Source: IFGC 304.7 (read as NFPA 54-2012 9.3.4 in the 2013 California Plumbing Code, 506.5).
 * Range: shares from 0. Errors: range issues of `evaluate`.
 * Worked example: NFPA 54 annex J, 3,600 of 7,000 ft3 and 23 of 47 in2 → 1.00.
 */
import type { Formula, Source } from '../../trace/index.ts';

export const COMBINED_SOURCE: Source = {
  document: 'International Fuel Gas Code',
  at: '304.7, as NFPA 54-2012 9.3.4 in the 2013 California Plumbing Code',
  known: 'read in a public copy',
};

export interface AirShares {
  /** V/Vreq. */
  readonly byVolume: number;
  /** A/Areq of the smallest opening that counts. */
  readonly byOpenings: number;
}

/** Air the room has over what its burners need. */
export const combinedAir: Formula<AirShares> = {
  id: 'air.combined-share',
  equation: 's = V/Vreq + A/Areq',
  inputs: {
    byVolume: { symbol: 'V/Vreq', kind: 'ratio', min: 0 },
    byOpenings: { symbol: 'A/Areq', kind: 'ratio', min: 0 },
  },
  result: { symbol: 's', kind: 'ratio' },
  source: COMBINED_SOURCE,
  kernel: (x) => x.byVolume + x.byOpenings,
};
