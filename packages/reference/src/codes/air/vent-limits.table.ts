/** What the rules of a vent's kind, way and water are held against. */
import { answer, atLeast, atMost, type Proof, proofs, saying, within, words } from '../proof/index.ts';

const length = saying('length');
const flow = saying('volume-flow');
const pull = saying('pressure-difference');

const US = { editions: ['IFGC 2015'] };
const CANADA = { editions: ['B149.1-20'] };
/** Ways up that leak, were they under pressure. */
const OPEN_KINDS = [
  'type B',
  'type B with single-wall connector',
  'single wall',
  'corrugated liner',
  'masonry chimney',
];

const category = (one: string) => ({ 'heater.vent-category': one }) as const;

const SHAPE: readonly (readonly Proof[])[] = [
  // 304.10: screens not finer than 1/4 in.
  proofs(
    'air.screen-mesh',
    [atLeast('heater.screen-mesh', length('1/4 in')), answer({ 'heater.screen-mesh': 0 }, 'does not apply')],
    { ...US, guard: 0 },
  ),
  // 304.6.2: an inch beside and behind, six in front, as a share; B149.1 8.4.2: 6 to 18 in above the floor.
  proofs('air.one-opening-room', [atLeast('heater.one-opening-room', 1)], US),
  proofs(
    'air.opening-low-band',
    [
      within('heater.opening-low-floor', [length('6 in'), length('18 in')], {
        'heater.high-opening-share': 1,
      }),
    ],
    { ...CANADA, guard: 0 },
  ),
  // 304.11, section from memory: an intake 12 in above the ground; a duct of its own that does not fall outwards.
  proofs('air.intake-high', [atLeast('heater.intake-height', length('12 in'))], US),
  proofs('air.duct-alone', words('heater.duct-alone', { meets: ['yes'], fails: ['no'] }), US),
  proofs('air.duct-rises', words('heater.duct-rises', { meets: ['yes'], fails: ['no'] }), US),
  // 304.9: where a fan brings the air, the burners stop with it.
  proofs('air.supply-interlock', words('heater.supply-interlock', { meets: ['yes'], fails: ['no'] }), US),
  // 503.10.7: 1/4 in a foot.
  proofs('air.vent-slope', [atLeast('heater.vent-slope', length('1/4 in') / length('1 ft'))], {
    editions: ['IFGC 2015', 'any'],
    guard: 0,
  }),
  // 503.10.8: 75 per cent of the height for a single wall, 100 per cent for type B.
  proofs(
    'air.connector-length',
    [
      atMost('heater.connector-share', 1, {
        also: { 'heater.vent-kind': 'type B', 'heater.vent-reach': 'beyond' },
      }),
      ...OPEN_KINDS.filter((kind) => kind !== 'type B').flatMap((kind) =>
        ['beyond', 'not tabled', 'not allowed'].map((reach) =>
          atMost('heater.connector-share', 0.75, {
            also: { 'heater.vent-kind': kind, 'heater.vent-reach': reach },
          }),
        ),
      ),
      answer(
        { 'heater.connector-share': 2, 'heater.vent-kind': 'type B', 'heater.vent-reach': 'table' },
        'does not apply',
      ),
    ],
    US,
  ),
  // 503.10.2, from memory: no single wall through a cold space.
  proofs('air.single-wall-warm', words('heater.single-wall-cold', { meets: ['no'], fails: ['yes'] }), {
    editions: ['IFGC 2015', 'any'],
  }),
  // 504.2.8: at most seven times the outlet; 503.6.9.1: between one and seven times.
  proofs('air.vent-not-wide', [atMost('heater.vent-ratio', 7)], US),
  proofs('air.chimney-area', [within('heater.chimney-ratio', [1, 7])], US),
  // A law: a pull beyond the draught turns it round.
  proofs('air.draught-left', [
    atLeast('heater.vent-draught', pull('8 Pa'), { also: { 'heater.room-pull': pull('8 Pa') } }),
    answer({ 'heater.vent-draught': pull('8 Pa'), 'heater.room-pull': 0 }, 'does not apply'),
  ]),
];

