/** Who may do the gas and the electrical work. Which licence counts where stands in `LICENCES`. */
import { quantity } from '@firstfire/engine';
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { b149 } from '../entries.ts';

const KBTU_H = (1000 * quantity.BTU) / quantity.HOUR;

interface GasLicences {
  /** Greatest input (W) a licence reaches; a licence that is not listed has no such end. */
  readonly reach: Readonly<Record<string, number>>;
  /** Licences that do not count here; *none* counts nowhere. */
  readonly not: readonly string[];
}

const licences: readonly Edition<GasLicences>[] = [
  {
    edition: 'any',
    from: '1900-01-01',
    source: {
      document: 'Law of the place',
      at: 'licence for gas work, by state or province',
      known: 'common practice, no source',
    },
    values: { reach: {}, not: [] },
  },
  b149('read with the provinces’ certification of gas technicians, a second-class one up to 400,000 Btu/h', {
    reach: { 'gas technician 2': 400 * KBTU_H },
    not: ['gas technician 3'],
  }),
];

/** Divided by the input that the licence reaches. */
export const gasLicence = defineRule({
  id: 'gas.licence',
  line: 'gas',
  scope: 'heater',
  numbers: { found: 'heater.input' },
  words: { licence: 'job.gas-licence' },
  optional: ['found'],
  guard: 0,
  editions: licences,
  check: (n, w, { reach, not }) => {
    const limit = reach[w.licence];
    if (limit === undefined)
      return { sense: 'holds', holds: w.licence !== 'none' && !not.includes(w.licence) };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-most', required: limit, found: n.found, kind: 'heat-rate', yardstick: limit };
  },
});

export const electricalLicence = defineRule({
  id: 'power.licence',
  line: 'power',
  scope: 'job',
  numbers: {},
  words: { licence: 'job.electrical-licence' },
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'Law of the place',
        at: 'licence for electrical work, by state or province',
        known: 'common practice, no source',
      },
      values: {},
    },
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.licence !== 'none' }),
});
