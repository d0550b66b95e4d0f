/** What the water line is held against. Nameplate figures are invented; the rest stand as their sources print them. */
import {
  answer,
  atLeast,
  atMost,
  type Case,
  type Proof,
  proofs,
  said,
  saying,
  within,
  words,
} from '../proof/index.ts';

const flow = saying('volume-flow');
const pressure = saying('pressure');
const length = saying('length');
const temperature = saying('temperature');
const steps = saying('temperature-difference');
const hours = saying('time');
const heat = saying('heat-rate');
const velocity = saying('velocity');
const percent = (text: string): number => said('ratio', `${text} %`);

const bore = (text: string) => ({ 'heater.header': said('diameter', text) }) as const;
const least = { 'water-state.flow-least': flow('40 gpm') } as const;
const most = { 'water-state.flow-greatest': flow('125 gpm') } as const;

const FLOW: readonly (readonly Proof[])[] = [
  proofs('water.heater-flow', [
    within('water-state.heater-flow', [flow('40 gpm'), flow('125 gpm')], { ...least, ...most }),
  ]),
  // 125 gpm through a 2 in header: common practice, no source.
  proofs('water.header-flow', [
    atMost('heater.water-flow-greatest', flow('125 gpm'), { also: bore('2 in') }),
    atMost('heater.water-flow-greatest', flow('125 gpm'), { also: bore('50 mm') }),
    answer({ 'heater.water-flow-greatest': flow('200 gpm'), ...bore('1-1/2 in') }, 'does not apply'),
    answer({ 'heater.water-flow-greatest': flow('200 gpm'), ...bore('2-1/2 in') }, 'does not apply'),
  ]),
  proofs('water.temperature-rise', [
    atMost('heater.temperature-rise', steps('40 °F'), { also: { 'heater.rise-greatest': steps('40 °F') } }),
  ]),
  // 10 K over the least is the whole margin.
  proofs('water.exchanger-inlet', [
    atLeast('heater.exchanger-inlet', temperature('50 °F'), {
      also: { 'heater.inlet-water-least': temperature('50 °F') },
      yardstick: steps('18 °F'),
    }),
  ]),
  proofs('water.heater-pressure', [
    atMost('heater.shut-off-pressure', pressure('50 psi'), {
      also: { 'heater.water-pressure-greatest': pressure('50 psi') },
    }),
  ]),
];

const BYPASS: readonly (readonly Proof[])[] = [
  proofs('water.bypass-range', [
    answer({ 'job.bypass-found': 'interval', 'job.bypass-between': '' }, 'meets'),
    ...['too-little', 'too-much', 'conflict'].map((reason) =>
      answer({ 'job.bypass-found': reason, 'job.bypass-between': 'a|b' }, 'fails', reason),
    ),
  ]),
  proofs('water.bypass-handle', handle()),
];

/** An opening between two ends; an end that is the valve’s own stop asks nothing. */
function handle(): readonly Case[] {
  const ends = (low: string, high: string) =>
    ({ 'job.bypass-low': percent(low), 'job.bypass-high': percent(high) }) as const;
  const opening = 'job.bypass-opening';
  return [
    within(opening, [percent('20'), percent('60')], ends('20', '60')),
    atMost(opening, percent('60'), { also: ends('0', '60') }),
    atLeast(opening, percent('20'), { also: ends('20', '100') }),
    answer({ ...ends('0', '100'), [opening]: percent('50') }, 'does not apply'),
  ];
}

const window = {
  'heater.switch-low': pressure('2 psi'),
  'heater.switch-running': pressure('5 psi'),
} as const;

const SWITCH: readonly (readonly Proof[])[] = [
  // The least pressure that flow makes is the yardstick, 1 psi where it makes none.
  proofs('water.switch-window', [
    ...['none', 'flow-switch', 'range'].map((limit) =>
      atLeast('heater.switch-high', pressure('2 psi'), {
        also: { ...window, 'heater.switch-limit': limit },
        yardstick: said('pressure-difference', '5 psi'),
      }),
    ),
    atLeast('heater.switch-high', pressure('2 psi'), {
      also: { ...window, 'heater.switch-running': 0, 'heater.switch-limit': 'none' },
      yardstick: said('pressure-difference', '1 psi'),
    }),
    answer(
      { ...window, 'heater.switch-high': pressure('1 psi'), 'heater.switch-limit': 'flow-switch' },
      'fails',
      'only-a-flow-switch',
    ),
    answer(
      { ...window, 'heater.switch-high': pressure('1 psi'), 'heater.switch-limit': 'range' },
      'fails',
      'beyond-the-switch',
    ),
  ]),
  proofs('water.switch-setting', [
    within('heater.switch-setting', [pressure('2 psi'), pressure('4 psi')], {
      'heater.switch-low': pressure('2 psi'),
      'heater.switch-high': pressure('4 psi'),
    }),
    ...['4 psi', '3 psi'].map((high) =>
      answer(
        {
          'heater.switch-setting': pressure('3 psi'),
          'heater.switch-low': pressure('4 psi'),
          'heater.switch-high': pressure(high),
        },
        'does not apply',
      ),
    ),
  ]),
];

const role = (word: string) => ({ also: { 'run.role': word } }) as const;
const BEHIND = [
  'pump-to-filter',
  'filter-to-heater',
  'supply-header',
  'heater-branch',
  'return-header',
  'bypass',
  'return',
];

