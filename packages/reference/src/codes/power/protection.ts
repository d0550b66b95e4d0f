/** What keeps a fault from reaching a person in the water. */
import { defineRule } from '../../evaluate/index.ts';

export const groundFault = defineRule({
  id: 'power.ground-fault',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { protected: 'heater.gfci' },
  editions: [
    {
      edition: 'NEC 2017',
      from: '2016-08-24',
      source: {
        document: 'National Electrical Code 2017',
        at: '680.28, gas-fired pool heaters above the low-voltage contact limit',
        known: 'read in a public copy',
      },
      values: {},
    },
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.protected === 'yes' }),
});

export const disconnectInSight = defineRule({
  id: 'power.disconnect-in-sight',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { seen: 'heater.disconnect-in-sight' },
  editions: [
    {
      edition: 'NEC 2011',
      from: '2010-08-25',
      source: {
        document: 'National Electrical Code 2011',
        at: '680.12, read in the 2013 California Electrical Code',
        known: 'read in a public copy',
      },
      values: {},
    },
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.seen === 'yes' }),
});

export const bonded = defineRule({
  id: 'power.bonded',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { bonded: 'heater.bonded' },
  editions: [
    {
      edition: 'NEC 2011',
      from: '2010-08-25',
      source: {
        document: 'National Electrical Code 2011',
        at: '680.26(B), 8 AWG solid copper, read in the 2013 California Electrical Code',
        known: 'read in a public copy',
      },
      values: {},
    },
    {
      edition: 'C22.1-21',
      from: '2021-03-01',
      source: {
        document: 'Canadian Electrical Code, C22.1',
        at: 'rule 68-058, 6 AWG copper, as quoted in a trade article',
        known: 'read in a public copy',
      },
      values: {},
    },
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.bonded === 'yes' }),
});
