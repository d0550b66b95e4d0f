/** What the heater stands on and under, and what it has to withstand there. */
import { type Because, defineRule } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';
import { atLeast } from './faces.ts';

export const pad = defineRule({
  id: 'place.pad',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { pad: 'heater.pad' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.pad !== 'none' }),
});

/** Divided by the height asked. */
export const baseHeight = defineRule({
  id: 'place.base-height',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.ground-height' },
  words: {},
  editions: [
    {
      edition: 'UMC 2012',
      from: '2012-01-01',
      source: {
        document: 'Uniform Mechanical Code 2012',
        at: '904.3.1.1, read in the 2013 California Mechanical Code',
        known: 'read in a public copy',
      },
      values: { metres: 0.0762 },
    },
    {
      edition: 'IFGC 2015',
      from: '2014-05-30',
      source: { document: 'International Fuel Gas Code', at: '305.7', known: 'from memory' },
      values: { metres: 0.0762 },
    },
  ],
  check: (n, _w, values) => atLeast(values.metres, n.found),
});

export const notUnderDeck = defineRule({
  id: 'place.not-under-deck',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { under: 'heater.under-structure' },
  editions: [
    ...byPractice({}),
    {
      edition: 'B149.1-20',
      from: '2020-01-01',
      source: {
        document: 'CSA B149.1',
        at: '7.25, not under any structure, decks too, as quoted in a trade article',
        known: 'read in a public copy',
      },
      values: {},
    },
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.under === 'no' }),
});

/** Level room to work in before the side it is serviced from, 30 in by 30 in. Divided by its depth. */
export const serviceRoom = defineRule({
  id: 'place.service-room',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.service-room' },
  words: {},
  editions: [
    {
      edition: 'UMC 2012',
      from: '2012-01-01',
      source: {
        document: 'Uniform Mechanical Code 2012',
        at: '304.1, NFPA 54-2012 9.5.2, read in the 2013 California Mechanical Code',
        known: 'read in a public copy',
      },
      values: { metres: 0.762 },
    },
    {
      edition: 'IFGC 2015',
      from: '2014-05-30',
      source: { document: 'International Fuel Gas Code', at: 'section 306', known: 'from memory' },
      values: { metres: 0.762 },
    },
  ],
  check: (n, _w, values) => atLeast(values.metres, n.found),
});

export const notTouched = defineRule({
  id: 'place.hot-surfaces',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { guarded: 'heater.hot-surfaces-guarded' },
  editions: [
    ...byPractice({}),
    {
      edition: 'UMC 2012',
      from: '2012-01-01',
      source: {
        document: 'Uniform Mechanical Code 2012',
        at: '922.1, NFPA 54-2012 10.21.1, read in the 2013 California Mechanical Code',
        known: 'read in a public copy',
      },
      values: {},
    },
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.guarded === 'yes' }),
});

export const outOfSprinkler = defineRule({
  id: 'place.sprinkler',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { wetted: 'heater.sprinkler' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.wetted === 'no' }),
});

/** Asked where the plan shows a walkway. */
export const walkwayFree = defineRule({
  id: 'place.walkway',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { on: 'heater.on-walkway' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.on === 'no' }),
});

/** Above the floor of a garage, where fuel vapour lies. The foot of the heater stands for its flame, on the safe side. */
export const ignitionHeight = defineRule({
  id: 'place.ignition-height',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.garage-height' },
  words: {},
  editions: [
    {
      edition: 'IFGC 2015',
      from: '2014-05-30',
      source: {
        document: 'International Fuel Gas Code',
        at: '305.3; NFPA 54 9.1.10',
        known: 'from memory',
      },
      values: { metres: 0.4572 },
    },
  ],
  check: (n, _w, values) => atLeast(values.metres, n.found),
});

/** A quarter turn looks past it at most. */
const QUARTER_TURN = Math.PI / 2;

/** Asked where the plan shows pump and heater. Divided by the limit. */
export const connectionsFace = defineRule({
  id: 'place.connections-face',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.connections-angle' },
  words: { way: 'heater.connections-way' },
  guard: 0,
  editions: byPractice({ angle: QUARTER_TURN }),
  check: (n, w, values) => ({
    sense: 'at-most',
    required: values.angle,
    found: n.found,
    kind: 'angle',
    yardstick: values.angle,
    ...(n.found > values.angle ? { because: facingReason(w.way) } : {}),
  }),
});

/** What turning them would take. */
function facingReason(way: string): Because {
  if (way === 'header') return { reason: 'face-by-header' };
  if (way === 'turn') return { reason: 'face-by-turn' };
  return { reason: way === 'none' ? 'face-not-here' : 'face-by-header-and-turn' };
}
