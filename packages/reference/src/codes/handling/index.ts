/** The rules of moving the heater: part of the place line. */
import { type AnyRule, defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPractice } from '../known.ts';

/** Divided by the limit. Where the manual recommends no weight at all there is nothing to divide by. */
const liftByPeople = defineRule({
  id: 'place.lift',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.lift-share', required: 'heater.lift-limit' },
  words: {},
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'NIOSH 94-110, Applications Manual for the Revised NIOSH Lifting Equation',
        at: 'section 1.3, Tables 1 to 7',
        known: 'from memory',
      },
      values: {},
    },
  ],
  check: (n) =>
    n.required === 0
      ? { sense: 'holds', holds: false }
      : { sense: 'at-most', required: n.required, found: n.found, kind: 'mass', yardstick: n.required },
});

/** Hands beside it, an inch each side. Divided by the width needed. */
const BESIDE = 2 * 0.0254;

const wayWide = defineRule({
  id: 'place.way-wide',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.way-width', side: 'heater.narrow-side' },
  words: {},
  guard: 0,
  editions: byPractice({ beside: BESIDE }),
  check: (n, _w, { beside }) => {
    const required = n.side + beside;
    return { sense: 'at-least', required, found: n.found, kind: 'length', yardstick: required };
  },
});

/** Over steps and soft ground nobody carries a heater. */
const wayFirm = defineRule({
  id: 'place.way-firm',
  line: 'place',
  scope: 'heater',
  numbers: {},
  words: { ground: 'heater.way-ground' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.ground === 'firm' }),
});

/** Divided by the weight. */
const equipmentBears = defineRule({
  id: 'place.equipment-bears',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.equipment-load', required: 'heater.mass' },
  words: {},
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'mass',
    yardstick: n.required,
  }),
});

export const HANDLING_RULES: readonly AnyRule[] = [liftByPeople, wayWide, wayFirm, equipmentBears];
