/** Insolation of the places on board against an older table of the same network, recalled. */
import type { Suite } from '../suite.ts';
import { MONTH_NAMES, placeOf } from './years.ts';

const ROWS: readonly (readonly [string, readonly number[]])[] = [
  ['miami', [3.5, 4.2, 5.2, 6, 6, 5.6, 5.8, 5.6, 4.9, 4.4, 3.7, 3.3]],
  ['denver', [2.4, 3.3, 4.4, 5.6, 6.2, 6.9, 6.7, 6, 5, 3.8, 2.6, 2.1]],
];

export const REDBOOK_SUITES: readonly Suite[] = [
  {
    id: 'climate/redbook-insolation',
    area: 'climate',
    kind: 'practice',
    document: 'NREL Redbook (NREL/TP-463-5607), 1961-1990',
    at: 'flat horizontal, from memory; Denver is the Boulder station',
    quantity: 'monthly sunshine of the place on board, kWh/m2 a day',
    band: { relative: 0.09 },
    bandBecause: 'the manual states ±9 %',
    cases: ROWS.flatMap(([id, row]) =>
      row.map((published, m) => ({
        id: `${id}-${MONTH_NAMES[m]}`,
        published,
        computed: () => placeOf(id).globalRadiation[m] ?? Number.NaN,
      })),
    ),
    misfits: [
      {
        cases: ['denver-apr'],
        because: 'the typical April of Denver is a dull one, 14 % under the thirty-year mean',
      },
    ],
  },
];
