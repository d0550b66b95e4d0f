/** The drop for which piping is sized in Canada, by the pressure it starts from. */
import { quantity } from '@firstfire/engine';
import { defineRule } from '../../evaluate/index.ts';
import { b149 } from '../entries.ts';

interface DropRow {
  /** Gauge pressure from which the row holds, Pa. */
  readonly from: number;
  /** Pa. */
  readonly drop: number;
}

const { INCH_OF_WATER, PSI } = quantity;

interface Drops {
  /** Pa, below the first row. */
  readonly low: number;
  readonly rows: readonly DropRow[];
  /** From this pressure on a share of it. */
  readonly high: { readonly from: number; readonly share: number };
}

/**
 * Below 7 in w.c. half an inch, then one inch, 1 psi at 2 psi, and half of 5 psi and more. Between 14 in w.c. and 2 psi
 * nothing was read: the inch below it stands, the stricter side; at 2 psi 1.5 psi was read too, and the lesser is kept.
 */
const DROPS: Drops = {
  low: 0.5 * INCH_OF_WATER,
  rows: [
    { from: 2 * PSI, drop: PSI },
    { from: 7 * INCH_OF_WATER, drop: INCH_OF_WATER },
  ],
  high: { from: 5 * PSI, share: 0.5 },
};

/** A pressure that was written in other units may fall short of them by rounding alone. */
const NEAR = 1 + 1e-9;

function dropAllowed(supply: number, { low, rows, high }: Drops): number {
  const reaches = (from: number): boolean => supply * NEAR >= from;
  if (reaches(high.from)) return high.share * supply;
  return rows.find(({ from }) => reaches(from))?.drop ?? low;
}

/** Divided by the drop allowed. */
export const designDrop = defineRule({
  id: 'gas.design-drop',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.design-drop', supply: 'job.supply-pressure' },
  words: {},
  guard: 0,
  editions: [
    b149(
      '6.3.2 and table 6.1, as restated in a gas technician’s training text',
      DROPS,
      'read in a public copy',
    ),
  ],
  check: (n, _w, values) => {
    const required = dropAllowed(n.supply, values);
    return { sense: 'at-most', required, found: n.found, kind: 'pressure-difference', yardstick: required };
  },
});
