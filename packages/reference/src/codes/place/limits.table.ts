/** What the place line is held against: the sections, or the trade, as they print their figures. */
import {
  answer,
  atLeast,
  atMost,
  type Case,
  type Proof,
  proofs,
  said,
  saying,
  words,
} from '../proof/index.ts';

const length = saying('length');
const sound = saying('sound-level');
const FOOT = length('1 ft');

const CODES = { editions: ['UMC 2012', 'IFGC 2015'] };

const asked = (fact: `face.${string}`, text: string) => ({ also: { [fact]: length(text) } });

const FACES: readonly (readonly Proof[])[] = [
  proofs('place.clearance', [
    atLeast('face.clearance', length('12 in'), asked('face.nameplate-clearance', '12 in')),
    answer({ 'face.clearance': length('1 in'), 'face.nameplate-clearance': 0 }, 'does not apply'),
  ]),
  // Common practice, no source: 36 in above, 24 in in front, 12 in on the water side, 6 in behind and on the far side.
  proofs('place.usual-clearance', [
    ...['36 in', '24 in', '12 in', '6 in'].map((text) =>
      atLeast('face.clearance', length(text), asked('face.usual-clearance', text)),
    ),
    answer({ 'face.clearance': length('1 in'), 'face.usual-clearance': 0 }, 'does not apply'),
  ]),
  // 922.2(3): 12 in at the sides and the back of an unlisted heater.
  proofs(
    'place.unlisted-clearance',
    [
      atLeast('face.clearance', length('12 in'), { also: { 'face.listed': 'no' } }),
      answer({ 'face.clearance': length('1 in'), 'face.listed': 'yes' }, 'does not apply'),
    ],
    { editions: ['UMC 2012'] },
  ),
];

const DISTANCES: readonly (readonly Proof[])[] = [
  // 7.25: 450 mm.
  proofs('place.property-line', [atLeast('heater.property-line-distance', length('450 mm'))], {
    editions: ['B149.1-20'],
  }),
  proofs('place.setback', [
    atLeast('heater.property-line-distance', length('5 ft'), { also: { 'heater.setback': length('5 ft') } }),
    answer({ 'heater.property-line-distance': length('1 in'), 'heater.setback': 0 }, 'does not apply'),
  ]),
  // Common practice, no source: 24 in to an air conditioner, 5 ft to the water.
  proofs('place.air-conditioner', [atLeast('heater.air-conditioner-distance', length('24 in'))]),
  proofs('place.water-edge', [atLeast('heater.water-edge-distance', length('5 ft'))]),
  // 3 ft of natural gas, 5 ft of propane. From memory.
  proofs('place.regulator-vent', [
    atLeast('heater.regulator-vent-distance', length('3 ft'), { also: { 'heater.fuel': 'natural' } }),
    atLeast('heater.regulator-vent-distance', length('5 ft'), { also: { 'heater.fuel': 'propane' } }),
  ]),
  // 8.14.8: 3 ft from any regulator's vent.
  proofs(
    'place.regulator-vent',
    ['natural', 'propane'].map((fuel) =>
      atLeast('heater.regulator-vent-distance', length('3 ft'), { also: { 'heater.fuel': fuel } }),
    ),
    { editions: ['B149.1-20'] },
  ),
  // 110.26(A)(1): 3 ft. Table 6.3.4.3: 10 ft. Both from memory.
  proofs('place.electrical-space', [atLeast('heater.electrical-distance', length('3 ft'))], {
    editions: ['NEC 2011'],
  }),
  proofs('place.propane-tank', [atLeast('heater.tank-distance', length('10 ft'))]),
];

const yesNo = { meets: ['no'], fails: ['yes'] };

const STANDING: readonly (readonly Proof[])[] = [
  proofs(
    'place.pad',
    words('heater.pad', { meets: ['concrete', 'pavers', 'noncombustible floor'], fails: ['none'] }),
  ),
  // 904.3.1.1, 305.7: 3 in; 304.1: 30 in.
  proofs('place.base-height', [atLeast('heater.ground-height', length('3 in'))], CODES),
  proofs('place.service-room', [atLeast('heater.service-room', length('30 in'))], CODES),
  proofs('place.not-under-deck', words('heater.under-structure', yesNo), { editions: ['any', 'B149.1-20'] }),
  proofs('place.hot-surfaces', words('heater.hot-surfaces-guarded', { meets: ['yes'], fails: ['no'] }), {
    editions: ['any', 'UMC 2012'],
  }),
  proofs('place.sprinkler', words('heater.sprinkler', yesNo)),
  proofs('place.walkway', words('heater.on-walkway', yesNo)),
  // 305.3: 18 in above a garage floor.
  proofs('place.ignition-height', [atLeast('heater.garage-height', length('18 in'))], {
    editions: ['IFGC 2015'],
  }),
  // Common practice, no source: a quarter turn.
  proofs(
    'place.connections-face',
    [
      atMost('heater.connections-angle', said('angle', '90 deg'), {
        also: { 'heater.connections-way': 'header' },
      }),
      answer(
        { 'heater.connections-angle': said('angle', '45 deg'), 'heater.connections-way': 'as it stands' },
        'meets',
        '',
      ),
      ...Object.entries({
        header: 'face-by-header',
        turn: 'face-by-turn',
        'header and turn': 'face-by-header-and-turn',
        none: 'face-not-here',
      }).map(([way, reason]) =>
        answer(
          { 'heater.connections-angle': said('angle', '170 deg'), 'heater.connections-way': way },
          'fails',
          reason,
        ),
      ),
    ],
    { guard: 0 },
  ),
];

