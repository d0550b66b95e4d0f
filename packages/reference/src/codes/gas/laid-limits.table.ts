/** What piping is held against as it is laid, connected, bonded and purged; the sections as they print their figures. */
import {
  answer,
  atLeast,
  atMost,
  type Case,
  type Facts,
  type Proof,
  proofs,
  saying,
  words,
} from '../proof/index.ts';

const length = saying('length');
const pressure = saying('pressure');
const wire = saying('wire-size');

const US = { editions: ['IFGC 2018'] };
const CANADA = { editions: ['B149.1-20'] };
const BOTH = { editions: ['IFGC 2018', 'B149.1-20'] };
const yes = { meets: ['yes'], fails: ['no'] };

function nipple(limit: string): readonly Case[] {
  return [
    atLeast('heater.trap-nipple', length(limit), { also: { 'heater.sediment-trap': 'yes' } }),
    answer({ 'heater.sediment-trap': 'yes' }, 'unknown'),
    answer({ 'heater.sediment-trap': 'no', 'heater.trap-nipple': length('1 in') }, 'does not apply'),
  ];
}

const APPLIANCE: readonly (readonly Proof[])[] = [
  proofs('gas.shut-off-accessible', words('heater.shut-off-accessible', yes), BOTH),
  proofs('gas.union', words('heater.gas-union', yes), BOTH),
  // 408.4: a nipple of 3 in, capped; in Canada 75 mm.
  proofs('gas.sediment-trap-nipple', nipple('3 in'), { ...US, guard: 0 }),
  proofs('gas.sediment-trap-nipple', nipple('75 mm'), { ...CANADA, guard: 0 }),
];

function buried(usual: string, drive: string): readonly Case[] {
  const where = (word: string) => ({ 'laid-segment.where': word }) as const;
  return [
    atLeast('laid-segment.cover', length(usual), { also: where('underground') }),
    atLeast('laid-segment.cover', length(drive), { also: where('under a commercial drive') }),
    answer(where('underground'), 'unknown'),
    answer(where('under a commercial drive'), 'unknown'),
    ...['inside', 'outside'].map((word) =>
      answer({ ...where(word), 'laid-segment.cover': 0 }, 'does not apply'),
    ),
  ];
}

const BURIED: readonly (readonly Proof[])[] = [
  // 404.12: 12 in. 6.15: 400 mm, 600 mm under a commercial drive.
  proofs('gas.burial-depth', buried('12 in', '12 in'), { ...US, guard: 0 }),
  proofs('gas.burial-depth', buried('400 mm', '600 mm'), { ...CANADA, guard: 0 }),
  proofs(
    'gas.plastic-underground',
    words('plastic-segment.where', {
      meets: ['underground', 'under a commercial drive'],
      fails: ['inside', 'outside'],
    }),
    BOTH,
  ),
  proofs('gas.plastic-risers', words('plastic-segment.risers', yes), BOTH),
  proofs('gas.tracer', words('plastic-segment.tracer', yes), BOTH),
  // 404.17.3: 18 AWG.
  proofs(
    'gas.tracer-size',
    [
      atLeast('plastic-segment.tracer-size', wire('18 AWG'), { also: { 'plastic-segment.tracer': 'yes' } }),
      answer({ 'plastic-segment.tracer': 'yes' }, 'unknown'),
      answer(
        { 'plastic-segment.tracer': 'no', 'plastic-segment.tracer-size': wire('22 AWG') },
        'does not apply',
      ),
      answer({}, 'does not apply'),
    ],
    { ...US, guard: 0 },
  ),
];

const bonded = { 'job.csst': 'yes', 'job.csst-bonded': 'yes' } as const;

/** Of the bond that is there. */
function ofBond(one: Case, poor: Facts): readonly Case[] {
  return [
    one,
    answer(bonded, 'unknown'),
    answer({ ...poor, 'job.csst': 'no', 'job.csst-bonded': 'yes' }, 'does not apply'),
    answer({ ...poor, 'job.csst': 'yes', 'job.csst-bonded': 'no' }, 'does not apply'),
    answer({ ...poor, 'job.csst': 'yes' }, 'does not apply'),
  ];
}

const CSST: readonly (readonly Proof[])[] = [
  proofs(
    'gas.csst-bonded',
    [
      ...words('job.csst-bonded', yes, { 'job.csst': 'yes' }),
      answer({ 'job.csst': 'yes' }, 'unknown'),
      answer({ 'job.csst': 'no', 'job.csst-bonded': 'no' }, 'does not apply'),
    ],
    BOTH,
  ),
  // 310.2.2, rule 10-708: 6 AWG copper; 310.2.3: 75 ft at most.
  proofs(
    'gas.csst-bond-size',
    ofBond(atLeast('job.csst-bond-conductor', wire('6 AWG'), { also: bonded }), {
      'job.csst-bond-conductor': wire('14 AWG'),
    }),
    { ...BOTH, guard: 0 },
  ),
  proofs(
    'gas.csst-bond-length',
    ofBond(atMost('job.csst-bond-length', length('75 ft'), { also: bonded }), {
      'job.csst-bond-length': length('100 ft'),
    }),
    { ...US, guard: 0 },
  ),
];

