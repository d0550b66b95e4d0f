/** Corrugated tubing is bonded, for a lightning stroke nearby burns holes into it. Asked where a section is of it. */
import { quantity } from '@firstfire/engine';
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { b149, ifgc2018, NO_SECTION } from '../entries.ts';

export const csstBonded = defineRule({
  id: 'gas.csst-bonded',
  line: 'gas',
  scope: 'job',
  numbers: {},
  words: { csst: 'job.csst', bonded: 'job.csst-bonded' },
  optional: ['bonded'],
  editions: [
    ifgc2018('310.2', {}),
    b149(`bonding by the tubing’s maker and C22.1 rule 10-700, ${NO_SECTION}`, {}),
  ],
  check: (_n, w) => {
    if (w.csst === 'no') return { sense: 'does-not-apply' };
    return w.bonded === '' ? { sense: 'unread' } : { sense: 'holds', holds: w.bonded === 'yes' };
  },
});

interface Limit {
  readonly limit: number;
}

const size: readonly Edition<Limit>[] = [
  ifgc2018('310.2.2, 6 AWG copper', { limit: quantity.gaugeArea(6) }),
  b149('C22.1 rule 10-708, 6 AWG copper', { limit: quantity.gaugeArea(6) }),
];

/** Divided by the size asked, which is what is usually run. */
export const csstBondSize = defineRule({
  id: 'gas.csst-bond-size',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.csst-bond-conductor' },
  words: { csst: 'job.csst', bonded: 'job.csst-bonded' },
  optional: ['bonded', 'found'],
  guard: 0,
  editions: size,
  check: (n, w, { limit }) => {
    if (w.csst === 'no' || w.bonded !== 'yes') return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-least', required: limit, found: n.found, kind: 'wire-size', yardstick: limit };
  },
});

/** Divided by the limit. */
export const csstBondLength = defineRule({
  id: 'gas.csst-bond-length',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.csst-bond-length' },
  words: { csst: 'job.csst', bonded: 'job.csst-bonded' },
  optional: ['bonded', 'found'],
  guard: 0,
  editions: [ifgc2018('310.2.3, bonding jumper of 75 ft at most', { limit: 75 * quantity.FOOT })],
  check: (n, w, { limit }) => {
    if (w.csst === 'no' || w.bonded !== 'yes') return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-most', required: limit, found: n.found, kind: 'length', yardstick: limit };
  },
});
