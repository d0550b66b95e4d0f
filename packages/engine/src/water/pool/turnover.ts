/**
 * Turnover: the time in which one volume of the basin passes through the filter.
 *
 *     t = V/Q
 *
 * One turnover does not clean every drop: with perfect mixing 63 % of the water has passed once. Codes set the hours.
 *
 * Source: definition. Range: volume and flow above 0.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 20,000 gal at 55.556 gpm → 6 h.
 */
import type { Formula, Source } from '../../trace/index.ts';

const SOURCE: Source = { document: 'Definition of turnover', known: 'physics' };
const VOLUME = { symbol: 'V', kind: 'volume', min: 1e-3, max: 1e6 } as const;
const TIME = { symbol: 't', kind: 'time', min: 1, max: 1e8 } as const;
const THROUGH = { symbol: 'Q', kind: 'volume-flow', min: 1e-9, max: 100 } as const;

export interface BasinFlow {
  /** V, m3. */
  readonly volume: number;
  /** Q, m3/s. */
  readonly flow: number;
}

/** Turnover time, s. */
export const turnover: Formula<BasinFlow> = {
  id: 'water.turnover',
  equation: 't = V/Q',
  inputs: { volume: VOLUME, flow: THROUGH },
  result: TIME,
  source: SOURCE,
  kernel: (x) => x.volume / x.flow,
};

export interface BasinTime {
  /** V, m3. */
  readonly volume: number;
  /** t, s. */
  readonly time: number;
}

/** Flow a turnover time asks for, m3/s: the inverse of `turnover`. */
export const flowForTurnover: Formula<BasinTime> = {
  id: 'water.flow-for-turnover',
  equation: 'Q = V/t',
  inputs: { volume: VOLUME, time: TIME },
  result: THROUGH,
  source: SOURCE,
  kernel: (x) => x.volume / x.time,
};
