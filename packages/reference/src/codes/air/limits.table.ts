/** What the air line is held against: the sections as they print their figures. */
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
const heat = saying('heat-rate');
const pull = saying('pressure-difference');

const US = { editions: ['IFGC 2015'] };
const CANADA = { editions: ['B149.1-20'] };
const BOTH = { editions: ['IFGC 2015', 'B149.1-20'] };

const SUPPLY: readonly (readonly Proof[])[] = [
  proofs('air.combustion-air', [atLeast('heater.air-share', 1)], US),
  proofs('air.supply-opening', [atLeast('heater.supply-opening-share', 1)], CANADA),
  proofs('air.high-opening', [atLeast('heater.high-opening-share', 1)], CANADA),
  // 304.5.3.1: within 12 in of the floor and of the ceiling; no side under 3 in.
  proofs('air.opening-low', [atMost('heater.opening-low-floor', length('12 in'))], { ...US, guard: 0 }),
  proofs('air.opening-high', [atMost('heater.opening-high-ceiling', length('12 in'))], { ...US, guard: 0 }),
  proofs('air.opening-side', [atLeast('heater.opening-least-side', length('3 in'))], US),
  // Common practice, no source: 5 Pa for a draught, 25 Pa for a sealed vent with a fan.
  proofs('air.room-pull', [
    ...['outdoor', 'atmospheric', 'fan-assisted'].map((venting) =>
      atMost('heater.room-pull', pull('5 Pa'), { also: { 'heater.venting': venting } }),
    ),
    atMost('heater.room-pull', pull('25 Pa'), { also: { 'heater.venting': 'condensing' } }),
  ]),
  proofs('air.no-chemicals', words('heater.chemicals-stored', { meets: ['no'], fails: ['yes'] })),
];

const vent = { 'heater.input': heat('250 kBtu/h') } as const;

const VENT: readonly (readonly Proof[])[] = [
  proofs(
    'air.vent-carries',
    [
      ...['table', 'beyond', 'not allowed'].map((reach) =>
        atLeast('heater.vent-most', heat('250 kBtu/h'), { also: { ...vent, 'heater.vent-reach': reach } }),
      ),
      answer(
        { ...vent, 'heater.vent-most': 0, 'heater.vent-reach': 'not allowed' },
        'fails',
        'vent-not-allowed',
      ),
      answer(
        { ...vent, 'heater.vent-most': heat('300 kBtu/h'), 'heater.vent-reach': 'beyond' },
        'meets',
        'beyond-vent-tables',
      ),
    ],
    BOTH,
  ),
  proofs(
    'air.vent-stays-dry',
    [
      atLeast('heater.input-at-site', heat('40 kBtu/h'), {
        also: { 'heater.vent-least': heat('40 kBtu/h') },
      }),
      answer({ 'heater.input-at-site': heat('1 kBtu/h'), 'heater.vent-least': 0 }, 'does not apply'),
    ],
    BOTH,
  ),
  proofs(
    'air.common-vent-carries',
    [
      atLeast('heater.common-most', heat('500 kBtu/h'), {
        also: { 'heater.common-input': heat('500 kBtu/h') },
      }),
    ],
    BOTH,
  ),
  // 503.6.5: 5 ft above the draught hood or flue collar.
  proofs('air.vent-high', [atLeast('heater.vent-height', length('5 ft'))], US),
  proofs(
    'air.cap-over-roof',
    [
      atLeast('heater.cap-over-roof', length('1 ft 3 in'), {
        also: { 'heater.cap-least': length('1 ft 3 in') },
      }),
    ],
    US,
  ),
  proofs('air.vent-suits', suits()),
];

/** Which pipe bears which venting; the instructions of heaters and of pipe. */
function suits(): readonly Case[] {
  const open = ['type B', 'type B with single-wall connector', 'corrugated liner'];
  const hoods = ['single wall', 'masonry chimney'];
  return [
    ...kinds('condensing', { meets: ['sealed'], fails: [...open, ...hoods] }),
    ...kinds('fan-assisted', { meets: [...open, 'sealed'], fails: hoods }),
    ...kinds('outdoor', { meets: [...open, 'sealed'], fails: hoods }),
    ...kinds('atmospheric', { meets: [...open, ...hoods, 'sealed'], fails: [] }),
  ];
}

function kinds(
  venting: string,
  answers: { meets: readonly string[]; fails: readonly string[] },
): readonly Case[] {
  return words('heater.vent-kind', answers, { 'heater.venting': venting });
}

function ends(terminal: string, input: string, over: string): Facts {
  return {
    'heater.terminal': terminal,
    'heater.input': heat(input),
    'heater.terminal-over-opening': length(over),
  };
}

