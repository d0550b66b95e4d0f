/** Combustion air and draught: the code's own example, its table of rooms, and printed draughts. */
import { air, evaluate, expectOk, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const { BTU, CUBIC_FOOT, FOOT, HOUR, INCH, INCH_OF_MERCURY, INCH_OF_WATER, PSI } = quantity;
const btu = (perHour: number): number => (perHour * BTU) / HOUR;
const fahrenheit = (t: number): number => (t + 459.67) / 1.8;

const annexJ: Suite = {
  id: 'air/nfpa-54-annex-j',
  area: 'air',
  kind: 'published',
  document: 'NFPA 54-2012',
  at: 'annex J, room of 15 × 30 × 8 ft with 100,000 and 40,000 Btu/h, as UPC 2012 appendix J',
  quantity: 'ft3 or in2, as each case says',
  band: { relative: 0.001, absolute: 0.5 },
  bandBecause: 'printed with intermediate rounding',
  cases: [
    {
      id: 'required volume, ft3',
      published: 7000,
      computed: () => expectOk(evaluate(air.standardRoomVolume, { heatInput: btu(140_000) })) / CUBIC_FOOT,
    },
    { id: 'full single opening, in2', published: 47, computed: () => single(140_000) },
    {
      id: 'outdoor opening beside the room’s own volume, in2',
      published: 23,
      computed: () => {
        const required = expectOk(evaluate(air.standardRoomVolume, { heatInput: btu(140_000) }));
        return single(140_000) * (1 - (15 * 30 * 8 * CUBIC_FOOT) / required);
      },
    },
  ],
};

function single(input: number): number {
  const need = { heatInput: btu(input), rate: air.OPENING_RATES.one, leastArea: 0 };
  return expectOk(evaluate(air.openingArea, need)) / INCH ** 2;
}

/** Input, then the volumes for fan-assisted and natural burners at 0.20 and 0.40 air changes an hour, ft3. */
const TABLE_E1: readonly (readonly [input: number, ...volumes: number[]])[] = [
  [5000, 250, 375, 188, 525, 263],
  [20_000, 1000, 1500, 750, 2100, 1050],
  [40_000, 2000, 3000, 1500, 4200, 2100],
  [60_000, 3000, 4500, 2250, 6300, 3150],
  [85_000, 4250, 6375, 3188, 8925, 4463],
];

const COLUMNS = [
  { name: 'standard' },
  { name: 'fan-assisted at 0.20', airChanges: 0.2, coefficient: 15 },
  { name: 'fan-assisted at 0.40', airChanges: 0.4, coefficient: 15 },
  { name: 'natural at 0.20', airChanges: 0.2, coefficient: 21 },
  { name: 'natural at 0.40', airChanges: 0.4, coefficient: 21 },
] as const;

const rooms: Suite = {
  id: 'air/ifgc-table-e-1',
  area: 'air',
  kind: 'published',
  document: 'International Fuel Gas Code, appendix E (Minnesota)',
  at: 'Table E-1, rows legible in the copy',
  quantity: 'room volume, ft3',
  band: { relative: 0, absolute: 1 },
  bandBecause: 'whole cubic feet',
  cases: TABLE_E1.flatMap(([input, ...volumes]) =>
    COLUMNS.map((column, index) => ({
      id: `${input} Btu/h, ${column.name}`,
      published: volumes[index] ?? Number.NaN,
      computed: () => {
        const heatInput = btu(input);
        const volume =
          'airChanges' in column
            ? evaluate(air.infiltrationRoomVolume, { heatInput, ...column })
            : evaluate(air.standardRoomVolume, { heatInput });
        return expectOk(volume) / CUBIC_FOOT;
      },
    })),
  ),
};

function draughtOf(feet: number, hot: number, atmosphere: number, cold: number): number {
  const column = {
    height: feet * FOOT,
    gasTemperature: fahrenheit(hot),
    airTemperature: fahrenheit(cold),
    atmosphere,
  };
  return expectOk(evaluate(air.draught, column)) / INCH_OF_WATER;
}

const draughts: Suite = {
  id: 'air/chimney-draught',
  area: 'air',
  kind: 'published',
  document: 'Printed chimney draughts (ASHRAE sample; Steam, 35th edition, 1919)',
  at: '25 ft of gas at 250 °F in air at 70 °F; 100 ft at 500 °F in air at 60 °F',
  quantity: 'draught, in w.c.',
  band: { relative: 0.012 },
  bandBecause: 'two printed digits and a rounded constant in each equation',
  cases: [
    {
      id: 'ASHRAE, 25 ft',
      published: 0.091,
      computed: () => draughtOf(25, 250, 29.92 * INCH_OF_MERCURY, 70),
    },
    { id: 'Steam, 100 ft', published: 0.67, computed: () => draughtOf(100, 500, 14.7 * PSI, 60) },
  ],
};

export const AIR_SUITES: readonly Suite[] = [annexJ, rooms, draughts];
