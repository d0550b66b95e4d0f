/** The rules of moving the heater: part of the place line. */
import { type AnyRule, defineRule } from '../../evaluate/index.ts';

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

export const HANDLING_RULES: readonly AnyRule[] = [liftByPeople];