/** Beside the opening: distance, by where the gas leaves and the input. */
function beside(limit: string, terminal: string, input: string): Case {
  return atLeast('heater.opening-distance', length(limit), { also: ends(terminal, input, '0 ft') });
}

const ROOF = answer(
  { ...ends('above the roof', '250 kBtu/h', '0 ft'), 'heater.opening-distance': length('1 in') },
  'does not apply',
);

/** 503.8: 4 ft below or beside, 1 ft above; direct vents 6 in to 10,000, 9 in to 50,000, 12 in over 50,000 Btu/h. */
const US_OPENINGS: readonly Case[] = [
  beside('4 ft', 'outdoors', '250 kBtu/h'),
  beside('4 ft', 'through the wall', '250 kBtu/h'),
  beside('6 in', 'direct vent', '10 kBtu/h'),
  beside('9 in', 'direct vent', '10.01 kBtu/h'),
  beside('9 in', 'direct vent', '50 kBtu/h'),
  beside('12 in', 'direct vent', '50.01 kBtu/h'),
  ...['outdoors', 'through the wall'].flatMap((terminal) => [
    answer({ ...ends(terminal, '250 kBtu/h', '12 in'), 'heater.opening-distance': length('1 in') }, 'tight'),
    answer({ ...ends(terminal, '250 kBtu/h', '15 in'), 'heater.opening-distance': length('1 in') }, 'meets'),
    answer(
      { ...ends(terminal, '250 kBtu/h', '11.9 in'), 'heater.opening-distance': length('1 in') },
      'fails',
    ),
  ]),
  answer(
    { ...ends('direct vent', '250 kBtu/h', '15 in'), 'heater.opening-distance': length('1 in') },
    'fails',
  ),
  ROOF,
];

/** 8.14.8: 6 in to 10,000, 12 in to 100,000, 3 ft over 100,000 Btu/h; 8.14.10: 10 ft from an outdoor pool heater. */
const CANADIAN_OPENINGS: readonly Case[] = [
  beside('10 ft', 'outdoors', '250 kBtu/h'),
  ...['through the wall', 'direct vent'].flatMap((terminal) => [
    beside('6 in', terminal, '10 kBtu/h'),
    beside('12 in', terminal, '10.01 kBtu/h'),
    beside('12 in', terminal, '100 kBtu/h'),
    beside('3 ft', terminal, '100.01 kBtu/h'),
  ]),
  answer(
    { ...ends('through the wall', '250 kBtu/h', '10 ft'), 'heater.opening-distance': length('1 in') },
    'fails',
  ),
  ROOF,
];

const TERMINALS = ['above the roof', 'through the wall', 'direct vent', 'outdoors'];

/** Distance from a mechanical air inlet, or height over it where that counts. */
function inlet(limit: string, over: string): readonly Case[] {
  return TERMINALS.map((terminal) =>
    atLeast('heater.air-inlet-distance', length(limit), {
      also: { 'heater.terminal': terminal, 'heater.terminal-over-inlet': length(over) },
    }),
  );
}

function overInlet(over: string, verdict: 'tight' | 'meets' | 'fails'): Case {
  const also = { 'heater.terminal': 'above the roof', 'heater.air-inlet-distance': length('1 ft') };
  return answer({ ...also, 'heater.terminal-over-inlet': length(over) }, verdict);
}

const TERMINAL: readonly (readonly Proof[])[] = [
  proofs('air.flue-from-openings', US_OPENINGS, US),
  proofs('air.flue-from-openings', CANADIAN_OPENINGS, CANADA),
  // 503.8: 10 ft away, or 3 ft above.
  proofs(
    'air.flue-from-inlet',
    [
      ...inlet('10 ft', '2.9 ft'),
      overInlet('3 ft', 'tight'),
      overInlet('3.29 ft', 'tight'),
      overInlet('3.31 ft', 'meets'),
      overInlet('2.99 ft', 'fails'),
    ],
    US,
  ),
  proofs('air.flue-from-inlet', [...inlet('6 ft', '0 ft'), overInlet('30 ft', 'fails')], CANADA),
  proofs('air.terminal-over-ground', [atLeast('heater.terminal-height', length('12 in'))], US),
  proofs('air.terminal-over-ground', [atLeast('heater.terminal-height', length('1 ft'))], CANADA),
  proofs(
    'air.terminal-over-walkway',
    [
      atLeast('heater.terminal-height', length('7 ft'), { also: { 'heater.public-walkway': 'yes' } }),
      answer({ 'heater.terminal-height': length('1 ft'), 'heater.public-walkway': 'no' }, 'does not apply'),
    ],
    BOTH,
  ),
];

export const AIR_PROOFS: readonly Proof[] = [...SUPPLY, ...VENT, ...TERMINAL].flat();
