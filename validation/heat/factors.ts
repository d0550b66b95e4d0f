/** Factors and small constants of the pool balance, carried from their sources. */
import { heat } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

/** Use, factor of 2011 and since, factor of 1999 to 2007; as printed or recalled. */
const RECALLED = [
  ['unoccupied', 0.5, 0.5],
  ['residential', 0.5, 0.5],
  ['condominium', undefined, 0.65],
  ['therapy', 0.65, 0.65],
  ['swim-meet', 0.65, undefined],
  ['school', 0.8, 1],
  ['public', 1, 1],
  ['whirlpool', 1, 1],
  ['wave', 1.5, 1.5],
] as const;

const carried = (use: heat.PoolUse): heat.ActivityFactor => heat.ACTIVITY_FACTORS[use];
const HANDBOOK = {
  area: 'heat',
  document: 'ASHRAE Handbook-HVAC Applications',
  quantity: 'activity factor',
  band: { absolute: 1e-9 },
  bandBecause: 'a carried figure',
} as const;

export const FACTOR_SUITES: readonly Suite[] = [
  {
    ...HANDBOOK,
    id: 'heat/activity-read',
    carried: true,
    kind: 'published',
    at: '2011 chapter 5, Table 2, rows seen in a public copy',
    cases: [
      { id: 'elderly swim', published: 0.65, computed: () => carried('elderly-swim').factor ?? Number.NaN },
      { id: 'fitness club', published: 0.65, computed: () => carried('fitness').factor ?? Number.NaN },
      { id: 'hotel', published: 0.8, computed: () => carried('hotel').factor ?? Number.NaN },
    ],
  },
  {
    ...HANDBOOK,
    id: 'heat/activity-recalled',
    kind: 'practice',
    at: '2011 and 1999 to 2007 tables, from memory',
    cases: RECALLED.flatMap(([use, now, before]) => [
      ...(now === undefined
        ? []
        : [{ id: `${use}, 2011`, published: now, computed: () => carried(use).factor ?? Number.NaN }]),
      ...(before === undefined
        ? []
        : [{ id: `${use}, 1999`, published: before, computed: () => carried(use).earlier ?? Number.NaN }]),
    ]),
  },
  {
    id: 'heat/swimmers',
    carried: true,
    area: 'heat',
    kind: 'published',
    document: 'Smith, Löf and Jones (1998), ASHRAE Transactions 104(1A) 4146',
    at: 'abstract: active over quiet',
    quantity: 'ratio',
    band: { absolute: 1e-9 },
    bandBecause: 'a carried figure',
    cases: [
      { id: 'few swimmers', published: 1.4, computed: () => heat.SWIMMERS_FACTOR.few },
      { id: 'many swimmers', published: 1.7, computed: () => heat.SWIMMERS_FACTOR.many },
    ],
  },
  {
    id: 'heat/bowen',
    area: 'heat',
    kind: 'practice',
    document: 'Bowen (1926)',
    at: 'γ at sea level, from memory',
    quantity: 'Pa/K',
    band: { absolute: 0.05 },
    bandBecause: 'half of the last digit',
    cases: [{ id: '101,325 Pa', published: 61.8, computed: () => heat.BOWEN_CONSTANT * 101_325 }],
  },
];
