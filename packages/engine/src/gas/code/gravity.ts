/**
 * Multiplier of a capacity read from a natural-gas table (gravity 0.60) when the gas has another gravity.
 *
 *     M = √(0.60 / S)
 *
 * The code prints a table of it; the square root, rounded up, gives each printed cell. The sizing factor Cr of
 * `sizing-factor.ts`, at one viscosity, says the same within 2.3 % from 0.35 to 1.0 and 4 % at 1.5.
 *
 * Source: IFGC 2018 Table A.2.4 (read in part in a public copy).
 * Range: gravity 0.3 to 2.2. Errors: range issues of `evaluate`. Worked example: S 0.50 → 1.10.
 */
import type { Formula } from '../../trace/index.ts';

export interface TableGas {
  readonly specificGravity: number;
}

/** Capacity multiplier, a pure number. */
export const gravityMultiplier: Formula<TableGas> = {
  id: 'gas.gravity-multiplier',
  equation: 'M = √(0.60/S)',
  inputs: { specificGravity: { symbol: 'S', kind: 'ratio', min: 0.3, max: 2.2 } },
  result: { symbol: 'M', kind: 'ratio' },
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Appendix A, Table A.2.4',
    known: 'read in a public copy',
  },
  kernel: (x) => Math.sqrt(0.6 / x.specificGravity),
};
