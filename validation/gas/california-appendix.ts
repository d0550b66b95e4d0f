/**
 * 2013 California Residential Code, Appendix A (an excerpt of the International Fuel Gas Code 2012), where it prints
 * what the copies of the 2018 code cut off: the whole of Table A.2.4, bores, and the results of the sizing examples.
 */
import { gas, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';
import { ADDED_BRANCH, BRANCHES_OF_COPPER, HALF_INCH_TREE, LOW_ZONE } from './california-examples.ts';
import { MBH, sizeCases } from './sizing-case.ts';

const { INCH, INCH_OF_WATER, FOOT } = quantity;

const DOCUMENT = '2013 California Residential Code, Appendix A (IFGC 2012)';

/** Rows that the copy of the 2018 table does not show. */
const MULTIPLIERS: Readonly<Record<string, number>> = {
  '0.55': 1.04,
  '0.60': 1,
  '0.65': 0.96,
  '0.70': 0.93,
  '0.75': 0.9,
  '0.80': 0.87,
  '0.85': 0.84,
  '0.90': 0.82,
  '1.40': 0.66,
  '1.50': 0.63,
  '1.60': 0.61,
  '1.70': 0.59,
  '1.80': 0.58,
  '1.90': 0.56,
  '2.00': 0.55,
  '2.10': 0.54,
};

const STEEL = { '1/4': 0.364, '3/8': 0.493, '1/2': 0.622, '3/4': 0.824, '1': 1.049, '1-1/4': 1.38 };
const WIDE = { '1-1/2': 1.61, '2': 2.067, '2-1/2': 2.469, '3': 3.068, '4': 4.026 };
const COPPER_K = { '1/4': 0.305, '3/8': 0.402, '1/2': 0.527, '5/8': 0.652, '3/4': 0.745 };
const WIDE_K = { '1': 0.995, '1-1/4': 1.245, '1-1/2': 1.481, '2': 1.959 };

function bores(pipe: catalog.gas.Pipe, printed: Readonly<Record<string, number>>): Case[] {
  return Object.entries(printed).map(([size, published]) => ({
    id: `${pipe.id} ${size}`,
    published,
    computed: () => (catalog.gas.pipeSize(pipe, size)?.insideDiameter ?? Number.NaN) / INCH,
  }));
}

const runDrop = (feet: number, perHundred: number): number =>
  gas.runDrop.kernel({ drop: perHundred * INCH_OF_WATER, length: feet * FOOT }) / INCH_OF_WATER;

const tabled = (): number =>
  gas.tabledDrop.kernel({
    flow: 110 * MBH,
    flowBelow: 104 * MBH,
    flowAbove: 147 * MBH,
    dropBelow: 0.5,
    dropAbove: 1,
  });

const OUTLET_A = 0.06;

/** Example A.6.6: rows of Table A.3.4 taken as they stand, but for the interpolated 3/4 in of section 1. */
const DROPS: readonly Case[] = [
  { id: 'outlet A, 1/2 in', published: OUTLET_A, computed: () => runDrop(20, 0.3) },
  { id: 'outlet B, 3/4 in', published: 0.045, computed: () => runDrop(15, 0.3) },
  { id: 'section 2, 3/4 in', published: 0.2, computed: () => runDrop(20, 1) },
  { id: 'section 3, 1-1/4 in', published: 0.06, computed: () => runDrop(30, 0.2) },
  {
    id: 'least to the farthest appliance',
    published: 0.14,
    computed: () => runDrop(20, 0.3) + runDrop(10, 0.2) + runDrop(30, 0.2),
  },
  {
    id: 'greatest to the farthest appliance',
    published: 0.42,
    computed: () => runDrop(20, 0.3) + runDrop(10, tabled()) + runDrop(30, 1),
  },
];

function suite(more: Omit<Suite, 'area' | 'kind' | 'document'>): Suite {
  return { area: 'gas', kind: 'published', document: DOCUMENT, ...more };
}

const RIGHT_OR_WRONG = { band: { absolute: 1e-9 }, bandBecause: 'A trade size is right or wrong.' } as const;

export const CALIFORNIA_APPENDIX_SUITES: readonly Suite[] = [
  suite({
    id: 'gas/california-2013-a24',
    at: 'Table A.2.4, rows not shown by the copy of the 2018 code',
    quantity: 'capacity multiplier',
    band: { absolute: 0.0055 },
    bandBecause: 'Two printed decimals, some rounded up.',
    cases: Object.entries(MULTIPLIERS).map(([gravity, published]) => ({
      id: gravity,
      published,
      computed: () => gas.gravityMultiplier.kernel({ specificGravity: Number(gravity) }),
    })),
    misfits: [
      { cases: ['0.75'], because: 'Printed 0.90 for √(0.60/0.75) = 0.894, rounded up past the half.' },
    ],
  }),
  suite({
    id: 'gas/california-2013-bores',
    carried: true,
    at: 'Tables A.5.1 and A.5.2: Schedule 40 and copper type K, as carried',
    quantity: 'inside diameter, in',
    band: { absolute: 1e-9 },
    bandBecause: 'The same figures.',
    cases: [
      ...bores(catalog.gas.STEEL_SCHEDULE_40, { ...STEEL, ...WIDE }),
      ...bores(catalog.gas.COPPER_TUBE, { ...COPPER_K, ...WIDE_K }),
    ],
  }),
  suite({
    id: 'gas/california-2013-steel-example',
    at: 'Examples A.6.1 (longest length, Schedule 40) and A.6.3 (branch length, copper)',
    quantity: 'trade size, in',
    ...RIGHT_OR_WRONG,
    cases: [
      ...sizeCases(
        'A.6.1',
        { 'Outlet A': '1/2', 'Outlet B': '3/4', 'Section 1': '3/4', 'Section 2': '3/4', 'Section 3': '1' },
        HALF_INCH_TREE,
      ),
      ...sizeCases('A.6.3', { A: '1', B: '1/2', C: '3/8', D: '3/8', E: '1/2' }, BRANCHES_OF_COPPER),
    ],
  }),
  suite({
    id: 'gas/california-2013-tubing-examples',
    at: 'Examples A.6.2, sections C and D, and A.6.4, section G: corrugated tubing',
    quantity: 'EHD',
    ...RIGHT_OR_WRONG,
    cases: [
      ...sizeCases('A.6.2', { C: '13', D: '13' }, LOW_ZONE),
      ...sizeCases('A.6.4', { G: '18' }, ADDED_BRANCH),
    ],
  }),
  suite({
    id: 'gas/california-2013-drops',
    at: 'Example A.6.6, drop each 100 ft',
    quantity: 'drop, in w.c.',
    band: { absolute: 0.0051 },
    bandBecause: 'Two printed decimals.',
    cases: DROPS,
  }),
  suite({
    id: 'gas/california-2013-scaling',
    at: 'A.3.4, 147·√(2/1) = 208',
    quantity: 'capacity, kBtu/h',
    band: { absolute: 0.5 },
    bandBecause: 'Whole thousands.',
    cases: [
      {
        id: '3/4 in at 2 in',
        published: 208,
        computed: () => gas.scaledCapacity.kernel({ tableFlow: 147, tableDrop: 1, drop: 2 }),
      },
    ],
  }),
];
