/** How the air gets out of new piping: a large system to the outdoors through inert gas, a small one never unwatched. */
import { quantity } from '@firstfire/engine';
import { type AnyRule, defineRule, type Edition, type FactName } from '../../evaluate/index.ts';
import { b149, ifgc2018 } from '../entries.ts';

const READ = 'read in a public copy';

interface Large {
  /** What makes a system a large one. */
  readonly by: 'table' | 'nps-4';
}

const large: readonly Edition<Large>[] = [
  ifgc2018(
    '406.7.1 and its table, over 2 psi or a large size for long; read in the 2018 residential and 2021 plumbing codes',
    { by: 'table' },
    READ,
  ),
  b149(
    '6.23 and annex H, from NPS 4 on, as restated in a gas technician’s training text',
    { by: 'nps-4' },
    READ,
  ),
];

interface Sizes {
  readonly table: string;
  readonly nps: string;
}

/** Whether the system is a large one; empty where that is not known. */
function isLarge(w: Sizes, { by }: Large): string {
  return by === 'table' ? w.table : w.nps;
}

export const purgeWhere = defineRule({
  id: 'gas.purge-where',
  line: 'gas',
  scope: 'job',
  numbers: {},
  words: { table: 'job.purge-large', nps: 'job.pipe-of-nps-4', way: 'job.purge-way' },
  optional: ['table', 'nps'],
  editions: large,
  check: (_n, w, values) => {
    const size = isLarge(w, values);
    if (w.way === 'outdoors') return { sense: 'holds', holds: true };
    if (w.way === 'indoors, unwatched') return { sense: 'holds', holds: false };
    if (size === '') return { sense: 'unread' };
    return size === 'no'
      ? { sense: 'holds', holds: true }
      : { sense: 'holds', holds: false, because: { reason: 'purge-outdoors' } };
  },
});

const inertFirst: readonly Edition<Large>[] = [
  ifgc2018('406.7.1.2, read in the 2018 residential code', { by: 'table' }, READ),
  b149(
    '6.23, nitrogen or carbon dioxide first from NPS 4 on, as restated in a training text',
    { by: 'nps-4' },
    READ,
  ),
];

export const purgeInert = defineRule({
  id: 'gas.purge-inert',
  line: 'gas',
  scope: 'job',
  numbers: {},
  words: { table: 'job.purge-large', nps: 'job.pipe-of-nps-4', inert: 'job.purge-inert' },
  optional: ['table', 'nps', 'inert'],
  editions: inertFirst,
  check: (_n, w, values) => {
    const size = isLarge(w, values);
    if (size === 'no') return { sense: 'does-not-apply' };
    if (size === '' || w.inert === '') return { sense: 'unread' };
    return { sense: 'holds', holds: w.inert === 'yes' };
  },
});

interface Asked {
  readonly id: string;
  readonly fact: FactName;
  readonly kind: 'length' | 'volume-fraction';
  readonly edition: Edition<{ readonly limit: number }>;
}

/** Asked of a large system. Divided by the limit. */
function ofLarge({ id, fact, kind, edition }: Asked): AnyRule {
  return defineRule({
    id,
    line: 'gas',
    scope: 'job',
    numbers: { found: fact },
    words: { table: 'job.purge-large' },
    optional: ['found'],
    guard: 0,
    editions: [edition],
    check: (n, w, { limit }) => {
      if (w.table === 'no') return { sense: 'does-not-apply' };
      if (Number.isNaN(n.found)) return { sense: 'unread' };
      return { sense: 'at-least', required: limit, found: n.found, kind, yardstick: limit };
    },
  });
}

const apart = (of: string, feet: number): Edition<{ readonly limit: number }> =>
  ifgc2018(
    `406.7.1.3, ${feet} ft from ${of}, read in the 2021 residential code`,
    { limit: feet * quantity.FOOT },
    READ,
  );

export const purgeFromIgnition = ofLarge({
  id: 'gas.purge-from-ignition',
  fact: 'job.purge-ignition',
  kind: 'length',
  edition: apart('sources of ignition', 10),
});

export const purgeFromOpenings = ofLarge({
  id: 'gas.purge-from-openings',
  fact: 'job.purge-openings',
  kind: 'length',
  edition: apart('openings of buildings', 10),
});

export const purgeFromIntake = ofLarge({
  id: 'gas.purge-from-intake',
  fact: 'job.purge-intake',
  kind: 'length',
  edition: apart('mechanical air intakes', 25),
});

export const purgeEnd = ofLarge({
  id: 'gas.purge-end',
  fact: 'job.purge-gas',
  kind: 'volume-fraction',
  edition: ifgc2018('406.7.1.3, until 90 % is fuel gas', { limit: 0.9 }),
});