const LOOP: readonly (readonly Proof[])[] = [
  // 311.3: 6 ft/s before the pump, 8 ft/s behind it. From memory.
  proofs(
    'water.pipe-velocity',
    [
      atMost('run.velocity-greatest', velocity('6 ft/s'), role('suction')),
      ...BEHIND.map((word) => atMost('run.velocity-greatest', velocity('8 ft/s'), role(word))),
    ],
    { editions: ['any', 'ISPSC 2021'] },
  ),
  // 5 ft² of pad at 20 gpm a ft² is 100 gpm.
  proofs('water.filter-rate', [
    atMost('filter.flow-greatest', flow('100 gpm'), {
      also: {
        'filter.area': said('area', '5 ft2'),
        'filter.rate-greatest': flow('20 gpm') / said('area', '1 ft2'),
      },
    }),
  ]),
  proofs('water.filter-loading', [
    atMost('filter.rise-at-clean-speed', pressure('10 psi'), {
      also: { 'filter.dirty-rise': pressure('10 psi') },
    }),
    answer({ 'filter.rise-at-clean-speed': pressure('1 psi'), 'filter.dirty-rise': 0 }, 'does not apply'),
  ]),
  proofs('water.turnover', [
    atMost('basin.turnover-time', hours('6 h'), { also: { 'basin.turnover-wanted': hours('6 h') } }),
  ]),
  proofs('water.pump-suction', [
    atLeast('job.suction-head', said('head', '12 ft'), {
      also: { 'job.suction-head-asked': said('head', '12 ft') },
    }),
    answer({ 'job.suction-head': said('head', '12 ft'), 'job.suction-head-asked': 0 }, 'does not apply'),
  ]),
  proofs('water.check-valve', words('job.check-valve', { meets: ['yes'], fails: ['no'] })),
];

const ORDER: readonly (readonly Proof[])[] = [
  // Common practice, no source: filter, heater, check valve, feeder.
  proofs('water.feeder-order', [
    ...words('job.feeder', {
      meets: ['behind heater and check valve'],
      fails: ['behind the heater', 'before the heater'],
    }),
    answer({ 'job.feeder': 'none' }, 'does not apply'),
  ]),
  // 922.4: a line and valve beside a heater without a way round inside.
  proofs(
    'water.bypass-line',
    [
      ...words('job.bypass-line', { meets: ['manual'], fails: ['none'] }),
      ...words('job.bypass-line', { meets: ['manual'], fails: ['none'] }, { 'heater.inner-bypass': 0 }),
      answer({ 'heater.inner-bypass': 0 }, 'unknown'),
      answer({ 'heater.inner-bypass': 0.2, 'job.bypass-line': 'none' }, 'does not apply'),
      answer({ 'heater.inner-bypass': 0.2 }, 'does not apply'),
    ],
    { editions: ['UMC 2012'] },
  ),
];

const RELIEF: readonly (readonly Proof[])[] = [
  proofs(
    'water.relief-valve',
    words('heater.relief-valve', { meets: ['yes'], fails: ['no'] }, { 'heater.relief-needed': 'yes' }),
  ),
  // HG-400.2: set at or below the greatest pressure allowed.
  proofs(
    'water.relief-setting',
    [
      atMost('heater.relief-set', pressure('75 psi'), {
        also: { 'heater.water-pressure-greatest': pressure('75 psi') },
      }),
    ],
    { guard: 0 },
  ),
  // 10.28.5: no less, in Btu/h, than the input.
  proofs(
    'water.relief-capacity',
    [atLeast('heater.relief-capacity', heat('400 kBtu/h'), { also: { 'heater.input': heat('400 kBtu/h') } })],
    { guard: 0 },
  ),
  proofs('water.relief-discharge', words('heater.relief-discharge', { meets: ['yes'], fails: ['no'] })),
  // 1006.1: within 18 in of the floor.
  proofs('water.relief-discharge-end', [atMost('heater.relief-discharge-height', length('18 in'))]),
];

const mg = (value: string): number => said('mass-concentration', `${value} mg/L`);
const USES = ['pool', 'wading'] as const;

const CHEMISTRY: readonly (readonly Proof[])[] = [
  // Service Industry News, 14 March 2021: −0.3 to 0.5.
  proofs('water.saturation-index', [within('basin.saturation-index', [-0.3, 0.5])]),
  proofs('water.saturation-index-heated', [within('basin.saturation-index-heated', [-0.3, 0.5])]),
  // ANSI/APSP/ICC-11: pH 7.2 to 7.8, alkalinity 60 to 180; calcium 150 to 1,000 in pools, 100 to 800 in spas.
  proofs('water.ph', [within('basin.ph', [7.2, 7.8])]),
  proofs('water.calcium-hardness', [
    ...USES.map((use) => within('basin.calcium', [mg('150'), mg('1000')], { 'basin.use': use })),
    within('basin.calcium', [mg('100'), mg('800')], { 'basin.use': 'spa' }),
  ]),
  proofs('water.total-alkalinity', [within('basin.alkalinity', [mg('60'), mg('180')])]),
  proofs('water.cyanuric-acid', [atMost('basin.cyanuric-acid', mg('100'))]),
  // Common practice, no source: 1 to 4 in pools, 2 to 5 in spas.
  proofs('water.free-chlorine', [
    ...USES.map((use) => within('basin.free-chlorine', [mg('1'), mg('4')], { 'basin.use': use })),
    within('basin.free-chlorine', [mg('2'), mg('5')], { 'basin.use': 'spa' }),
  ]),
];

export const WATER_PROOFS: readonly Proof[] = [
  ...FLOW,
  ...BYPASS,
  ...SWITCH,
  ...LOOP,
  ...ORDER,
  ...RELIEF,
  ...CHEMISTRY,
].flat();
