/** What a degree of set temperature costs, against US DOE's range for all locations. */

import { READ_PLACES } from '../climate/years.ts';
import type { Suite } from '../suite.ts';
import { heatOf, poolYearOf } from './pools.ts';

const season = { from: { month: 5, day: 1 }, to: { month: 9, day: 30 } };

/** Growth of the season's heat for a degree Fahrenheit between 78 and 82, %. */
function perDegree(place: string): number {
  const at = (set: number): number => heatOf(poolYearOf({ place, season, set, coveredHours: 0 }));
  return 100 * ((at(82) / at(78)) ** 0.25 - 1);
}

export const SET_TEMPERATURE_SUITES: readonly Suite[] = [
  {
    id: 'heat-year/doe-degree',
    area: 'heat',
    kind: 'published',
    document: 'US DOE, Managing Swimming Pool Temperature for Energy Efficiency',
    at: 'each 1 °F adds 10 to 30 %, by location, at 78 to 82 °F; held against the middle of the range',
    quantity: 'heat added by 1 °F, May to September, bare pool, %',
    band: { absolute: 10 },
    bandBecause: 'half the width of the printed range',
    cases: READ_PLACES.map((place) => ({
      id: place.id,
      published: 20,
      computed: () => perDegree(place.id),
    })),
    misfits: [
      {
        cases: ['miami'],
        because:
          'a Miami pool needs next to no heat from May to September, and a little more is much of nothing',
      },
      {
        cases: ['san-francisco', 'denver', 'boston'],
        because:
          'where the water stands far above the air all season a degree adds 8 to 10 %, just under the range',
      },
    ],
  },
];
