/**
 * Voltage lost between panel and equipment.
 *
 *     ΔV = k·I·R        k = 2 for one phase (there and back), √3 for three
 *
 * R is that of one conductor over the one-way length. Reactance is left out: in the sizes of a heater's circuit it
 * adds less than 1 % of the drop.
 *
 * How sources disagree: some pages give K (ohm circular mils a foot) instead of a table; 12.9 for copper is the
 * table at 75 °C.
 *
 * Source: EC&M, The basics of calculating voltage drop; Ohm's law.
 * Range: 0 to 1000 A, 0 to 100 ohm. Errors: range issues of `evaluate`.
 * Worked example: 4 A through 100 ft of 16 AWG (4.99 ohm/kft), one phase → 4.0 V.
 */
import type { Formula, Source } from '../trace/index.ts';

export const VOLTAGE_DROP_SOURCE: Source = {
  document: 'EC&M, The basics of calculating voltage drop',
  at: 'equation; Ohm’s law',
  known: 'read in a public copy',
};

export interface LoadedCircuit {
  /** I, A. */
  readonly current: number;
  /** R of one conductor, ohm. */
  readonly resistance: number;
  /** 1 or 3. */
  readonly phases: number;
}

/** Voltage drop, V. */
export const voltageDrop: Formula<LoadedCircuit> = {
  id: 'power.voltage-drop',
  equation: 'ΔV = k·I·R, k = 2 or √3',
  inputs: {
    current: { symbol: 'I', kind: 'current', min: 0, max: 1000 },
    resistance: { symbol: 'R', kind: 'resistance', min: 0, max: 100 },
    phases: { symbol: 'n', kind: 'ratio', min: 1, max: 3 },
  },
  result: { symbol: 'ΔV', kind: 'voltage' },
  source: VOLTAGE_DROP_SOURCE,
  kernel: (x) => (x.phases === 3 ? Math.sqrt(3) : 2) * x.current * x.resistance,
};
