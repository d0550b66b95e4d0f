/**
 * Outdoor air a fan must blow into the room for its burners; fans that draw air out of the room are served on top.
 *
 *     Q = 0.35 cfm·I/(1000 Btu/h) + Qx
 *
 * Source: IFGC 304.9 (read as NFPA 54-2012 9.3.6 in the 2013 California Plumbing Code, 506.7, which also prints
 * 0.034 m3/min for each kilowatt).
 * Range: input 0 to 10 MW, exhaust 0 to 50 m3/s. Errors: range issues of `evaluate`.
 * Worked example: 400,000 Btu/h, no exhaust → 140 cfm.
 */
import { BTU, CUBIC_FOOT, HOUR, MINUTE } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const CFM_PER_THOUSAND_BTU = (0.35 * CUBIC_FOOT) / MINUTE / ((1000 * BTU) / HOUR);

export const MECHANICAL_SUPPLY_SOURCE: Source = {
  document: 'International Fuel Gas Code',
  at: '304.9, as NFPA 54-2012 9.3.6 in the 2013 California Plumbing Code',
  known: 'read in a public copy',
};

export interface RoomWithFans {
  /** I of all burners in the room, W. */
  readonly heatInput: number;
  /** Qx that other fans draw out of the room, m3/s. */
  readonly exhaust: number;
}

/** Air to be blown in, m3/s. */
export const mechanicalSupply: Formula<RoomWithFans> = {
  id: 'air.mechanical-supply',
  equation: 'Q = 0.35 cfm·I/(1000 Btu/h) + Qx',
  inputs: {
    heatInput: { symbol: 'I', kind: 'heat-rate', min: 0, max: 1e7 },
    exhaust: { symbol: 'Qx', kind: 'volume-flow', min: 0, max: 50 },
  },
  result: { symbol: 'Q', kind: 'volume-flow' },
  source: MECHANICAL_SUPPLY_SOURCE,
  kernel: (x) => CFM_PER_THOUSAND_BTU * x.heatInput + x.exhaust,
};
