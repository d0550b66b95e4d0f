/** The method of pressure drop each 100 ft: the table against the code's equation, and two worked examples. */
import { gas, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Suite } from '../suite.ts';
import { HUNDRED_FOOT_ROWS, HUNDRED_FOOT_SIZES } from './data/michigan-2015-hundred-foot.ts';
import { MBH } from './sizing-case.ts';

const { FOOT, INCH_OF_WATER } = quantity;
const perKiloBtu = MBH / gas.NATURAL_GAS.heatingValue;

function byEquation(size: string, drop: number): number {
  const pipe = catalog.gas.pipeSize(catalog.gas.STEEL_SCHEDULE_40, size);
  const flow = gas.lowPressureFlow.kernel({
    insideDiameter: pipe?.insideDiameter ?? Number.NaN,
    length: 100 * FOOT,
    pressureDrop: drop * INCH_OF_WATER,
    cr: gas.SIZING_FACTORS.natural.cr,
  });
  return flow / perKiloBtu;
}

const TABLE_SUITE: Suite = {
  id: 'gas/michigan-2015-hundred-foot',
  area: 'gas',
  kind: 'estimate',
  document: 'Michigan Residential Code 2015',
  at: 'Appendix A.3.4, table of capacities for a drop each 100 ft, rows to 1.0 in w.c.',
  quantity: 'capacity, kBtu/h',
  band: { relative: 0.038 },
  bandBecause:
    'The table follows a square root of the drop from its middle rows, the equation a power of 0.541: 3.7 % apart at its end.',
  cases: Object.entries(HUNDRED_FOOT_ROWS).flatMap(([drop, capacities]) =>
    HUNDRED_FOOT_SIZES.map((size, column) => ({
      id: `${drop} in ${size}`,
      published: capacities[column] ?? Number.NaN,
      computed: () => byEquation(size, Number(drop)),
    })),
  ),
};

/** 3/4 in: 104 kBtu/h at 0.5 and 147 at 1.0 in w.c. each 100 ft; the load is 110. */
const tabled = (): number =>
  gas.tabledDrop.kernel({
    flow: 110 * perKiloBtu,
    flowBelow: 104 * perKiloBtu,
    flowAbove: 147 * perKiloBtu,
    dropBelow: 0.5 * INCH_OF_WATER,
    dropAbove: INCH_OF_WATER,
  });

const tenFeet = (drop: number): number => gas.runDrop.kernel({ drop, length: 10 * FOOT }) / INCH_OF_WATER;

const EXAMPLE_SUITE: Suite = {
  id: 'gas/california-2010-hundred-foot',
  area: 'gas',
  kind: 'published',
  document: 'California code 2010',
  at: 'A.7.6, 110 kBtu/h over 10 ft, two candidate sizes',
  quantity: 'drop, in w.c.',
  band: { absolute: 0.0051 },
  bandBecause: 'Two printed decimals.',
  cases: [
    { id: '1 in', published: 0.02, computed: () => tenFeet(0.2 * INCH_OF_WATER) },
    { id: '3/4 in', published: 0.06, computed: () => tenFeet(tabled()) },
    { id: '3/4 in each 100 ft', published: 0.57, computed: () => tabled() / INCH_OF_WATER },
  ],
};

export const HUNDRED_FOOT_SUITES: readonly Suite[] = [TABLE_SUITE, EXAMPLE_SUITE];
