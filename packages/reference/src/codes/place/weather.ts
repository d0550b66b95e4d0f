/** Flood, snow and wind where the heater stands, and what the neighbour hears. */
import { defineRule } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';

/** A height may be zero and so may the limit: a foot, in which flood levels are given, is the yardstick. */
const FOOT = 0.3048;

export const aboveFlood = defineRule({
  id: 'place.above-flood',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.base-height', required: 'heater.flood-level' },
  words: {},
  guard: 0,
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'ASCE/SEI 24-14 and the flood map of the address',
        at: 'chapter 7, equipment at or above the design flood elevation',
        known: 'from memory',
      },
      values: {},
    },
  ],
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'length',
    yardstick: FOOT,
  }),
});

/** The top of the heater, where its flue gas leaves, a foot out of the deepest snow; that foot is the yardstick. */
export const aboveSnow = defineRule({
  id: 'place.above-snow',
  line: 'place',
  scope: 'heater',
  numbers: { base: 'heater.base-height', height: 'heater.height', snow: 'heater.snow-depth' },
  words: {},
  editions: byPractice({ metres: FOOT }),
  check: (n, _w, values) =>
    n.snow === 0
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-least',
          required: n.snow + values.metres,
          found: n.base + n.height,
          kind: 'length',
          yardstick: values.metres,
        },
});

/** What holds it down over what tips it: a share, its own yardstick. Not asked where it is anchored by a listed or engineered way. */
export const standsInWind = defineRule({
  id: 'place.stands-in-wind',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.standing-share' },
  words: {},
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'ASCE/SEI 7-16',
        at: 'sections 2.4.1, 26.10 and 29.4',
        known: 'from memory',
      },
      values: { share: 1 },
    },
  ],
  check: (n, _w, values) => ({
    sense: 'at-least',
    required: values.share,
    found: n.found,
    kind: 'ratio',
    yardstick: values.share,
  }),
});

/** Levels have no true zero that ears know: 10 dB, heard as half as loud, is the yardstick. */
const HALF_AS_LOUD = 10;

export const quietAtLine = defineRule({
  id: 'place.noise',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.sound-at-line', required: 'heater.sound-limit' },
  words: {},
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'noise rules at the address',
        at: 'the limit read there for this job',
        known: 'common practice, no source',
      },
      values: {},
    },
  ],
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'sound-level',
    yardstick: HALF_AS_LOUD,
  }),
});
