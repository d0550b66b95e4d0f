/** The rules of the air line: enough to burn, nothing that fouls it, and a safe way out for the flue gas. */
import { type AnyRule, defineRule } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';

/** A share of what is asked for, so that it is its own yardstick. */
const combustionAir = defineRule({
  id: 'air.combustion-air',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.air-share' },
  words: {},
  editions: [
    {
      edition: 'IFGC 2015',
      from: '2014-05-30',
      source: {
        document: 'International Fuel Gas Code',
        at: '304.5.1 and 304.6.1, read as NFPA 54-2012 9.3',
        known: 'read in a public copy',
      },
      values: {},
    },
  ],
  check: (n) => ({ sense: 'at-least', required: 1, found: n.found, kind: 'ratio', yardstick: 1 }),
});

const noChemicals = defineRule({
  id: 'air.no-chemicals',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { stored: 'heater.chemicals-stored' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.stored === 'no' }),
});

/** Divided by the distance asked for. */
const flueFromOpenings = defineRule({
  id: 'air.flue-from-openings',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.opening-distance' },
  words: {},
  editions: [
    {
      edition: 'IFGC 2015',
      from: '2014-05-30',
      source: {
        document: 'International Fuel Gas Code',
        at: '503.8, 4 ft below or beside an opening',
        known: 'from memory',
      },
      values: { metres: 1.2192 },
    },
    {
      edition: 'B149.1-20',
      from: '2020-01-01',
      source: {
        document: 'CSA B149.1',
        at: '8.14.10, outdoor pool heater, as quoted in a trade article',
        known: 'read in a public copy',
      },
      values: { metres: 3 },
    },
  ],
  check: (n, _w, values) => ({
    sense: 'at-least',
    required: values.metres,
    found: n.found,
    kind: 'length',
    yardstick: values.metres,
  }),
});

export const AIR_RULES: readonly AnyRule[] = [combustionAir, flueFromOpenings, noChemicals];
