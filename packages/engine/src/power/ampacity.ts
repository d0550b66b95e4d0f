/**
 * What a conductor may carry where it runs: the table's ampacity, corrected for the air around it and for its
 * neighbours in the raceway.
 *
 *     I = I30·√((Tc − Ta)/(Tc − 30 °C))·f(n)
 *     f = 1 to 3 conductors, 0.8 to 6, 0.7 to 9, 0.5 to 20, 0.45 to 30, 0.4 to 40, 0.35 beyond
 *
 * How sources disagree: the code also prints the root in steps of 5 °C, each worked at its hottest end; the equation
 * is followed, which gives the same there and a little more between two steps.
 *
 * Source: NEC 310.15(B)(1) equation (ambient) and Table 310.15(C)(1) (number of conductors), both from memory.
 * Range: table ampacity 1 to 1000 A, insulation 60 to 90 °C, ambient −20 °C to the insulation's own, 1 to 100
 * conductors. Errors: range issues of `evaluate`; an ambient at or above the insulation's temperature is `no-solution`.
 * Worked example: 35 A at 75 °C in 40 °C air, three conductors → 35·√(35/45) = 30.9 A.
 */
import type { Formula, Source } from '../trace/index.ts';

export const AMPACITY_SOURCE: Source = {
  document: 'National Electrical Code',
  at: '310.15(B)(1) equation and Table 310.15(C)(1)',
  known: 'from memory',
};

const TABLE_AMBIENT = 303.15;

/** Share left up to so many current-carrying conductors together. */
const BUNDLES: readonly (readonly [most: number, share: number])[] = [
  [3, 1],
  [6, 0.8],
  [9, 0.7],
  [20, 0.5],
  [30, 0.45],
  [40, 0.4],
];
const LARGEST_BUNDLE = 0.35;

/** Share left with so many current-carrying conductors together. */
export function bundleFactor(conductors: number): number {
  return BUNDLES.find(([most]) => conductors <= most)?.[1] ?? LARGEST_BUNDLE;
}

export interface RunConductor {
  /** Of the table, at 30 °C with up to three conductors, A. */
  readonly tableCurrent: number;
  /** Rating of the insulation, K. */
  readonly insulation: number;
  /** Air around it, K. */
  readonly ambient: number;
  /** Current-carrying conductors in the raceway. */
  readonly conductors: number;
}

/** Ampacity where it runs, A. */
export const ampacity: Formula<RunConductor> = {
  id: 'power.ampacity',
  equation: 'I = I30·√((Tc − Ta)/(Tc − 30 °C))·f(n)',
  inputs: {
    tableCurrent: { symbol: 'I30', kind: 'current', min: 1, max: 1000 },
    insulation: { symbol: 'Tc', kind: 'temperature', min: 333.15, max: 363.15 },
    ambient: { symbol: 'Ta', kind: 'temperature', min: 253.15, max: 363.15 },
    conductors: { symbol: 'n', kind: 'ratio', min: 1, max: 100 },
  },
  result: { symbol: 'I', kind: 'current' },
  source: AMPACITY_SOURCE,
  kernel: (x) => {
    const share = (x.insulation - x.ambient) / (x.insulation - TABLE_AMBIENT);
    return share <= 0 ? Number.NaN : x.tableCurrent * Math.sqrt(share) * bundleFactor(x.conductors);
  },
};
