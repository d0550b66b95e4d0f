/**
 * Voltage lost between panel and equipment, and the longest run for a loss that is allowed.
 *
 *     ΔV = k·I·R        k = 2 for one phase (there and back), √3 for three
 *     L = L1·ΔV/(k·I·R1)
 *
 * R is that of one conductor over the one-way length, direct current. Reactance is left out: a conductor in plastic
 * conduit has some 0.05 ohm a thousand feet of it whatever its size (from memory), so that its impedance exceeds its
 * resistance by less than 1 % up to 6 AWG, and by 9 % at 2/0 AWG. A heater's circuit ends far below that.
 *
 * How sources disagree: some pages give K (ohm circular mils a foot) instead of a table; 12.9 for copper is the
 * table at 75 °C.
 *
 * Source: EC&M, The basics of calculating voltage drop; Ohm's law.
 * Range: 0 to 1000 A, 0 to 100 ohm, 0 to 1000 V, up to 10 km. Errors: range issues of `evaluate`; a length for no
 * current is `no-solution`.
 * Worked examples: 4 A through 100 ft of 16 AWG (4.99 ohm/kft), one phase → 4.0 V; 14.4 V at 20 A in three phases of
 * 1.1 ohm/kft → 377 ft.
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

/** Conductors whose drops add up, as a number: there and back, or two of three phases 120° apart. */
export function phaseFactor(phases: number): number {
  return phases === 3 ? Math.sqrt(3) : 2;
}

/** Voltage drop, V. */
export const voltageDrop: Formula<LoadedCircuit> = {
  id: 'power.voltage-drop',
  equation: 'ΔV = k·I·R, k = 2 (1~), √3 (3~)',
  inputs: {
    current: { symbol: 'I', kind: 'current', min: 0, max: 1000 },
    resistance: { symbol: 'R', kind: 'resistance', min: 0, max: 100 },
    phases: { symbol: 'n', kind: 'ratio', min: 1, max: 3 },
  },
  result: { symbol: 'ΔV', kind: 'voltage' },
  source: VOLTAGE_DROP_SOURCE,
  kernel: (x) => phaseFactor(x.phases) * x.current * x.resistance,
};

export interface AllowedDrop extends LoadedCircuit {
  /** Length to which the resistance belongs, m. */
  readonly length: number;
  /** Drop that is allowed, V. */
  readonly allowedDrop: number;
}

/** Longest one-way run, m. */
export const lengthForDrop: Formula<AllowedDrop> = {
  id: 'power.length-for-drop',
  equation: 'L = L1·ΔV/(k·I·R1), k = 2 (1~), √3 (3~)',
  inputs: {
    ...voltageDrop.inputs,
    length: { symbol: 'L', kind: 'length', min: 0.01, max: 10_000 },
    allowedDrop: { symbol: 'ΔV', kind: 'voltage', min: 0, max: 1000 },
  },
  result: { symbol: 'L', kind: 'length' },
  source: VOLTAGE_DROP_SOURCE,
  kernel: (x) => (x.length * x.allowedDrop) / voltageDrop.kernel(x),
};
