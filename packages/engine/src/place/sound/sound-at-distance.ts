/**
 * How loud a heater is at a distance, from the level its nameplate gives at another.
 *
 *     L2 = L1 − 20·log10(r2/r1)
 *
 * 6 dB less for each doubling. It holds for a small source in the open; a wall beside the heater gives back up to 3 dB,
 * two walls up to 6 dB, and a fence between takes some away: none of these is counted. Closer than the distance of the
 * nameplate's figure the source is not small, and the law is not used.
 *
 * Source: ISO 9613-2:1996, equation (7), geometrical divergence, as a difference of two distances; from memory.
 * Range: level 0 to 130 dB, distances 0.3 to 1000 m. Errors: range issues of `evaluate`; a distance below that of the
 * given level is `no-solution`.
 * Worked example: 60 dB at 1 m → 53.98 dB at 2 m, 40 dB at 10 m.
 */
import type { Formula, Source } from '../../trace/index.ts';

export const SOUND_SOURCE: Source = {
  document: 'ISO 9613-2:1996',
  at: 'equation (7), geometrical divergence',
  known: 'from memory',
};

export interface FarSound {
  /** Sound pressure level at the reference distance, dB(A). */
  readonly level: number;
  /** Where that level was measured, m. */
  readonly referenceDistance: number;
  /** Where it is asked for, m. */
  readonly distance: number;
}

/** Sound pressure level (dB) at a distance. */
export const soundAtDistance: Formula<FarSound> = {
  id: 'place.sound-at-distance',
  equation: 'L2 = L1 − 20·log10(r2/r1)',
  inputs: {
    level: { symbol: 'L1', kind: 'sound-level', min: 0, max: 130 },
    referenceDistance: { symbol: 'r1', kind: 'length', min: 0.3, max: 100 },
    distance: { symbol: 'r2', kind: 'length', min: 0.3, max: 1000 },
  },
  result: { symbol: 'L2', kind: 'sound-level' },
  source: SOUND_SOURCE,
  kernel: (x) =>
    x.distance < x.referenceDistance
      ? Number.NaN
      : x.level - 20 * Math.log10(x.distance / x.referenceDistance),
};
