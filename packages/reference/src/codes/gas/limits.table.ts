/** What the gas line is held against. Nameplate figures are invented; the codes' stand as their sections print them. */
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

const length = saying('length');
const pressure = saying('pressure');
const flow = saying('standard-gas-flow');
const heat = saying('heat-rate');
const minutes = saying('time');

const CANADA = { editions: ['B149.1-20'] };

const plate = { 'heater.inlet-pressure-minimum': pressure('5 in w.c.') } as const;
const supply = { ...plate, 'heater.supply-pressure': pressure('7 in w.c.') } as const;
const spent = { ...plate, 'heater.supply-pressure': pressure('5 in w.c.') } as const;
const starved = { ...plate, 'heater.supply-pressure': pressure('4 in w.c.') } as const;

const CONNECTION: readonly (readonly Proof[])[] = [
  proofs('gas.fuel-matches', [
    answer({ 'heater.fuel': 'natural', 'job.fuel': 'natural' }, 'meets'),
    answer({ 'heater.fuel': 'propane', 'job.fuel': 'propane' }, 'meets'),
    answer({ 'heater.fuel': 'natural', 'job.fuel': 'propane' }, 'fails'),
    answer({ 'heater.fuel': 'propane', 'job.fuel': 'natural' }, 'fails'),
  ]),
  // 409.5.1: within 6 ft of the appliance. From memory.
  proofs('gas.shut-off-distance', [atMost('heater.shut-off-distance', length('6 ft'))], {
    editions: ['IFGC 2018'],
  }),
  proofs('gas.sediment-trap', words('heater.sediment-trap', { meets: ['yes'], fails: ['no'] }), {
    editions: ['IFGC 2018', 'B149.1-20'],
  }),
  // Ratings go by steps of 1,000 ft.
  proofs(
    'gas.altitude-rating',
    [
      atMost('site.altitude', length('4500 ft'), {
        also: { 'heater.altitude-maximum': length('4500 ft') },
        yardstick: length('1000 ft'),
      }),
    ],
    { guard: 0 },
  ),
];

const PRESSURE: readonly (readonly Proof[])[] = [
  // 7 in at the regulator and 5 in on the plate leave 2 in to spend.
  proofs('gas.burner-pressure-running', [
    atLeast('heater.inlet-pressure-everything-on', pressure('5 in w.c.'), {
      also: supply,
      yardstick: said('pressure-difference', '2 in w.c.'),
    }),
    atLeast('heater.inlet-pressure-everything-on', pressure('5 in w.c.'), { also: spent }),
    atLeast('heater.inlet-pressure-everything-on', pressure('5 in w.c.'), { also: starved }),
  ]),
  proofs('gas.burner-pressure-lock-up', [
    atMost('heater.inlet-pressure-all-off', pressure('10.5 in w.c.'), {
      also: { 'heater.inlet-pressure-maximum': pressure('10.5 in w.c.') },
    }),
  ]),
  // 402.5: no more drop than leaves the appliance what its plate asks. From memory.
  proofs(
    'gas.code-pressure',
    [
      atLeast('heater.code-inlet-pressure', pressure('5 in w.c.'), {
        also: supply,
        yardstick: said('pressure-difference', '2 in w.c.'),
      }),
      atLeast('heater.code-inlet-pressure', pressure('5 in w.c.'), { also: spent }),
      atLeast('heater.code-inlet-pressure', pressure('5 in w.c.'), { also: starved }),
    ],
    { editions: ['IFGC 2018'] },
  ),
];

const CAPACITY: readonly (readonly Proof[])[] = [
  proofs(
    'gas.section-capacity',
    [
      atLeast('segment.code-capacity', flow('275 cfh'), { also: { 'segment.code-load': flow('275 cfh') } }),
      answer({ 'segment.code-capacity': flow('275 cfh'), 'segment.code-load': 0 }, 'does not apply'),
    ],
    { editions: ['IFGC 2018'] },
  ),
  proofs('gas.meter-capacity', [
    atLeast('job.meter-capacity', flow('425 cfh'), { also: { 'job.connected-load': flow('425 cfh') } }),
    answer({ 'job.meter-capacity': flow('425 cfh'), 'job.connected-load': 0 }, 'does not apply'),
  ]),
  proofs('gas.regulator-capacity', [
    atLeast('regulator.capacity', flow('400 cfh'), { also: { 'regulator.load': flow('400 cfh') } }),
    answer({ 'regulator.capacity': flow('400 cfh'), 'regulator.load': 0 }, 'does not apply'),
  ]),
  proofs(
    'gas.tank-vaporisation',
    [
      atLeast('job.tank-vaporisation', heat('400 kBtu/h'), {
        also: { 'job.connected-input': heat('400 kBtu/h') },
      }),
      answer({ 'job.tank-vaporisation': heat('400 kBtu/h'), 'job.connected-input': 0 }, 'does not apply'),
    ],
    { guard: 0.25 },
  ),
];

