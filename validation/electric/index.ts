/** Voltage drop and conductor tables of the electrical code. */
import { evaluate, expectOk, power, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Suite } from '../suite.ts';

const KFT = 1000 * quantity.FOOT;

/** AWG, circular mils, ohm a thousand feet, as printed for solid conductors to 8 AWG and stranded above. */
const TABLE_8: readonly (readonly [awg: string, circularMils: number, ohm: number])[] = [
  ['14', 4110, 3.07],
  ['12', 6530, 1.93],
  ['10', 10380, 1.21],
  ['8', 16510, 0.764],
];

/** Copper at 75 °C by its own constants: 10.371 ohm circular mils a foot at 20 °C and the table's coefficient. */
const COPPER_AT_20 = 10.371;

const resistance: Suite = {
  id: 'electric/nec-table-8-resistance',
  area: 'electric',
  kind: 'published',
  document: 'National Electrical Code, Chapter 9 Table 8',
  at: 'uncoated solid copper, direct current at 75 °C',
  quantity: 'resistance, ohm a thousand feet, from the circular mils and the resistivity of annealed copper',
  band: { relative: 0.006, absolute: 0.0006 },
  bandBecause: 'three printed digits; the temperature rule of note 2 run backwards to 20 °C',
  cases: TABLE_8.map(([awg, circularMils, ohm]) => ({
    id: awg,
    published: ohm,
    computed: () => {
      const at20 = (COPPER_AT_20 * 1000) / circularMils;
      const back = expectOk(evaluate(power.conductorResistance, { tableResistance: 1, temperature: 293.15 }));
      return at20 / back;
    },
  })),
};

const examples: Suite = {
  id: 'electric/voltage-drop-examples',
  area: 'electric',
  kind: 'published',
  document: 'Voltage-drop teaching pages (EC&M; electrician2.com)',
  at: 'EC&M example 3, 480 V three phases; low-voltage control, 24 V',
  quantity: 'V or ft, as each case says',
  band: { relative: 0.006 },
  bandBecause: 'two or three printed digits',
  cases: [
    {
      id: 'EC&M example 3: length for 14.4 V, ft',
      published: 377,
      computed: () => {
        const perFoot = expectOk(
          evaluate(power.voltageDrop, { current: 20, resistance: 1.1 / 1000, phases: 3 }),
        );
        return 14.4 / perFoot;
      },
    },
    {
      id: 'control wire: drop, V',
      published: 4.0,
      computed: () => evaluate(power.voltageDrop, { current: 4, resistance: 0.499, phases: 1 }),
    },
  ],
};

/** What the catalogue holds is what was printed: a misprint in carrying would show here. */
const carried: Suite = {
  id: 'electric/catalogue-resistance',
  area: 'electric',
  kind: 'practice',
  document: 'National Electrical Code, Chapter 9 Table 8',
  at: 'as carried in the catalogue',
  quantity: 'ohm a thousand feet',
  band: { relative: 1e-9 },
  bandBecause: 'the same figure',
  cases: TABLE_8.map(([awg, , ohm]) => ({
    id: awg,
    published: ohm,
    computed: () => (catalog.power.COPPER.find((one) => one.gauge === awg)?.resistance ?? Number.NaN) * KFT,
  })),
};

export const ELECTRIC_SUITES: readonly Suite[] = [resistance, examples, carried];