const CATEGORY: readonly (readonly Proof[])[] = [
  // Nameplate: I by draught in a vent that may leak, the others in one that is sealed.
  proofs('air.vent-category', [
    ...OPEN_KINDS.map((kind) => answer({ ...category('I'), 'heater.vent-kind': kind }, 'meets')),
    answer({ ...category('I'), 'heater.vent-kind': 'sealed' }, 'fails'),
    ...['II', 'III', 'IV'].flatMap((one) => [
      answer({ ...category(one), 'heater.vent-kind': 'sealed' }, 'meets'),
      ...OPEN_KINDS.map((kind) => answer({ ...category(one), 'heater.vent-kind': kind }, 'fails')),
    ]),
  ]),
  proofs('air.vent-listed', words('heater.vent-listed', { meets: ['yes'], fails: ['no'] })),
  // Common practice, no source: plastics bear acid and no heat, zinc and aluminium neither.
  proofs('air.vent-material', [
    ...['II', 'IV'].flatMap((one) =>
      words(
        'heater.vent-material',
        {
          meets: ['stainless steel', 'polypropylene', 'CPVC', 'PVC'],
          fails: ['aluminium', 'galvanised steel'],
        },
        category(one),
      ),
    ),
    ...words(
      'heater.vent-material',
      {
        meets: ['stainless steel'],
        fails: ['polypropylene', 'CPVC', 'PVC', 'aluminium', 'galvanised steel'],
      },
      category('III'),
    ),
    answer({ ...category('I'), 'heater.vent-material': 'aluminium' }, 'does not apply'),
  ]),
  proofs('air.vent-length', [
    atMost('heater.vent-length', length('60 ft'), {
      also: { 'heater.vent-length-greatest': length('60 ft') },
    }),
  ]),
];

const WATER: readonly (readonly Proof[])[] = [
  proofs(
    'air.condensate-drained',
    words('heater.condensate-drain', { meets: ['by gravity', 'pump'], fails: ['none'] }),
  ),
  proofs('air.condensate-neutral', words('heater.condensate-neutral', { meets: ['yes'], fails: ['no'] })),
  proofs('air.condensate-frost', words('heater.condensate-frost', { meets: ['yes'], fails: ['no'] })),
  proofs('air.condensate-capacity', [
    atLeast('heater.condensate-capacity', flow('0.02 gpm'), {
      also: { 'heater.condensate': flow('0.02 gpm') },
    }),
    answer({ 'heater.condensate-capacity': flow('0.02 gpm'), 'heater.condensate': 0 }, 'does not apply'),
  ]),
  // NFPA 54 12.9.4: categories II and IV not over a public walkway.
  proofs(
    'air.condensate-off-walkway',
    [
      ...['II', 'IV'].flatMap((one) =>
        words('heater.public-walkway', { meets: ['no'], fails: ['yes'] }, category(one)),
      ),
      ...['I', 'III'].map((one) =>
        answer({ ...category(one), 'heater.public-walkway': 'yes' }, 'does not apply'),
      ),
    ],
    US,
  ),
];

const TERMINAL: readonly (readonly Proof[])[] = [
  // Common practice, no source: 18 in.
  proofs('air.terminal-under-soffit', [atLeast('heater.terminal-soffit', length('18 in'))]),
  // 8.14.8: open on two sides and more than a foot clear.
  proofs(
    'air.terminal-under-deck',
    [
      atLeast('heater.terminal-deck-gap', length('1 ft'), {
        also: { 'heater.terminal-deck': 'open on two sides' },
      }),
      answer({ 'heater.terminal-deck-gap': length('20 ft'), 'heater.terminal-deck': 'closed in' }, 'fails'),
    ],
    CANADA,
  ),
  // NFPA 54 12.9.6: 10 ft, level, from an opening of an adjacent building.
  proofs('air.flue-from-next-door', [atLeast('heater.adjacent-opening', length('10 ft'))], US),
];

export const VENT_PROOFS: readonly Proof[] = [...SHAPE, ...CATEGORY, ...WATER, ...TERMINAL].flat();
