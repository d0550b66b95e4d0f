/**
 * The fuel-gas code's high-pressure sizing equation (inlet 1.5 psi and above), for flow, drop and diameter.
 *
 *     D = Q^0.381 / (18.93 · ((P1² − P2²)·Y / (Cr·L))^0.206)
 *
 * with D in inches, Q in standard ft3/h, P1 and P2 in psia, L in feet. The pressures the code speaks of are gauge
 * pressures over an atmosphere of 14.7 psia, at any altitude; that atmosphere is kept here, because this is what the
 * inspector checks. Base of the cubic foot as in `low-pressure.ts`.
 *
 * How sources disagree: the printed tables stand 0.4 to 1.2 % under this equation (rounded exponents), except IFGC
 * Table 402.4(5), which follows another formula altogether (L^-0.5) and is 12 % under to 3 % over.
 *
 * Source: IFGC 2018 Equation 4-2, read as NFPA 54-2012 6.4.2 in the 2013 California Plumbing Code, 1216.3; held against
 * Tables 402.4(6), (12), (13), (22), (25), (27), (31) and, of the California code, 1216.2(26), (28).
 * Range: inlet 1.5 to 150 psi gauge, diameter 5 to 700 mm.
 * Errors: values outside the range are issues of `evaluate`; a flow no outlet pressure can carry, and a drop greater
 * than the inlet's absolute pressure, are `no-solution`. An outlet below the atmosphere is for the caller to refuse.
 *
 * Worked example: 1/2 in Schedule 40 (0.622 in), 100 ft, 3 psi in, 2 psi drop, natural gas → 680 ft3/h (table: 677).
 */
import { FOOT, HOUR, INCH, PSI, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;

export const HIGH_PRESSURE_SOURCE: Source = {
  document: 'International Fuel Gas Code 2018',
  at: 'Section 402.4, Equation 4-2',
  known: 'read in a public copy',
};

/** The atmosphere of the code's sizing equations, Pa. */
export const CODE_ATMOSPHERE = 14.7 * PSI;

/** The inlet pressure from which the code asks for this equation (1.5 psi gauge), Pa. */
export const HIGH_PRESSURE_FROM = 1.5 * PSI;

const diameter = { symbol: 'D', kind: 'diameter', min: 0.005, max: 0.7 } as const;
const length = { symbol: 'L', kind: 'length', min: 1e-3, max: 1e5 } as const;
const inlet = { symbol: 'P1', kind: 'pressure', min: 10_342, max: 150 * PSI } as const;
const drop = { symbol: 'ΔP', kind: 'pressure-difference', min: 0, max: 165 * PSI } as const;
const cr = { symbol: 'Cr', kind: 'ratio', min: 0.1, max: 5 } as const;
const y = { symbol: 'Y', kind: 'ratio', min: 0.5, max: 1.5 } as const;
const flow = { symbol: 'Q', kind: 'standard-gas-flow', min: 0, max: 1000 } as const;

export interface HighPressureRun {
  /** D, m. */
  readonly insideDiameter: number;
  /** L, m, equivalent lengths of fittings included. */
  readonly length: number;
  /** P1 as gauge pressure, Pa. */
  readonly inletPressure: number;
  /** P1 − P2, Pa. */
  readonly pressureDrop: number;
  readonly cr: number;
  readonly y: number;
}

/** P1² − P2² in psia² for gauge inlet and drop in Pa; NaN when the outlet would lie below a vacuum. */
function squaredDrop(inletPressure: number, pressureDrop: number): number {
  const p1 = (inletPressure + CODE_ATMOSPHERE) / PSI;
  const p2 = p1 - pressureDrop / PSI;
  return p2 < 0 ? Number.NaN : p1 * p1 - p2 * p2;
}

/** Greatest flow (standard m3/s) of a run for a given drop. */
export const highPressureFlow: Formula<HighPressureRun> = {
  id: 'gas.high-pressure-flow',
  equation: 'Q = (18.93·D·((P1² − P2²)·Y/(Cr·L))^0.206)^(1/0.381)',
  inputs: { insideDiameter: diameter, length, inletPressure: inlet, pressureDrop: drop, cr, y },
  result: flow,
  source: HIGH_PRESSURE_SOURCE,
  kernel: (x) => {
    const perFoot = (squaredDrop(x.inletPressure, x.pressureDrop) * x.y) / (x.cr * (x.length / FOOT));
    return SCFH * (18.93 * (x.insideDiameter / INCH) * perFoot ** 0.206) ** (1 / 0.381);
  },
};

export interface HighPressureLoad {
  readonly insideDiameter: number;
  readonly length: number;
  readonly inletPressure: number;
  /** Q, standard m3/s. */
  readonly flow: number;
  readonly cr: number;
  readonly y: number;
}

/** Drop (Pa) of a run at a given flow: the inverse of `highPressureFlow`. */
export const highPressureDrop: Formula<HighPressureLoad> = {
  id: 'gas.high-pressure-drop',
  equation: 'P1² − P2² = (Cr·L/Y)·(Q^0.381/(18.93·D))^(1/0.206)',
  inputs: { insideDiameter: diameter, length, inletPressure: inlet, flow, cr, y },
  result: drop,
  source: HIGH_PRESSURE_SOURCE,
  kernel: (x) => {
    const perFoot = ((x.flow / SCFH) ** 0.381 / (18.93 * (x.insideDiameter / INCH))) ** (1 / 0.206);
    const squared = ((x.cr * (x.length / FOOT)) / x.y) * perFoot;
    const p1 = (x.inletPressure + CODE_ATMOSPHERE) / PSI;
    const p2 = Math.sqrt(p1 * p1 - squared);
    // P1 − P2 written so that a small drop keeps its digits.
    return (PSI * squared) / (p1 + p2);
  },
};

export interface HighPressureNeed {
  readonly length: number;
  readonly inletPressure: number;
  readonly pressureDrop: number;
  readonly flow: number;
  readonly cr: number;
  readonly y: number;
}

/** Inside diameter (m) a run needs for a flow within a drop. */
export const highPressureDiameter: Formula<HighPressureNeed> = {
  id: 'gas.high-pressure-diameter',
  equation: 'D = Q^0.381/(18.93·((P1² − P2²)·Y/(Cr·L))^0.206)',
  inputs: { length, inletPressure: inlet, pressureDrop: { ...drop, min: 1e-3 }, flow, cr, y },
  result: { symbol: 'D', kind: 'diameter' },
  source: HIGH_PRESSURE_SOURCE,
  kernel: (x) => {
    const perFoot = (squaredDrop(x.inletPressure, x.pressureDrop) * x.y) / (x.cr * (x.length / FOOT));
    return (INCH * (x.flow / SCFH) ** 0.381) / (18.93 * perFoot ** 0.206);
  },
};
