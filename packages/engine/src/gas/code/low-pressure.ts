/**
 * The fuel-gas code's low-pressure sizing equation (inlet below 1.5 psi), for flow, drop and diameter.
 *
 *     D = Q^0.381 / (19.17 · (ΔH / (Cr·L))^0.206)
 *
 * with D in inches, Q in standard ft3/h, ΔH in inches of water, L in feet. The cubic foot is one of 60 °F and 30
 * inches of mercury (A.4), 14.73 psia, and holds 0.04 % more gas than one of the engine's 15 °C and 101.325 kPa.
 *
 * What the inspector checks. What a gauge will read is the physical law, in `../physical`.
 *
 * How sources disagree: the printed natural-gas tables stand 0.4 to 0.7 % under this equation (rounded exponents).
 * NFPA 54 prints the same equation; CSA B149.1 tables agree when their lengths are multiplied by 1.2.
 *
 * Source: IFGC 2018 Equation 4-1, read as NFPA 54-2012 6.4.1 in the 2013 California Plumbing Code, 1216.3; held against
 * Tables 402.4(3), (6), (11), (20), (22).
 * Range: any length, diameter 5 to 700 mm, drop up to 1.5 psi.
 * Errors: values outside the range are issues of `evaluate`; the kernels themselves check nothing.
 *
 * Worked example: 3/4 in Schedule 40 (0.824 in), 60 ft, 0.5 in w.c., natural gas → 137 ft3/h.
 */
import { FOOT, HOUR, INCH, INCH_OF_WATER, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;

export const LOW_PRESSURE_SOURCE: Source = {
  document: 'International Fuel Gas Code 2018',
  at: 'Section 402.4, Equation 4-1',
  known: 'read in a public copy',
};

export interface LowPressureRun {
  /** D, m. */
  readonly insideDiameter: number;
  /** L, m, equivalent lengths of fittings included. */
  readonly length: number;
  /** ΔH, Pa. */
  readonly pressureDrop: number;
  /** Cr of `SIZING_FACTORS`. */
  readonly cr: number;
}

const diameter = { symbol: 'D', kind: 'diameter', min: 0.005, max: 0.7 } as const;
const length = { symbol: 'L', kind: 'length', min: 1e-3, max: 1e5 } as const;
const drop = { symbol: 'ΔH', kind: 'pressure-difference', min: 0, max: 10_342.14 } as const;
const cr = { symbol: 'Cr', kind: 'ratio', min: 0.1, max: 5 } as const;
const flow = { symbol: 'Q', kind: 'standard-gas-flow', min: 0, max: 100 } as const;

/** Greatest flow (standard m3/s) of a run for a given drop. */
export const lowPressureFlow: Formula<LowPressureRun> = {
  id: 'gas.low-pressure-flow',
  equation: 'Q = (19.17·D·(ΔH/(Cr·L))^0.206)^(1/0.381)',
  inputs: { insideDiameter: diameter, length, pressureDrop: drop, cr },
  result: flow,
  source: LOW_PRESSURE_SOURCE,
  kernel: (x) => {
    const inches = x.insideDiameter / INCH;
    const dropPerFoot = x.pressureDrop / INCH_OF_WATER / (x.length / FOOT);
    return SCFH * (19.17 * inches * (dropPerFoot / x.cr) ** 0.206) ** (1 / 0.381);
  },
};

export interface LowPressureLoad {
  readonly insideDiameter: number;
  readonly length: number;
  /** Q, standard m3/s. */
  readonly flow: number;
  readonly cr: number;
}

/** Drop (Pa) of a run at a given flow: the inverse of `lowPressureFlow`. */
export const lowPressureDrop: Formula<LowPressureLoad> = {
  id: 'gas.low-pressure-drop',
  equation: 'ΔH = Cr·L·(Q^0.381/(19.17·D))^(1/0.206)',
  inputs: { insideDiameter: diameter, length, flow, cr },
  result: drop,
  source: LOW_PRESSURE_SOURCE,
  kernel: (x) => {
    const inches = x.insideDiameter / INCH;
    const perFoot = x.cr * ((x.flow / SCFH) ** 0.381 / (19.17 * inches)) ** (1 / 0.206);
    return INCH_OF_WATER * (x.length / FOOT) * perFoot;
  },
};

export interface LowPressureNeed {
  readonly length: number;
  readonly pressureDrop: number;
  readonly flow: number;
  readonly cr: number;
}

/** Inside diameter (m) a run needs for a flow within a drop. */
export const lowPressureDiameter: Formula<LowPressureNeed> = {
  id: 'gas.low-pressure-diameter',
  equation: 'D = Q^0.381/(19.17·(ΔH/(Cr·L))^0.206)',
  inputs: { length, pressureDrop: { ...drop, min: 1e-3 }, flow, cr },
  result: { symbol: 'D', kind: 'diameter' },
  source: LOW_PRESSURE_SOURCE,
  kernel: (x) => {
    const dropPerFoot = x.pressureDrop / INCH_OF_WATER / (x.length / FOOT);
    return (INCH * (x.flow / SCFH) ** 0.381) / (19.17 * (dropPerFoot / x.cr) ** 0.206);
  },
};