/** Drop allowed, by the pressure it starts from. */
function drop(limit: string, from: string): Case {
  return atMost('job.design-drop', pressure(limit), { also: { 'job.supply-pressure': pressure(from) } });
}

/** Large by the code’s own measure, whatever the other country’s says. */
interface Large {
  readonly is: FactOfSize;
  readonly other: FactOfSize;
}

type FactOfSize = 'job.purge-large' | 'job.pipe-of-nps-4';

const TABLE: Large = { is: 'job.purge-large', other: 'job.pipe-of-nps-4' };
const NPS: Large = { is: 'job.pipe-of-nps-4', other: 'job.purge-large' };

function purgeWhere({ is, other }: Large): readonly Case[] {
  const way = (word: string) => ({ 'job.purge-way': word }) as const;
  return [
    answer(way('outdoors'), 'meets'),
    answer({ ...way('outdoors'), [is]: 'yes' }, 'meets'),
    answer(way('indoors, unwatched'), 'fails'),
    answer({ ...way('indoors, unwatched'), [is]: 'no' }, 'fails'),
    ...['through a burner', 'indoors, watched by a detector'].flatMap((word) => [
      answer({ ...way(word), [is]: 'no' }, 'meets'),
      answer({ ...way(word), [is]: 'yes', [other]: 'no' }, 'fails', 'purge-outdoors'),
      answer(way(word), 'unknown'),
    ]),
  ];
}

function purgeInert({ is, other }: Large): readonly Case[] {
  return [
    ...words('job.purge-inert', yes, { [is]: 'yes', [other]: 'no' }),
    answer({ [is]: 'no', 'job.purge-inert': 'no', [other]: 'yes' }, 'does not apply'),
    answer({ 'job.purge-inert': 'yes', [other]: 'yes' }, 'unknown'),
    answer({ [is]: 'yes' }, 'unknown'),
  ];
}

/** Where the gas of a large system is let out, and until when. */
function letOut(fact: `job.${string}`, limit: number): readonly Case[] {
  return [
    atLeast(fact, limit, { also: { 'job.purge-large': 'yes' } }),
    answer({ 'job.purge-large': 'yes' }, 'unknown'),
    answer({ 'job.purge-large': 'no', [fact]: 0 }, 'does not apply'),
  ];
}

const OUT = { ...US, guard: 0 };

const PURGE: readonly (readonly Proof[])[] = [
  proofs('gas.purge-where', purgeWhere(TABLE), US),
  proofs('gas.purge-where', purgeWhere(NPS), CANADA),
  proofs('gas.purge-inert', purgeInert(TABLE), US),
  proofs('gas.purge-inert', purgeInert(NPS), CANADA),
  // 406.7.1.3: 10 ft from ignition and from openings, 25 ft from air intakes, until 90 % is gas.
  proofs('gas.purge-from-ignition', letOut('job.purge-ignition', length('10 ft')), OUT),
  proofs('gas.purge-from-openings', letOut('job.purge-openings', length('10 ft')), OUT),
  proofs('gas.purge-from-intake', letOut('job.purge-intake', length('25 ft')), OUT),
  proofs('gas.purge-end', letOut('job.purge-gas', 0.9), OUT),
];

const TEST: readonly (readonly Proof[])[] = [
  // 6.3.2 and table 6.1: 0.5 in w.c. below 7 in, 1 in from there, 1 psi at 2 psi, half of 5 psi and over.
  proofs(
    'gas.design-drop',
    [
      drop('0.5 in w.c.', '6.99 in w.c.'),
      drop('1 in w.c.', '7 in w.c.'),
      drop('1 in w.c.', '1.999 psi'),
      drop('1 psi', '2 psi'),
      drop('1 psi', '4.999 psi'),
      drop('2.5 psi', '5 psi'),
      drop('5 psi', '10 psi'),
    ],
    { ...CANADA, guard: 0 },
  ),
  proofs(
    'gas.test-gas',
    words('job.test-gas', {
      meets: ['air', 'nitrogen', 'carbon dioxide', 'other inert gas'],
      fails: ['fuel gas', 'oxygen'],
    }),
    BOTH,
  ),
  proofs(
    'gas.no-leak',
    [
      ...['survey', 'plan', 'install', 'start-up', 'service'].flatMap((stage) =>
        words('job.leaks', { meets: ['no'], fails: ['yes'] }, { 'job.stage': stage }),
      ),
      ...['survey', 'plan', 'install'].map((stage) => answer({ 'job.stage': stage }, 'does not apply')),
      ...['start-up', 'service'].map((stage) => answer({ 'job.stage': stage }, 'unknown')),
      answer({}, 'unknown'),
    ],
    BOTH,
  ),
];

export const LAID_PROOFS: readonly Proof[] = [...APPLIANCE, ...BURIED, ...CSST, ...PURGE, ...TEST].flat();
