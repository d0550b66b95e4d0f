/**
 * Resistance of a copper conductor at its temperature.
 *
 *     R = R75·(1 + 0.00323·(t − 75 °C))
 *
 * The table's figure is direct current at 75 °C; in the sizes a heater is wired with (up to 2/0 AWG) alternating
 * current raises it by less than 4 % (from memory) and is left out.
 *
 * Source: NEC chapter 9 Table 8, note 2 (read in a public copy).
 * Range: 0 to 1000 ohm, −40 to 150 °C. Errors: range issues of `evaluate`.
 * Worked example: 12 AWG solid, 1.93 ohm/kft at 75 °C → 1.62 ohm/kft at 25 °C.
 */
import type { Formula, Source } from '../trace/index.ts';

export const COPPER_COEFFICIENT = 0.00323;
const TABLE_TEMPERATURE = 348.15;

export const CONDUCTOR_SOURCE: Source = {
  document: 'National Electrical Code',
  at: 'Chapter 9 Table 8, note 2',
  known: 'read in a public copy',
};

export interface WarmConductor {
  /** Resistance of the whole length at 75 °C, ohm. */
  readonly tableResistance: number;
  /** K. */
  readonly temperature: number;
}

/** Resistance (ohm) at a temperature. */
export const conductorResistance: Formula<WarmConductor> = {
  id: 'power.conductor-resistance',
  equation: 'R = R75·(1 + 0.00323·(t − 75 °C))',
  inputs: {
    tableResistance: { symbol: 'R75', kind: 'resistance', min: 0, max: 1000 },
    temperature: { symbol: 't', kind: 'temperature', min: 233.15, max: 423.15 },
  },
  result: { symbol: 'R', kind: 'resistance' },
  source: CONDUCTOR_SOURCE,
  kernel: (x) => x.tableResistance * (1 + COPPER_COEFFICIENT * (x.temperature - TABLE_TEMPERATURE)),
};
