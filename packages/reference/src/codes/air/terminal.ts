/** Where the flue gas leaves, against what it must not reach. Divided by the distance asked for. */
import { quantity } from '@firstfire/engine';
import { defineRule, type Outcome, reaches } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';
import { b149, FOOT, INCH, ifgc } from './codes.ts';

const { BTU, HOUR } = quantity;
const thousandBtu = (input: number): number => (input * 1000 * BTU) / HOUR;
const ANY = Number.POSITIVE_INFINITY;

/** Up to this input, this distance. */
type BySize = readonly (readonly [input: number, metres: number])[];

interface FromOpenings {
  /** By where it leaves. */
  readonly outdoors: BySize;
  readonly 'through the wall': BySize;
  readonly 'direct vent': BySize;
  /** So far above the opening no distance beside it is asked for; only for a fan's terminal. */
  readonly above?: number;
}

const US_OPENINGS: FromOpenings = {
  outdoors: [[ANY, 4 * FOOT]],
  'through the wall': [[ANY, 4 * FOOT]],
  'direct vent': [
    [thousandBtu(10), 6 * INCH],
    [thousandBtu(50), 9 * INCH],
    [ANY, 12 * INCH],
  ],
  above: 1 * FOOT,
};

const CANADIAN_WALL: BySize = [
  [thousandBtu(10), 6 * INCH],
  [thousandBtu(100), 12 * INCH],
  [ANY, 3 * FOOT],
];

const CANADIAN_OPENINGS: FromOpenings = {
  outdoors: [[ANY, 10 * FOOT]],
  'through the wall': CANADIAN_WALL,
  'direct vent': CANADIAN_WALL,
};

function atLeast(found: number, required: number): Outcome {
  return { sense: 'at-least', required, found, kind: 'length', yardstick: required };
}

export const flueFromOpenings = defineRule({
  id: 'air.flue-from-openings',
  line: 'air',
  scope: 'heater',
  numbers: {
    found: 'heater.opening-distance',
    over: 'heater.terminal-over-opening',
    input: 'heater.input',
  },
  words: { terminal: 'heater.terminal' },
  editions: [
    ifgc('503.8, 4 ft below or beside, 1 ft above; read as NFPA 54-2012 12.9', US_OPENINGS),
    b149('8.14.8 and, for an outdoor pool heater, 8.14.10; as quoted in trade articles', CANADIAN_OPENINGS),
  ],
  check: (n, w, values) => {
    const bySize = sizesOf(values, w.terminal);
    const required = bySize?.find(([input]) => reaches(input, n.input))?.[1];
    if (required === undefined) return { sense: 'does-not-apply' };
    const { above } = values;
    const fan = w.terminal !== 'direct vent';
    if (fan && above !== undefined && reaches(n.over, above)) return atLeast(n.over, above);
    return atLeast(n.found, required);
  },
});

function sizesOf(values: FromOpenings, terminal: string): BySize | undefined {
  if (terminal === 'outdoors' || terminal === 'through the wall' || terminal === 'direct vent')
    return values[terminal];
  return undefined;
}

export const terminalOverGround = defineRule({
  id: 'air.terminal-over-ground',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.terminal-height' },
  words: {},
  editions: [
    ifgc('503.8, read as NFPA 54-2012 12.9', { metres: 12 * INCH }),
    b149('8.14.8, as quoted in a trade article', { metres: 1 * FOOT }),
  ],
  check: (n, _w, { metres }) => atLeast(n.found, metres),
});

export const terminalOverWalkway = defineRule({
  id: 'air.terminal-over-walkway',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.terminal-height' },
  words: { walkway: 'heater.public-walkway' },
  editions: [
    ifgc('503.3.3, read as NFPA 54-2012 12.4.3.6', { metres: 7 * FOOT }),
    b149('8.14.8, as quoted in a trade article', { metres: 7 * FOOT }),
  ],
  check: (n, w, { metres }) => (w.walkway === 'no' ? { sense: 'does-not-apply' } : atLeast(n.found, metres)),
});

/** Far enough away, or far enough above where the edition counts that. */
export const flueFromInlet = defineRule({
  id: 'air.flue-from-inlet',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.air-inlet-distance', over: 'heater.terminal-over-inlet' },
  words: { terminal: 'heater.terminal' },
  editions: [
    ifgc('503.6.7 and 503.8, read as NFPA 54-2012 12.7.2(7) and 12.9.1', {
      metres: 10 * FOOT,
      above: 3 * FOOT,
    }),
    b149('8.14.8, as quoted in a trade article', { metres: 6 * FOOT, above: ANY }),
  ],
  check: (n, _w, { metres, above }) =>
    reaches(n.over, above) ? atLeast(n.over, above) : atLeast(n.found, metres),
});

export const capOverRoof = defineRule({
  id: 'air.cap-over-roof',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.cap-over-roof', required: 'heater.cap-least' },
  words: {},
  editions: [ifgc('503.6.4 and its figure, read as NFPA 54-2012 12.7.2', {})],
  check: (n) => atLeast(n.found, n.required),
});

/** From what hangs over it, where flue gas would gather. */
export const terminalUnderSoffit = defineRule({
  id: 'air.terminal-under-soffit',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.terminal-soffit' },
  words: {},
  editions: byPractice({ metres: 18 * INCH }),
  check: (n, _w, { metres }) => atLeast(n.found, metres),
});

/** Only where the deck is open on two sides, and not close under it. */
export const terminalUnderDeck = defineRule({
  id: 'air.terminal-under-deck',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.terminal-deck-gap' },
  words: { deck: 'heater.terminal-deck' },
  editions: [b149('8.14.8, as quoted in a trade article', { metres: 1 * FOOT })],
  check: (n, w, { metres }) =>
    w.deck === 'closed in' ? { sense: 'holds', holds: false } : atLeast(n.found, metres),
});

/** Of a terminal in the wall, level, from an opening of the next building. */
export const flueFromNextDoor = defineRule({
  id: 'air.flue-from-next-door',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.adjacent-opening' },
  words: {},
  editions: [ifgc('503.8, read as NFPA 54-2012 12.9.6', { metres: 10 * FOOT })],
  check: (n, _w, { metres }) => atLeast(n.found, metres),
});
