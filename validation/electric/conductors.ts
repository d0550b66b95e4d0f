/** Conductor tables of the electrical code: resistance, cross-section, ampacity. */
import { evaluate, expectOk, power, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { ampacity } from '@firstfire/sums';
import type { Suite } from '../suite.ts';

const KFT = 1000 * quantity.FOOT;

interface Printed {
  readonly awg: string;
  readonly circularMils: number;
  /** Ohm a thousand feet; solid is printed to 8 AWG only. */
  readonly solid?: number;
  readonly stranded: number;
  /** A, at 60, 75 and 90 °C. */
  readonly amperes: readonly [number, number, number];
}

/** Chapter 9 Table 8 and Table 310.16 as printed. */
const PRINTED: readonly Printed[] = [
  { awg: '14', circularMils: 4110, solid: 3.07, stranded: 3.14, amperes: [15, 20, 25] },
  { awg: '12', circularMils: 6530, solid: 1.93, stranded: 1.98, amperes: [20, 25, 30] },
  { awg: '10', circularMils: 10_380, solid: 1.21, stranded: 1.24, amperes: [30, 35, 40] },
  { awg: '8', circularMils: 16_510, solid: 0.764, stranded: 0.778, amperes: [40, 50, 55] },
  { awg: '6', circularMils: 26_240, stranded: 0.491, amperes: [55, 65, 75] },
  { awg: '4', circularMils: 41_740, stranded: 0.308, amperes: [70, 85, 95] },
  { awg: '3', circularMils: 52_620, stranded: 0.245, amperes: [85, 100, 115] },
  { awg: '2', circularMils: 66_360, stranded: 0.194, amperes: [95, 115, 130] },
  { awg: '1', circularMils: 83_690, stranded: 0.154, amperes: [110, 130, 145] },
  { awg: '1/0', circularMils: 105_600, stranded: 0.122, amperes: [125, 150, 170] },
  { awg: '2/0', circularMils: 133_100, stranded: 0.0967, amperes: [145, 175, 195] },
];

function areaOf(awg: string): number {
  const read = quantity.parseQuantity(`${awg} AWG`, 'wire-size');
  return read.ok ? read.value.si : Number.NaN;
}

/** Annealed copper at 20 °C, ohm circular mils a foot (the international standard of 1913; from memory). */
const COPPER_AT_20 = 10.371;
/** A strand goes round and is 2 % longer than its conductor (from memory). */
const LAY = 1.02;

function fromCopper(circularMils: number, lay: number): number {
  const cold = expectOk(evaluate(power.conductorResistance, { tableResistance: 1, temperature: 293.15 }));
  return (lay * COPPER_AT_20 * 1000) / circularMils / cold;
}

const TABLE_8 = 'National Electrical Code, Chapter 9 Table 8';

const resistance: Suite = {
  id: 'electric/nec-table-8-resistance',
  area: 'electric',
  kind: 'published',
  document: TABLE_8,
  at: 'uncoated copper, direct current at 75 °C',
  quantity: 'resistance, ohm a thousand feet, from the circular mils and the resistivity of annealed copper',
  band: { relative: 0.006, absolute: 0.0006 },
  bandBecause: 'three printed digits; the temperature rule of note 2 run backwards to 20 °C',
  cases: PRINTED.flatMap(({ awg, circularMils, solid, stranded }) => [
    ...(solid === undefined
      ? []
      : [{ id: `${awg} solid`, published: solid, computed: () => fromCopper(circularMils, 1) }]),
    { id: `${awg} stranded`, published: stranded, computed: () => fromCopper(circularMils, LAY) },
  ]),
};

const area: Suite = {
  id: 'electric/nec-table-8-area',
  area: 'electric',
  kind: 'published',
  document: TABLE_8,
  at: 'area, circular mils',
  quantity: 'cross-section of a gauge as it is read, circular mils',
  band: { relative: 0.0015 },
  bandBecause: 'three or four printed digits',
  cases: PRINTED.map(({ awg, circularMils }) => ({
    id: awg,
    published: circularMils,
    computed: () => areaOf(awg) / quantity.CIRCULAR_MIL,
  })),
};

/** What the catalogue holds is what was printed: a misprint in carrying would show here. */
const carried: Suite = {
  id: 'electric/catalogue-resistance',
  area: 'electric',
  kind: 'practice',
  document: TABLE_8,
  at: 'as carried in the catalogue',
  quantity: 'ohm a thousand feet',
  band: { relative: 1e-9 },
  bandBecause: 'the same figure',
  cases: PRINTED.flatMap(({ awg, solid, stranded }) => {
    const held = catalog.power.COPPER.find((one) => one.gauge === awg);
    return [
      {
        id: `${awg}, solid to 8`,
        published: solid ?? stranded,
        computed: () => (held?.resistance ?? Number.NaN) * KFT,
      },
      {
        id: `${awg} stranded`,
        published: stranded,
        computed: () => (held?.strandedResistance ?? Number.NaN) * KFT,
      },
    ];
  }),
};

const RATINGS = [60, 75, 90] as const;

const ampacities: Suite = {
  id: 'electric/nec-310.16',
  carried: true,
  area: 'electric',
  kind: 'published',
  document: 'National Electrical Code 2023, Table 310.16 (2011: 310.15(B)(16))',
  at: 'copper, up to three conductors, 30 °C air',
  quantity: 'ampacity as the sum gives it for the table’s own air and conductors, A',
  band: { relative: 1e-9 },
  bandBecause: 'in its own air and company a conductor carries what the table says',
  cases: PRINTED.flatMap(({ awg, amperes }) =>
    RATINGS.map((rating, column) => ({
      id: `${awg} AWG, ${rating} °C`,
      published: amperes[column] ?? Number.NaN,
      computed: () => {
        const given = {
          conductor: areaOf(awg),
          'insulation-temperature': rating + 273.15,
          'ambient-temperature': 303.15,
          conductors: 3,
        };
        const carries = ampacity.run(given);
        return carries.ok ? (carries.value.current ?? Number.NaN) : Number.NaN;
      },
    })),
  ),
};

/** Upper end of each step of air, °C, and the factor printed for it. Table 310.15(B)(1), from memory. */
const AMBIENT: Readonly<Record<number, readonly (readonly [air: number, factor: number])[]>> = {
  60: [
    [10, 1.29],
    [15, 1.22],
    [20, 1.15],
    [25, 1.08],
    [30, 1],
    [35, 0.91],
    [40, 0.82],
    [45, 0.71],
    [50, 0.58],
    [55, 0.41],
  ],
  75: [
    [10, 1.2],
    [15, 1.15],
    [20, 1.11],
    [25, 1.05],
    [30, 1],
    [35, 0.94],
    [40, 0.88],
    [45, 0.82],
    [50, 0.75],
    [55, 0.67],
    [60, 0.58],
    [65, 0.47],
    [70, 0.33],
  ],
  90: [
    [10, 1.15],
    [15, 1.12],
    [20, 1.08],
    [25, 1.04],
    [30, 1],
    [35, 0.96],
    [40, 0.91],
    [45, 0.87],
    [50, 0.82],
    [55, 0.76],
    [60, 0.71],
    [65, 0.65],
    [70, 0.58],
    [75, 0.5],
    [80, 0.41],
    [85, 0.29],
  ],
};

const ambient: Suite = {
  id: 'electric/nec-ambient-factors',
  area: 'electric',
  kind: 'practice',
  document: 'National Electrical Code, Table 310.15(B)(1), from memory',
  at: 'factors for air other than 30 °C',
  quantity: 'share of the table’s ampacity at the hottest end of each step, by the code’s equation',
  band: { absolute: 0.0051 },
  bandBecause: 'two printed digits',
  cases: Object.entries(AMBIENT).flatMap(([rating, steps]) =>
    steps.map(([air, factor]) => ({
      id: `${rating} °C insulation, ${air} °C air`,
      published: factor,
      computed: () =>
        evaluate(power.ampacity, {
          tableCurrent: 1,
          insulation: Number(rating) + 273.15,
          ambient: air + 273.15,
          conductors: 3,
        }),
    })),
  ),
};

export const CONDUCTOR_SUITES: readonly Suite[] = [resistance, area, carried, ampacities, ambient];
