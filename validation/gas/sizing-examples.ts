/** Worked sizing examples of the American codes, solved whole by the sizing methods. */
import { quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';
import { HALF_INCH_DROP, HIGH_ZONE, LOW_ZONE } from './california-examples.ts';
import { CFH, columns, STEEL_SCHEDULE_40, section, sizeCases, solve } from './sizing-case.ts';

const { INCH_OF_WATER } = quantity;

const EXACT = { band: { absolute: 1e-9 }, bandBecause: 'A trade size is right or wrong.' } as const;

/** Lengths between the sections are not printed; only that outlet A stands 60 ft from the point of delivery. */
const NFPA_C71 = () =>
  solve({
    sections: [
      section('Section 3', 25, 0),
      section('Section 1', 20, 0, { upstream: 'Section 3' }),
      section('Outlet A', 15, 35 * CFH, { upstream: 'Section 1' }),
      section('Outlet B', 10, 75 * CFH, { upstream: 'Section 1' }),
      section('Section 2', 10, 135 * CFH, { upstream: 'Section 3' }),
    ],
    sizes: columns(STEEL_SCHEDULE_40, '1/4'),
    basis: HALF_INCH_DROP,
  });

/** 55 ft to outlet A, read on the 60 ft row; the lengths between are ours. */
const UMC_1316 = () =>
  solve({
    sections: [
      section('Section 3', 20, 0),
      section('Section 2', 15, 0, { upstream: 'Section 3' }),
      section('Section 1', 10, 0, { upstream: 'Section 2' }),
      section('Outlet A', 10, 32 * CFH, { upstream: 'Section 1' }),
      section('Outlet B', 5, 3 * CFH, { upstream: 'Section 1' }),
      section('Outlet C', 5, 59 * CFH, { upstream: 'Section 2' }),
      section('Outlet D', 5, 136 * CFH, { upstream: 'Section 3' }),
    ],
    sizes: columns(STEEL_SCHEDULE_40, '1/2'),
    basis: { ...HALF_INCH_DROP, inletPressure: 8 * INCH_OF_WATER },
  });

function suite(more: Pick<Suite, 'id' | 'document' | 'at' | 'cases'> & Partial<Suite>): Suite {
  return { area: 'gas', kind: 'published', quantity: 'trade size, in', ...EXACT, ...more };
}

/** EHD 18 over 100 ft from the propane table, by gravity. */
const capacityOfA: Case = {
  id: 'A.7.2 capacity of A',
  published: 189,
  computed: () => (HIGH_ZONE().get('A')?.capacity ?? Number.NaN) / CFH,
};

export const SIZING_SUITES: readonly Suite[] = [
  suite({
    id: 'gas/nfpa-54-c71',
    document: 'NFPA 54 (older edition)',
    at: 'Example C.7.1, longest-length method, Schedule 40',
    cases: sizeCases(
      'C.7.1',
      { 'Outlet A': '3/8', 'Outlet B': '3/4', 'Section 1': '3/4', 'Section 2': '3/4', 'Section 3': '1' },
      NFPA_C71,
    ),
  }),
  suite({
    id: 'gas/umc-1316',
    document: 'Uniform-family code section 1316.1.1',
    at: 'longest-length example with demands from the table',
    cases: sizeCases(
      '1316.1.1',
      {
        'Outlet A': '1/2',
        'Section 1': '1/2',
        'Section 2': '3/4',
        'Section 3': '1',
        'Outlet B': '1/2',
        'Outlet C': '1/2',
        'Outlet D': '3/4',
      },
      UMC_1316,
    ),
  }),
  suite({
    id: 'gas/ifgc-a72',
    document: 'International Fuel Gas Code 2018',
    at: 'Example A.7.2, hybrid pressure, corrugated tubing (13 in w.c. in the problem, 10 in the solution; 10 taken)',
    quantity: 'EHD',
    cases: [...sizeCases('A.7.2', { A: '18' }, HIGH_ZONE), ...sizeCases('A.7.2', { B: '13' }, LOW_ZONE)],
  }),
  suite({
    id: 'gas/ifgc-a72-capacity',
    document: 'International Fuel Gas Code 2018',
    at: 'Example A.7.2, capacity of section A in natural gas from the propane table',
    quantity: 'capacity, ft3/h',
    band: { relative: 0.005 },
    bandBecause: 'Three printed digits in either table.',
    cases: [capacityOfA],
  }),
];
