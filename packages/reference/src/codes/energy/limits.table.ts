/** What the energy codes and the law on efficiency are held against; the sections as they print their figures. */

import type { Verdict } from '../../evaluate/index.ts';
import {
  answer,
  atLeast,
  atMost,
  type Case,
  type Facts,
  type Proof,
  proofs,
  said,
  saying,
  words,
} from '../proof/index.ts';

const percent = (text: string): number => said('ratio', `${text} %`);
const length = saying('length');
const heat = saying('heat-rate');

/** What stands already is left as it is. */
const REPAIR = { 'job.kind': 'service' } as const;

/** What is built or replaced is asked, alike. */
const ofNewWork = (facts: Facts, verdict: Verdict): readonly Case[] =>
  ['new', 'swap'].map((kind) => answer({ ...facts, 'job.kind': kind }, verdict));

const COVERS = ['bubble', 'track', 'foam', 'discs', 'liquid'];
const out = { 'basin.where': 'outdoors' } as const;
const bare = { ...out, 'basin.cover': 'none' } as const;

function coverAsked(): readonly Case[] {
  return [
    ...words('basin.cover', { meets: COVERS, fails: [] }, out),
    answer(out, 'unknown'),
    answer({ 'basin.where': 'indoors', 'basin.cover': 'none' }, 'does not apply'),
    answer({ 'basin.where': 'indoors' }, 'does not apply'),
    answer({ ...bare, ...REPAIR, 'basin.other-heat': 0 }, 'does not apply'),
    ...ofNewWork({ ...out, 'basin.cover': 'foam' }, 'meets'),
  ];
}

/** No cover where so much of the heat comes from elsewhere. */
function coverUnless(share: string): readonly Case[] {
  return [
    atLeast('basin.other-heat', percent(share), { also: bare }),
    ...coverAsked(),
    answer(bare, 'unknown'),
  ];
}

const made = (day: string) => ({ 'heater.made': day }) as const;

/** 430.32(k): 82 % from 16 April 2013, 78 % before, another figure from 30 May 2028. */
const EFFICIENCY: readonly Case[] = [
  atLeast('heater.efficiency', percent('82'), { also: made('2013-04-16') }),
  atLeast('heater.efficiency', percent('82'), { also: made('2028-05-29') }),
  atLeast('heater.efficiency', percent('78'), { also: made('2013-04-15') }),
  atLeast('heater.efficiency', percent('78'), { also: made('1990-01-01') }),
  answer({ ...made('1989-12-31'), 'heater.efficiency': percent('50') }, 'does not apply'),
  answer({ ...made('2028-05-30'), 'heater.efficiency': percent('50') }, 'does not apply'),
];

/** 84 (Q + 491)/(Q + 2536) per cent, Q in Btu/h. From memory. */
function integrated(btu: number): Case {
  return atLeast('heater.integrated-efficiency', percent(String((84 * (btu + 491)) / (btu + 2536))), {
    also: { ...made('2028-05-30'), 'heater.input': heat(`${btu} Btu/h`) },
  });
}

const INTEGRATED: readonly Case[] = [
  integrated(400_000),
  integrated(100_000),
  integrated(1000),
  answer({ 'heater.input': heat('400 kBtu/h') }, 'does not apply'),
  answer({ ...made('2028-05-30'), 'heater.input': heat('400 kBtu/h') }, 'unknown'),
  answer(
    { ...made('2028-05-29'), 'heater.input': heat('400 kBtu/h'), 'heater.integrated-efficiency': 0.1 },
    'does not apply',
  ),
];

const at = (word: string) => ({ 'heater.off-switch': word }) as const;

const IECC = { editions: ['IECC 2015'] };
const TITLE_24 = { editions: ['Title 24 2013'] };
const LAW = { editions: ['10 CFR 430'], guard: 0 };

const pilot = (fuel: string) => [
  ...words('heater.ignition', { meets: ['electronic'], fails: ['standing pilot'] }, { 'heater.fuel': fuel }),
  answer({ 'heater.fuel': fuel }, 'unknown'),
  ...ofNewWork({ 'heater.fuel': fuel, 'heater.ignition': 'standing pilot' }, 'fails'),
  answer({ 'heater.fuel': fuel, 'heater.ignition': 'standing pilot', ...REPAIR }, 'does not apply'),
];