const TEST: readonly (readonly Proof[])[] = [
  // 406.4.1: 1.5 times the working pressure, and 3 psig (20 kPa) at least; 5 psig of work asks 7.5.
  proofs(
    'gas.test-pressure',
    [
      atLeast('job.test-pressure', pressure('3 psi'), {
        also: { 'job.working-pressure-greatest': pressure('7 in w.c.') },
      }),
      atLeast('job.test-pressure', pressure('3 psi'), {
        also: { 'job.working-pressure-greatest': pressure('7 in w.c.'), 'job.test-run': 'long' },
      }),
      atLeast('job.test-pressure', pressure('3 psi'), {
        also: { 'job.working-pressure-greatest': pressure('1.999 psi') },
      }),
      atLeast('job.test-pressure', pressure('7.5 psi'), {
        also: { 'job.working-pressure-greatest': pressure('5 psi'), 'job.test-run': '' },
      }),
    ],
    { editions: ['IFGC 2015'], guard: 0 },
  ),
  // G2417.4.2: 10 minutes, for one- and two-family dwellings.
  proofs(
    'gas.test-duration',
    [
      atLeast('job.test-duration', minutes('10 min'), { also: { 'job.single-family': 'yes' } }),
      atLeast('job.test-duration', minutes('10 min'), {
        also: { 'job.single-family': 'yes', 'job.test-run': 'long' },
      }),
      answer({ 'job.test-duration': 0, 'job.single-family': 'no' }, 'does not apply'),
      answer({ 'job.test-duration': minutes('10 min') }, 'unknown'),
    ],
    { editions: ['IFGC 2018', 'IFGC 2021'], guard: 0 },
  ),
  // G2417.4: a gauge of no more than 5 times the test.
  proofs(
    'gas.test-gauge-range',
    [
      atMost('job.test-gauge-range', pressure('15 psi'), {
        also: { 'job.test-pressure': pressure('3 psi') },
      }),
      answer({ 'job.test-gauge-range': pressure('15 psi'), 'job.test-pressure': 0 }, 'does not apply'),
    ],
    { editions: ['IFGC 2018', 'IFGC 2021'], guard: 0 },
  ),
];

/** Table 6.3 and 6.22: 100 kPa and 15 min, over 60 m 340 kPa and 180 min; 1.5 times the work; 15 % to 300 % beyond. */
const CANADIAN_TEST: readonly (readonly Proof[])[] = [
  proofs('gas.test-pressure', canadianPressure(), { ...CANADA, guard: 0 }),
  proofs(
    'gas.test-duration',
    [
      atLeast('job.test-duration', minutes('15 min'), { also: { 'job.test-run': 'short' } }),
      atLeast('job.test-duration', minutes('180 min'), {
        also: { 'job.test-run': 'long', 'job.single-family': 'no' },
      }),
      answer({ 'job.test-duration': minutes('180 min') }, 'unknown'),
    ],
    { ...CANADA, guard: 0 },
  ),
  proofs(
    'gas.test-gauge-range',
    [
      within('job.test-gauge-range', [pressure('115 kPa'), pressure('400 kPa')], {
        'job.test-pressure': pressure('100 kPa'),
      }),
      answer({ 'job.test-gauge-range': pressure('115 kPa'), 'job.test-pressure': 0 }, 'does not apply'),
    ],
    { ...CANADA, guard: 0 },
  ),
];

function canadianPressure(): readonly Case[] {
  const work = (text: string) => ({ 'job.working-pressure-greatest': pressure(text) }) as const;
  return [
    atLeast('job.test-pressure', pressure('100 kPa'), {
      also: { ...work('2 psi'), 'job.test-run': 'short' },
    }),
    atLeast('job.test-pressure', pressure('340 kPa'), { also: { ...work('2 psi'), 'job.test-run': 'long' } }),
    atLeast('job.test-pressure', pressure('150 kPa'), {
      also: { ...work('100 kPa'), 'job.test-run': 'short' },
    }),
    answer({ ...work('2 psi'), 'job.test-pressure': pressure('400 kPa') }, 'unknown'),
  ];
}

export const GAS_PROOFS: readonly Proof[] = [
  ...CONNECTION,
  ...PRESSURE,
  ...CAPACITY,
  ...TEST,
  ...CANADIAN_TEST,
].flat();
