/** Earth over buried wiring, and the ground by the breaker. */
import { quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { INCH } = quantity;
type Place = catalog.power.BurialPlace;
type Method = catalog.power.BurialMethod;
type Relief = NonNullable<catalog.power.Burial['relief']>;

/** Location, then inches: direct-buried cable, metal conduit, plastic raceway, protected 120 V, 30 V control. */
const TABLE_300_5: readonly (readonly [Place, readonly [number, number, number, number, number]])[] = [
  ['yard', [24, 6, 18, 12, 6]],
  ['trench under 2 in of concrete', [18, 6, 12, 6, 6]],
  ['under a building', [0, 0, 0, 0, 0]],
  ['slab of 4 in without traffic', [18, 4, 4, 6, 6]],
  ['street, driveway or car park', [24, 24, 24, 24, 24]],
  ['driveway of a dwelling', [18, 18, 18, 12, 18]],
  ['airport runway', [18, 18, 18, 18, 18]],
];

const METHODS: readonly (readonly [Method, column: 0 | 1 | 2])[] = [
  ['direct-buried cable', 0],
  ['rigid metal conduit', 1],
  ['intermediate metal conduit', 1],
  ['nonmetallic raceway', 2],
];

const RELIEFS: readonly (readonly [Relief, column: 3 | 4])[] = [
  ['protected dwelling circuit', 3],
  ['control of 30 V', 4],
];

const cover: Suite = {
  id: 'electric/nec-300.5-cover',
  carried: true,
  area: 'electric',
  kind: 'published',
  document: 'National Electrical Code 2011, Table 300.5',
  at: 'minimum cover, 0 to 600 V, read in the 2013 California Electrical Code',
  quantity: 'in; the two relieved columns as a direct-buried cable has them',
  band: { absolute: 1e-9 },
  bandBecause: 'whole inches',
  cases: TABLE_300_5.flatMap(([place, row]): readonly Case[] => [
    ...METHODS.map(([method, column]) => ({
      id: `${place}: ${method}`,
      published: row[column],
      computed: () => catalog.power.coverLeast({ method, place }) / INCH,
    })),
    ...RELIEFS.map(([relief, column]) => ({
      id: `${place}: ${relief}`,
      published: row[column],
      computed: () => catalog.power.coverLeast({ method: 'direct-buried cable', place, relief }) / INCH,
    })),
  ]),
};

/** The slab’s relieved columns read 4 in where a raceway holds the wiring. */
const slab: Suite = {
  ...cover,
  id: 'electric/nec-300.5-slab-raceway',
  carried: true,
  quantity: 'in; the relieved columns of a slab where a raceway holds the wiring',
  cases: RELIEFS.map(([relief]) => ({
    id: relief,
    published: 4,
    computed: () =>
      catalog.power.coverLeast({
        method: 'nonmetallic raceway',
        place: 'slab of 4 in without traffic',
        relief,
      }) / INCH,
  })),
};

/** Method, inches, millimetres. *Other approved raceway* (18 in, 450 mm) is carried as the plastic one. */
const TABLE_680_10: readonly (readonly [Method, number, number])[] = [
  ['rigid metal conduit', 6, 150],
  ['intermediate metal conduit', 6, 150],
  ['nonmetallic raceway', 18, 450],
];

const nearPool: Suite = {
  id: 'electric/nec-680.10-cover',
  carried: true,
  area: 'electric',
  kind: 'published',
  document: 'National Electrical Code 2011, Table 680.10',
  at: 'wiring under or within 5 ft of a pool, read in the 2013 California Electrical Code',
  quantity: 'mm; the inches are exact, the millimetres rounded to 50',
  band: { relative: 0.017 },
  bandBecause: '6 in is printed as 150 mm, 18 in as 450 mm: 1.6 % less',
  cases: TABLE_680_10.flatMap(([method, inches, millimetres]) => {
    const computed = (): number => (catalog.power.coverNearPool(method) ?? Number.NaN) * 1000;
    return [
      { id: `${method}, in`, published: inches * 25.4, computed },
      { id: `${method}, mm`, published: millimetres, computed },
    ];
  }),
};

/** Rating of the breaker, A, and the copper ground, by gauge (0, −1, −2, −3 are 1/0 to 4/0). */
const TABLE_250_122: readonly (readonly [number, number])[] = [
  [15, 14],
  [20, 12],
  [60, 10],
  [100, 8],
  [200, 6],
  [300, 4],
  [400, 3],
  [500, 2],
  [600, 1],
  [800, 0],
  [1000, -1],
  [1200, -2],
  [1600, -3],
];

const groundArea = (breaker: number): number => catalog.power.groundOfBreaker(breaker)?.area ?? Number.NaN;

const grounds: Suite = {
  id: 'electric/nec-250.122-grounds',
  carried: true,
  area: 'electric',
  kind: 'published',
  document: 'National Electrical Code, Table 250.122',
  at: 'copper equipment grounds; brunsengineering.com and mikeholt.com',
  quantity:
    'gauge number, for the rating itself and for one just above the row before; kcmil in the last row',
  band: { absolute: 1e-6 },
  bandBecause: 'whole gauge numbers',
  cases: [
    ...TABLE_250_122.flatMap(([breaker, gauge], index) => {
      const above = (TABLE_250_122[index - 1]?.[0] ?? 0) + 1;
      return [breaker, above].map((rating) => ({
        id: `${rating} A`,
        published: gauge,
        computed: () => quantity.gaugeOf(groundArea(rating)),
      }));
    }),
    {
      id: '2000 A, kcmil',
      published: 250,
      computed: () => groundArea(2000) / quantity.CIRCULAR_MIL / 1000,
    },
  ],
};

export const BURIAL_SUITES: readonly Suite[] = [cover, slab, nearPool, grounds];
