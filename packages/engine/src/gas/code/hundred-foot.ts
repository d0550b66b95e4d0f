/**
 * The method of pressure drop per 100 ft: capacities are tabled for a drop each 100 ft, and other drops follow.
 *
 *     Q = Qt · √(h/ht)            h = ht · L/100 ft
 *
 * A table's drop between two loads is read on a straight line. The method suits systems whose every section is sized
 * for its own share of the drop.
 *
 * How sources disagree: the tables follow their own square root, 0.5 in the exponent, where the code's equation has
 * 0.541; they stand within 4 % of each other from 0.2 to 1.0 in w.c. for each 100 ft.
 *
 * Source: IFGC Appendix A.3.4 (read in the 2015 Michigan Residential Code); a Californian code's worked example.
 * Range: drops 1 Pa to 20 kPa for each 100 ft, length to 100 km. Errors: range issues of `evaluate`.
 *
 * Worked example: 3/4 in carries 147 kBtu/h at 1.0 in w.c.; at 2.0 in it carries 147·√2 = 207.9.
 */
import { FOOT } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

export const HUNDRED_FOOT_SOURCE: Source = {
  document: 'Michigan Residential Code 2015',
  at: 'Appendix A.3.4',
  known: 'read in a public copy',
};

const gradient = (symbol: string) => ({ symbol, kind: 'pressure-difference', min: 1, max: 20_000 }) as const;
const flow = (symbol: string) => ({ symbol, kind: 'standard-gas-flow', min: 0, max: 100 }) as const;

export interface TabledCapacity {
  /** Qt, standard m3/s. */
  readonly tableFlow: number;
  /** ht, Pa for each 100 ft. */
  readonly tableDrop: number;
  /** h, Pa for each 100 ft. */
  readonly drop: number;
}

/** Capacity (standard m3/s) at another drop than the table's. */
export const scaledCapacity: Formula<TabledCapacity> = {
  id: 'gas.scaled-capacity',
  equation: 'Q = Qt·√(h/ht)',
  inputs: { tableFlow: flow('Qt'), tableDrop: gradient('ht'), drop: gradient('h') },
  result: flow('Q'),
  source: HUNDRED_FOOT_SOURCE,
  kernel: (x) => x.tableFlow * Math.sqrt(x.drop / x.tableDrop),
};

export interface TabledDrops {
  /** Q, standard m3/s. */
  readonly flow: number;
  readonly flowBelow: number;
  readonly flowAbove: number;
  /** Pa for each 100 ft, at the two flows of the table. */
  readonly dropBelow: number;
  readonly dropAbove: number;
}

/** Drop (Pa) for each 100 ft at a flow between two of the table. */
export const tabledDrop: Formula<TabledDrops> = {
  id: 'gas.tabled-drop',
  equation: 'h = ha + (hb − ha)·(Q − Qa)/(Qb − Qa)',
  inputs: {
    flow: flow('Q'),
    flowBelow: flow('Qa'),
    flowAbove: flow('Qb'),
    dropBelow: gradient('ha'),
    dropAbove: gradient('hb'),
  },
  result: gradient('h'),
  source: HUNDRED_FOOT_SOURCE,
  kernel: (x) => {
    if (!(x.flow >= x.flowBelow && x.flow <= x.flowAbove)) return Number.NaN;
    const part = (x.flow - x.flowBelow) / (x.flowAbove - x.flowBelow);
    return x.dropBelow + (x.dropAbove - x.dropBelow) * part;
  },
};

export interface RunAtGradient {
  /** Pa for each 100 ft. */
  readonly drop: number;
  /** m. */
  readonly length: number;
}

/** Drop (Pa) of a run at a drop for each 100 ft. */
export const runDrop: Formula<RunAtGradient> = {
  id: 'gas.run-drop',
  equation: 'ΔH = h·L/100 ft',
  inputs: { drop: gradient('h'), length: { symbol: 'L', kind: 'length', min: 0, max: 1e5 } },
  result: { symbol: 'ΔH', kind: 'pressure-difference' },
  source: HUNDRED_FOOT_SOURCE,
  kernel: (x) => (x.drop * x.length) / (100 * FOOT),
};
