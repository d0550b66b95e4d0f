/**
 * Corrugated stainless steel tubing (CSST) by equivalent hydraulic diameter (EHD), from the code's capacity tables.
 *
 * The code has no equation for corrugated tubing: the tables are the rule. Between and beyond their rows a power law
 * of each size is used: flow goes as the gradient of p² to the power that its two nearest rows show (0.48 to 0.53).
 * A run of any length and drop is first brought to the length at which the table's own drop has the same gradient:
 *
 *     Lt = L · (P1t² − P2t²) / (P1² − P2²)
 *     Q  = Qa · (Lt/La)^(ln(Qb/Qa)/ln(Lb/La)) · √(St/S)
 *
 * Beyond the first and last row the nearest pair's law is continued. Another gas than the table's goes by the square
 * root of the gravities, as the code's gravity table does for pipe: propane's 298 kBtu/h (EHD 18, 100 ft, 2 psi,
 * 1 psi drop) becomes 188 ft3/h of natural gas; the code's example A.7.2 prints 189.
 *
 * Source: the table handed in; the interpolation is ours. Leaving out each inner row of IFGC Table 402.4(33) in turn
 * and interpolating it from its neighbours misses the printed figure by 2.1 % at most, and by 3.6 % in the coarse low-pressure table.
 * Range: gauge pressures as in the code equations, atmosphere 14.7 psia; table length from a tenth of the first row.
 * Errors: a size the table does not have is `ill-formed`, the rest are range issues of the formulas.
 *
 * Worked example: EHD 18, propane table at 2 psi, 120 ft, 1 psi drop → (298, 245 at 100 and 150 ft) 273 kBtu/h.
 */
import { PSI } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';
import { CODE_ATMOSPHERE } from './high-pressure.ts';

export interface CorrugatedSize {
  /** Equivalent hydraulic diameter, the trade's number. */
  readonly ehd: number;
  /** Standard m3/s of the table's gas, one for each length. */
  readonly flows: readonly number[];
}

export interface CorrugatedTable {
  readonly id: string;
  /** Gauge pressure at the inlet, Pa. */
  readonly inletPressure: number;
  /** Pa. */
  readonly pressureDrop: number;
  readonly specificGravity: number;
  /** m, rising. */
  readonly lengths: readonly number[];
  /** Rising in EHD. */
  readonly sizes: readonly CorrugatedSize[];
  readonly source: Source;
}

export const CORRUGATED_SOURCE: Source = {
  document: 'Power law between the rows of the code table of corrugated tubing',
  at: 'gravity by its square root, as International Fuel Gas Code 2018 Table A.2.4',
  known: 'common practice, no source',
};

const length = { symbol: 'L', kind: 'length', min: 1e-3, max: 1e5 } as const;
const inlet = { symbol: 'P1', kind: 'pressure', min: 0, max: 150 * PSI } as const;
const drop = { symbol: 'ΔP', kind: 'pressure-difference', min: 0, max: 165 * PSI } as const;
const tableInlet = { ...inlet, symbol: 'P1t' } as const;
const tableDrop = { ...drop, symbol: 'ΔPt', min: 1 } as const;
const tableLength = { symbol: 'Lt', kind: 'length', min: 0.1, max: 1e12 } as const;
const row = (symbol: string) => ({ symbol, kind: 'length', min: 0.1, max: 1e4 }) as const;
const flow = (symbol: string) => ({ symbol, kind: 'standard-gas-flow', min: 0, max: 100 }) as const;
const gravity = (symbol: string) => ({ symbol, kind: 'ratio', min: 0.3, max: 2.2 }) as const;

/** P1² − P2², Pa², of a gauge inlet and a drop; NaN below a vacuum. */
export function squaredDrop(inletPressure: number, pressureDrop: number): number {
  const p1 = inletPressure + CODE_ATMOSPHERE;
  return pressureDrop > p1 ? Number.NaN : pressureDrop * (2 * p1 - pressureDrop);
}