const drift = { 'heater.snow-depth': length('3 ft'), 'heater.height': length('3 ft') } as const;

const WEATHER: readonly (readonly Proof[])[] = [
  // At or above the design flood; a foot is the whole margin.
  proofs(
    'place.above-flood',
    ['2 ft', '0 ft'].map((text) =>
      atLeast('heater.base-height', length(text), {
        also: { 'heater.flood-level': length(text) },
        yardstick: FOOT,
      }),
    ),
    { guard: 0 },
  ),
  // Common practice, no source: the top a foot out of the deepest snow.
  proofs('place.above-snow', [
    atLeast((top) => ({ ...drift, 'heater.base-height': top - length('3 ft') }), length('4 ft'), {
      yardstick: FOOT,
    }),
    answer({ ...drift, 'heater.base-height': 0, 'heater.snow-depth': 0 }, 'does not apply'),
  ]),
  proofs('place.stands-in-wind', [atLeast('heater.standing-share', 1)]),
  // 10 dB, heard as twice as loud, is the whole margin.
  proofs('place.noise', [
    atMost('heater.sound-at-line', sound('55 dB'), {
      also: { 'heater.sound-limit': sound('55 dB') },
      yardstick: 10,
    }),
  ]),
];

/** Finned tubes under a roof, 7.25; asked of nothing else. */
function finnedIndoors(fact: 'heater.own-enclosure' | 'heater.yearly-service'): readonly Case[] {
  const finned = { 'heater.exchanger': 'finned tube' } as const;
  return [
    ...['shed', 'room', 'garage'].flatMap((where) =>
      words(fact, { meets: ['yes'], fails: ['no'] }, { ...finned, 'heater.stands': where }),
    ),
    answer({ 'heater.stands': 'outdoors', ...finned, [fact]: 'no' }, 'does not apply'),
    answer({ 'heater.stands': 'room', 'heater.exchanger': 'other', [fact]: 'no' }, 'does not apply'),
    answer({ 'heater.stands': 'room', [fact]: 'yes' }, 'unknown'),
    answer({ 'heater.stands': 'room', ...finned }, 'unknown'),
    answer({ 'heater.stands': 'outdoors' }, 'does not apply'),
  ];
}

const CANADA = { editions: ['B149.1-20'] };

const THING: readonly (readonly Proof[])[] = [
  proofs('place.listed', words('heater.listed', { meets: ['yes'], fails: ['no'] }), {
    editions: ['ISPSC 2021', 'B149.1-20'],
  }),
  // 316.4.2: at pools of more than one household.
  proofs(
    'place.controls-barred',
    [
      ...words('heater.controls-barred', { meets: ['yes'], fails: ['no'] }, { 'job.single-family': 'no' }),
      answer({ 'job.single-family': 'no' }, 'unknown'),
      answer({ 'job.single-family': 'yes' }, 'does not apply'),
      answer({ 'job.single-family': 'yes', 'heater.controls-barred': 'no' }, 'does not apply'),
    ],
    { editions: ['ISPSC 2021'] },
  ),
  proofs('place.finned-tube-enclosure', finnedIndoors('heater.own-enclosure'), CANADA),
  proofs('place.yearly-service', finnedIndoors('heater.yearly-service'), CANADA),
  proofs(
    'place.wall-mounted',
    [
      ...words('heater.wall-mounting', { meets: ['fastened'], fails: ['loose'] }),
      answer({ 'heater.wall-mounting': 'not on a wall' }, 'does not apply'),
    ],
    CANADA,
  ),
];

export const PLACE_PROOFS: readonly Proof[] = [
  ...FACES,
  ...DISTANCES,
  ...STANDING,
  ...WEATHER,
  ...THING,
].flat();
