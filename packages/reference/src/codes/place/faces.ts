/** The clearance of each face of the heater: of the nameplate first, of the trade where nobody has read that. */
import { defineRule, type Outcome } from '../../evaluate/index.ts';
import { byNameplate, byPractice } from '../known.ts';

/** Divided by what is asked. A face that may stand against a wall asks nothing. */
export function atLeast(required: number, found: number): Outcome {
  if (required === 0) return { sense: 'does-not-apply' };
  return { sense: 'at-least', required, found, kind: 'length', yardstick: required };
}

export const clearance = defineRule({
  id: 'place.clearance',
  line: 'place',
  scope: 'face',
  numbers: { found: 'face.clearance', required: 'face.nameplate-clearance' },
  words: {},
  editions: byNameplate({}),
  check: (n) => atLeast(n.required, n.found),
});

export const usualClearance = defineRule({
  id: 'place.usual-clearance',
  line: 'place',
  scope: 'face',
  numbers: { found: 'face.clearance', required: 'face.usual-clearance' },
  words: {},
  editions: byPractice({}),
  check: (n) => atLeast(n.required, n.found),
});

/** For a heater that bears no listing; asked of the two sides and the back. */
export const unlistedClearance = defineRule({
  id: 'place.unlisted-clearance',
  line: 'place',
  scope: 'face',
  numbers: { found: 'face.clearance' },
  words: { listed: 'face.listed' },
  editions: [
    {
      edition: 'UMC 2012',
      from: '2012-01-01',
      source: {
        document: 'Uniform Mechanical Code 2012',
        at: '922.2(3), NFPA 54-2012 10.21.2(3), read in the 2013 California Mechanical Code',
        known: 'read in a public copy',
      },
      values: { metres: 0.3048 },
    },
  ],
  check: (n, w, values) =>
    w.listed === 'no' ? atLeast(values.metres, n.found) : { sense: 'does-not-apply' },
});