const switched = (meets: readonly string[], fails: readonly string[]) => [
  ...words('heater.off-switch', { meets, fails }),
  answer({}, 'unknown'),
  answer({ ...at('none'), ...REPAIR }, 'does not apply'),
  ...ofNewWork(at('none'), 'fails'),
];

export const ENERGY_PROOFS: readonly Proof[] = [
  // R403.10.3: over 70 %, in 2018 over 75 %.
  proofs('heat.cover', coverUnless('70'), { ...IECC, guard: 0 }),
  proofs('heat.cover', coverUnless('75'), { editions: ['IECC 2018'], guard: 0 }),
  // 110.4(b)2: nothing exempts.
  proofs(
    'heat.cover',
    [answer({ ...bare, 'basin.other-heat': percent('99') }, 'fails'), answer(bare, 'fails'), ...coverAsked()],
    { ...TITLE_24, guard: 0 },
  ),
  // 110.4 of 2025: 60 %, of a new heater.
  proofs(
    'heat.primary-source',
    [
      atLeast('basin.other-heat', percent('60'), { also: { 'job.kind': 'new' } }),
      answer({ 'job.kind': 'new' }, 'unknown'),
      ...['swap', 'service'].map((kind) =>
        answer({ 'job.kind': kind, 'basin.other-heat': 0 }, 'does not apply'),
      ),
    ],
    { editions: ['Title 24 2025'], guard: 0 },
  ),
  proofs('heat.no-pilot', [...pilot('natural'), ...pilot('propane')], IECC),
  proofs(
    'heat.no-pilot',
    [
      ...pilot('natural'),
      answer({ 'heater.fuel': 'propane', 'heater.ignition': 'standing pilot' }, 'does not apply'),
    ],
    TITLE_24,
  ),
  proofs('heat.efficiency-least', EFFICIENCY, LAW),
  proofs('heat.integrated-efficiency', INTEGRATED, LAW),
  proofs('power.off-switch', switched(['on the heater', 'beside it'], ['none']), IECC),
  proofs('power.off-switch', switched(['on the heater'], ['beside it', 'none']), TITLE_24),
  // R403.10.1: within 3 ft.
  proofs(
    'power.off-switch-distance',
    [
      atMost('heater.off-switch-distance', length('3 ft'), { also: at('beside it') }),
      answer(at('beside it'), 'unknown'),
      ...['on the heater', 'none'].map((word) =>
        answer({ ...at(word), 'heater.off-switch-distance': length('9 ft') }, 'does not apply'),
      ),
      answer({}, 'does not apply'),
      ...ofNewWork({ ...at('beside it'), 'heater.off-switch-distance': length('9 ft') }, 'fails'),
      answer(
        { ...at('beside it'), ...REPAIR, 'heater.off-switch-distance': length('9 ft') },
        'does not apply',
      ),
    ],
    { ...IECC, guard: 0 },
  ),
  proofs(
    'power.time-switch',
    [
      ...words('job.timer', { meets: ['yes'], fails: ['no'] }),
      answer({ 'job.timer': 'health rules run it all day' }, 'does not apply'),
      answer({ 'job.timer': 'no', ...REPAIR }, 'does not apply'),
      ...ofNewWork({ 'job.timer': 'no' }, 'fails'),
      answer({}, 'unknown'),
    ],
    { editions: ['IECC 2015', 'Title 24 2013'] },
  ),
  // 110.4(b)1: 36 in of pipe.
  proofs(
    'water.solar-pipe',
    [
      atLeast('job.solar-pipe', length('36 in')),
      answer({}, 'unknown'),
      answer({ 'job.solar-pipe': 0, ...REPAIR }, 'does not apply'),
      ...ofNewWork({ 'job.solar-pipe': length('35 in') }, 'fails'),
    ],
    { ...TITLE_24, guard: 0 },
  ),
].flat();
