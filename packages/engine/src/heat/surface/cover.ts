/**
 * Pool covers: what each leaves of evaporation, of dry losses and of the sun, and when it is on.
 *
 * Evaporation is measured (eight pools, 90 days, covers always on, so the most a cover can do). The sun's share is US
 * DOE's: an opaque cover loses 20 to 40 % of the gain, a clear bubble cover 5 to 15 %; the middle is taken. The share
 * of convection and long-wave loss follows from the cover's resistance R against a surface film of 10 W/(m2 K),
 * 1/(1 + 10·R), with R by *common practice, no source*.
 *
 * How sources disagree: US DOE gives 50 to 70 % off the heating cost for any cover, which has hours off and swimmers in
 * it; the shares here are those of the covered hours alone.
 *
 * Source: Muleta (2016), Cal Poly National Pool Industry Research Center; US DOE.
 * Range: shares 0 to 1.
 */
import type { Source } from '../../trace/index.ts';

export interface Cover {
  /** Share of evaporation left under it. */
  readonly evaporation: number;
  /** Share of convection and long-wave loss left. */
  readonly dry: number;
  /** Share of the sun left. */
  readonly sun: number;
}

export const COVER_SOURCE: Source = {
  document: 'Muleta (2016), Cal Poly National Pool Industry Research Center',
  at: 'evaporation reduction by cover; solar shares after US DOE, dry shares common practice',
  known: 'read in a public copy',
};

const FILM = 10;
const dryShare = (resistance: number) => 1 / (1 + FILM * resistance);

/** Covers by kind. `resistance` behind each dry share: bubble 0.08, track 0.02, foam 0.2 m2 K/W. */
export const COVERS = {
  none: { evaporation: 1, dry: 1, sun: 1 },
  bubble: { evaporation: 0.051, dry: dryShare(0.08), sun: 0.9 },
  /** Opaque sheet on tracks. */
  track: { evaporation: 0.061, dry: dryShare(0.02), sun: 0.7 },
  foam: { evaporation: 0.041, dry: dryShare(0.2), sun: 0.7 },
  /** Loose discs that leave gaps. */
  discs: { evaporation: 0.499, dry: (1 + dryShare(0.08)) / 2, sun: 0.95 },
  /** A film one molecule thick; middle of 14.4 and 15.8 %. */
  liquid: { evaporation: 0.849, dry: 1, sun: 1 },
} as const satisfies Readonly<Record<string, Cover>>;

export type CoverName = keyof typeof COVERS;

/** Share of the water covered in each of the 24 hours of a day, 0 to 1. */
export type CoverHours = readonly number[];

/**
 * Covered from one time of day to another (hours, fractions too), through midnight where the first is the later; the
 * same time twice is never covered. A full day is 0 to 24.
 */
export function coveredBetween(from: number, to: number): CoverHours {
  return Array.from({ length: 24 }, (_, hour) =>
    from <= to ? overlap(hour, from, to) : overlap(hour, from, 24) + overlap(hour, 0, to),
  );
}

function overlap(hour: number, from: number, to: number): number {
  return Math.max(0, Math.min(hour + 1, to) - Math.max(hour, from));
}

/** What is left of a loss when a share of the water lies under a cover that leaves `left` of it. */
export function underCover(left: number, covered: number): number {
  return 1 - covered * (1 - left);
}
