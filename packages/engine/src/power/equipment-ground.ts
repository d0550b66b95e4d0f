/**
 * The equipment grounding conductor when the conductors it goes with were made larger than they must be.
 *
 *     A = At·max(1, Af/An)
 *
 * A longer run with thicker conductors lets more current flow into a fault; the ground grows in the same measure, or
 * the breaker would trip too late.
 *
 * Source: NEC 250.122(B), read in a public copy.
 * Range: cross-sections of 40 to 4/0 AWG. Errors: range issues of `evaluate`.
 * Worked example: 20 A asks for 12 AWG (6530 circular mils); 12 AWG would do and 8 AWG (16 510) is fitted → 16 510, so
 * 8 AWG.
 */
import type { Formula, Source } from '../trace/index.ts';

const SOURCE: Source = {
  document: 'National Electrical Code',
  at: '250.122(B)',
  known: 'read in a public copy',
};

export interface UpsizedCircuit {
  /** Ground by the table, m². */
  readonly tableArea: number;
  /** Conductors as fitted, m². */
  readonly fittedArea: number;
  /** Least conductors that would do, m². */
  readonly neededArea: number;
}

/** Least cross-section of the equipment ground, m². */
export const equipmentGround: Formula<UpsizedCircuit> = {
  id: 'power.equipment-ground',
  equation: 'A = At·max(1, Af/An)',
  inputs: {
    tableArea: { symbol: 'At', kind: 'wire-size', min: 1e-9, max: 2e-4 },
    fittedArea: { symbol: 'Af', kind: 'wire-size', min: 1e-9, max: 2e-4 },
    neededArea: { symbol: 'An', kind: 'wire-size', min: 1e-9, max: 2e-4 },
  },
  result: { symbol: 'A', kind: 'wire-size' },
  source: SOURCE,
  kernel: (x) => x.tableArea * Math.max(1, x.fittedArea / x.neededArea),
};
