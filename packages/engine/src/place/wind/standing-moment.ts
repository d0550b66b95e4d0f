/**
 * Whether a box that only stands there stays up in the wind: what holds it down over what tips it, about its foot on
 * the lee side.
 *
 *     s = 0.6·m·g·(d/2) / (q·GCf·w·h·(h/2))
 *
 * The wind blows on a side w wide and h high and tips the box over its depth d; 0.6 of the weight may be counted on
 * (load combination 0.6 D + 0.6 W of allowable stress; W is put in whole here, on the safe side). GCf is gust factor
 * times force coefficient of a low box, 0.85·1.4. Below 1 it falls over, or has to be held down. Sliding, uplift from
 * the openings of the cabinet, and earthquakes are not looked at: this says that an anchor is needed, never that none
 * is.
 *
 * Source: statics; ASCE/SEI 7-16 sections 2.4.1 and 29.4, Figure 29.4-1, from memory.
 * Range: mass 5 to 3000 kg, sides 0.05 to 10 m, wind pressure 0.01 Pa to 10 kPa. Errors: range issues of `evaluate`.
 * Worked example: 80 kg, 0.7 m wide, 0.7 m deep, 0.9 m high, 1377 Pa → 0.6·80·9.80665·0.35/(1377·1.19·0.63·0.45) = 0.355.
 */
import { STANDARD_GRAVITY } from '../../quantity/constants.ts';
import type { Formula, Source } from '../../trace/index.ts';

const COUNTED_WEIGHT = 0.6;
const GUST_TIMES_FORCE = 0.85 * 1.4;

export const STANDING_SOURCE: Source = {
  document: 'ASCE/SEI 7-16',
  at: 'sections 2.4.1 and 29.4, Figure 29.4-1; statics',
  known: 'from memory',
};

export interface StandingBox {
  /** kg. */
  readonly mass: number;
  /** Side the wind blows on, m. */
  readonly width: number;
  /** From that side to the one behind it, m. */
  readonly depth: number;
  /** m. */
  readonly height: number;
  /** Velocity pressure of the wind, Pa. */
  readonly windPressure: number;
}

/** Moment that holds it down over the moment that tips it; the smaller of two for two directions is asked by the caller. */
export const standingShare: Formula<StandingBox> = {
  id: 'place.standing-share',
  equation: 's = 0.6·m·g·(d/2) / (q·GCf·w·h·(h/2))',
  inputs: {
    mass: { symbol: 'm', kind: 'mass', min: 5, max: 3000 },
    width: { symbol: 'w', kind: 'length', min: 0.05, max: 10 },
    depth: { symbol: 'd', kind: 'length', min: 0.05, max: 10 },
    height: { symbol: 'h', kind: 'length', min: 0.05, max: 10 },
    windPressure: { symbol: 'q', kind: 'pressure-difference', min: 0.01, max: 10_000 },
  },
  result: { symbol: 's', kind: 'ratio' },
  source: STANDING_SOURCE,
  kernel: (x) => {
    const held = (COUNTED_WEIGHT * x.mass * STANDARD_GRAVITY * x.depth) / 2;
    const tipped = (x.windPressure * GUST_TIMES_FORCE * x.width * x.height ** 2) / 2;
    return held / tipped;
  },
};