export interface CorrugatedRun {
  readonly length: number;
  readonly inletPressure: number;
  readonly pressureDrop: number;
  readonly tableInletPressure: number;
  readonly tableDrop: number;
}

/** Length (m) at which the table's drop has the gradient of the run. */
export const corrugatedTableLength: Formula<CorrugatedRun> = {
  id: 'gas.corrugated-table-length',
  equation: 'Lt = L·(P1t² − P2t²)/(P1² − P2²)',
  inputs: {
    length,
    inletPressure: inlet,
    pressureDrop: { ...drop, min: 1e-3 },
    tableInletPressure: tableInlet,
    tableDrop,
  },
  result: tableLength,
  source: CORRUGATED_SOURCE,
  kernel: (x) =>
    (x.length * squaredDrop(x.tableInletPressure, x.tableDrop)) /
    squaredDrop(x.inletPressure, x.pressureDrop),
};

interface Rows {
  readonly lengthBelow: number;
  readonly lengthAbove: number;
  readonly flowBelow: number;
  readonly flowAbove: number;
  readonly specificGravity: number;
  readonly tableGravity: number;
}

const rows = {
  lengthBelow: row('La'),
  lengthAbove: row('Lb'),
  flowBelow: flow('Qa'),
  flowAbove: flow('Qb'),
  specificGravity: gravity('S'),
  tableGravity: gravity('St'),
} as const;

function exponent(x: Rows): number {
  return Math.log(x.flowAbove / x.flowBelow) / Math.log(x.lengthAbove / x.lengthBelow);
}

/** Flow (standard m3/s) between two rows of a table at a table length. */
export const corrugatedFlow: Formula<Rows & { readonly tableLength: number }> = {
  id: 'gas.corrugated-flow',
  equation: 'Q = Qa·(Lt/La)^(ln(Qb/Qa)/ln(Lb/La))·√(St/S)',
  inputs: { tableLength, ...rows },
  result: flow('Q'),
  source: CORRUGATED_SOURCE,
  kernel: (x) =>
    x.flowBelow *
    (x.tableLength / x.lengthBelow) ** exponent(x) *
    Math.sqrt(x.tableGravity / x.specificGravity),
};

/** Table length (m) at which a size carries a flow: the inverse of `corrugatedFlow`. */
export const corrugatedLength: Formula<Rows & { readonly flow: number }> = {
  id: 'gas.corrugated-length',
  equation: 'Lt = La·(Q·√(S/St)/Qa)^(ln(Lb/La)/ln(Qb/Qa))',
  inputs: { flow: { ...flow('Q'), min: 1e-9 }, ...rows },
  result: tableLength,
  source: CORRUGATED_SOURCE,
  kernel: (x) => {
    const atTable = x.flow * Math.sqrt(x.specificGravity / x.tableGravity);
    return x.lengthBelow * (atTable / x.flowBelow) ** (1 / exponent(x));
  },
};

export interface CorrugatedLoad {
  readonly length: number;
  readonly inletPressure: number;
  readonly tableLength: number;
  readonly tableInletPressure: number;
  readonly tableDrop: number;
}

/** Drop (Pa) of a run whose flow the table carries over the table length. */
export const corrugatedDrop: Formula<CorrugatedLoad> = {
  id: 'gas.corrugated-drop',
  equation: 'P1² − P2² = (P1t² − P2t²)·L/Lt',
  inputs: { length, inletPressure: inlet, tableLength, tableInletPressure: tableInlet, tableDrop },
  result: drop,
  source: CORRUGATED_SOURCE,
  kernel: (x) => {
    const squared = (squaredDrop(x.tableInletPressure, x.tableDrop) * x.length) / x.tableLength;
    const p1 = x.inletPressure + CODE_ATMOSPHERE;
    return squared / (p1 + Math.sqrt(p1 * p1 - squared));
  },
};
