/** Worked examples of the vent tables: the code's appendix B, and a training text. */
import { air, evaluate, expectOk, quantity, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { BTU, FOOT, HOUR, INCH } = quantity;
const THOUSAND_BTU_PER_HOUR = (1000 * BTU) / HOUR;
const { ventTables, connectorTables, commonVentTable } = catalog.air;

/** In, ft, ft. */
type Printed = readonly [diameter: number, height: number, offset: number];

function cell(table: air.VentTable | undefined, [diameter, height, offset]: Printed): number {
  if (table === undefined) throw new Error('no such table');
  const point = { diameter: diameter * INCH, height: height * FOOT, offset: offset * FOOT };
  return expectOk(air.ventTableCapacity(table, point)) / THOUSAND_BTU_PER_HOUR;
}

const single = (kind: air.VentKind, at: Printed): number => cell(ventTables(kind, at[0] * INCH).most, at);

/** What is left with more elbows than the row holds. */
const withElbows = (capacity: number, sharp: number): Result<number> => {
  const share = evaluate(air.elbowShare, { sharp, slight: 0, included: 2 });
  return share.ok ? { ok: true, value: capacity * share.value } : share;
};

const common = (mix: catalog.air.FanMix, at: Printed): number => cell(commonVentTable(mix, at[0] * INCH), at);
const LINER = 0.8;

/** The smallest of these diameters that carries the input, in. */
function smallest(inches: readonly number[], input: number, capacity: (inch: number) => number): number {
  return inches.find((inch) => capacity(inch) >= input) ?? Number.NaN;
}

const byCode: readonly Case[] = [
  {
    id: '1a, 5 in, 10 ft and 5 ft',
    published: 122,
    computed: () => single('single-wall-connector-natural', [5, 10, 5]),
  },
  {
    id: '1b, 5 in, a third elbow',
    published: 110,
    computed: () => withElbows(single('single-wall-connector-natural', [5, 10, 5]), 3),
  },
  {
    id: '1b, 6 in, a third elbow',
    published: 167,
    computed: () => withElbows(single('single-wall-connector-natural', [6, 10, 5]), 3),
  },
  { id: '3, 10 ft', published: 77, computed: () => single('type-b-natural', [4, 10, 5]) },
  { id: '3, 15 ft', published: 87, computed: () => single('type-b-natural', [4, 15, 5]) },
  {
    id: '3, between the heights, 12 ft',
    published: 81,
    computed: () => single('type-b-natural', [4, 12, 5]),
  },
  {
    id: '5c, connector of 3 in',
    published: 39,
    computed: () => cell(connectorTables('natural').most, [3, 30, 2]),
  },
  {
    id: '5c, connector of 4 in',
    published: 70,
    computed: () => cell(connectorTables('natural').most, [4, 30, 2]),
  },
  { id: '5c, common vent of 4 in', published: 138, computed: () => common('some', [4, 30, 0]) },
  {
    id: '5c, 4 in as a corrugated liner',
    published: 110,
    computed: () => LINER * common('some', [4, 30, 0]),
  },
  { id: '5c, common vent of 5 in', published: 210, computed: () => common('some', [5, 30, 0]) },
  {
    id: '5c, 5 in as a corrugated liner',
    published: 168,
    computed: () => LINER * common('some', [5, 30, 0]),
  },
];

/** Sizes the examples end with, for their inputs in kBtu/h. */
const sizes: readonly Case[] = [
  {
    id: 'appendix B 1b, vent for 120',
    published: 6,
    computed: () =>
      smallest([5, 6, 7], 120, (inch) =>
        expectOk(withElbows(single('single-wall-connector-natural', [inch, 10, 5]), 3)),
      ),
  },
  {
    id: 'appendix B 3, vent for 80',
    published: 4,
    computed: () => smallest([3, 4, 5], 80, (inch) => single('type-b-natural', [inch, 12, 5])),
  },
  {
    id: 'appendix B 5c, connector of the water heater for 35, no smaller than its outlet of 4 in',
    published: 4,
    computed: () => smallest([4, 5], 35, (inch) => cell(connectorTables('natural').most, [inch, 30, 2])),
  },
  {
    id: 'appendix B 5c, connector of the furnace for 100',
    published: 4,
    computed: () => smallest([3, 4, 5], 100, (inch) => cell(connectorTables('fan').most, [inch, 30, 3])),
  },
  {
    id: 'appendix B 5c, liner for 135',
    published: 5,
    computed: () => smallest([4, 5, 6], 135, (inch) => LINER * common('some', [inch, 30, 0])),
  },
];

const fromText: readonly Case[] = [
  { id: 'A, most with a fan', published: 187, computed: () => single('type-b-fan', [5, 10, 5]) },
  {
    id: 'A, least with a fan',
    published: 41,
    computed: () => cell(ventTables('type-b-fan', 5 * INCH).least, [5, 10, 5]),
  },
  {
    id: 'A, vent for 120',
    published: 5,
    computed: () => smallest([3, 4, 5, 6], 120, (inch) => single('type-b-fan', [inch, 10, 5])),
  },
  {
    id: 'B, pool heater in a shed',
    published: 128,
    computed: () => single('single-wall-connector-natural', [5, 10, 2]),
  },
  {
    id: 'B, vent for 120',
    published: 5,
    computed: () =>
      smallest([3, 4, 5, 6], 120, (inch) => single('single-wall-connector-natural', [inch, 10, 2])),
  },
  {
    id: '5, connector, least',
    published: 21,
    computed: () => cell(connectorTables('fan').least, [3, 30, 2]),
  },
  { id: '5, connector, most', published: 64, computed: () => cell(connectorTables('fan').most, [3, 30, 2]) },
  {
    id: '5, connector of the boiler for 150',
    published: 5,
    computed: () => smallest([3, 4, 5, 6], 150, (inch) => cell(connectorTables('fan').most, [inch, 30, 3])),
  },
  {
    id: '5, common vent for 185',
    published: 5,
    computed: () => smallest([4, 5, 6], 185, (inch) => common('all', [inch, 30, 0])),
  },
  { id: '5, common vent', published: 244, computed: () => common('all', [5, 30, 0]) },
  { id: 'between heights, 12 ft', published: 81, computed: () => single('type-b-natural', [4, 12, 5]) },
];

const WHOLE = { band: { absolute: 0.51 }, bandBecause: 'whole thousands of Btu/h, whole inches' } as const;

export const TABLE_EXAMPLES: readonly Suite[] = [
  {
    ...WHOLE,
    id: 'vent/ifgc-appendix-b',
    area: 'vent',
    kind: 'published',
    document: 'International Fuel Gas Code, appendix B',
    at: 'examples 1a, 1b, 3 and 5c, read in the 2013 California Residential Code',
    quantity: 'capacity, kBtu/h',
    cases: byCode,
  },
  {
    ...WHOLE,
    id: 'vent/ifgc-appendix-b-sizes',
    area: 'vent',
    kind: 'published',
    document: 'International Fuel Gas Code, appendix B',
    at: 'the same examples: what they choose',
    quantity: 'diameter, in',
    cases: sizes,
  },
  {
    ...WHOLE,
    id: 'vent/b149-examples',
    area: 'vent',
    kind: 'published',
    document: 'Gas technician training text restating CSA B149.1',
    at: 'Unit 22, examples A, B and 5 of annex C',
    quantity: 'kBtu/h or in, as each case says',
    cases: fromText,
  },
];
