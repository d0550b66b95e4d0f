/** Voltage drop: worked examples and the constant of copper. */
import { evaluate, expectOk, power, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const KFT = 1000 * quantity.FOOT;

const examples: Suite = {
  id: 'electric/voltage-drop-examples',
  area: 'electric',
  kind: 'published',
  document: 'Voltage-drop teaching pages (EC&M; electrician2.com)',
  at: 'EC&M example 3, 480 V three phases; low-voltage control, 24 V',
  quantity: 'V, ft or %, as each case says',
  band: { relative: 0.006 },
  bandBecause: 'two or three printed digits',
  cases: [
    {
      id: 'EC&M example 3: length for 14.4 V, ft',
      published: 377,
      computed: () =>
        expectOk(
          evaluate(power.lengthForDrop, {
            current: 20,
            resistance: 1.1,
            phases: 3,
            length: KFT,
            allowedDrop: 14.4,
          }),
        ) / quantity.FOOT,
    },
    {
      id: 'control wire: drop, V',
      published: 4.0,
      computed: () => evaluate(power.voltageDrop, { current: 4, resistance: 0.499, phases: 1 }),
    },
    {
      id: 'control wire: drop, % of 24 V',
      published: 16.7,
      computed: () =>
        expectOk(evaluate(power.voltageDrop, { current: 4, resistance: 0.499, phases: 1 })) / 0.24,
    },
  ],
};

const perFoot = (constant: number): number => (constant * quantity.FOOT) / quantity.CIRCULAR_MIL;

const exactK: Suite = {
  id: 'electric/exact-k',
  area: 'electric',
  kind: 'published',
  document: 'selfhelpandmore.com, voltage drop',
  at: 'exact K of 8 AWG aluminium: 1.28 ohm a thousand feet, 16 510 circular mils',
  quantity: 'K, ohm circular mils a foot',
  band: { relative: 1e-5 },
  bandBecause: 'six printed digits',
  cases: [
    {
      id: '8 AWG aluminium',
      published: 21.1328,
      computed: () => perFoot(power.conductorConstant(1.28, KFT, 16_510 * quantity.CIRCULAR_MIL)),
    },
  ],
};

/** Gauge, circular mils, ohm a thousand feet, stranded. */
const STRANDED: readonly (readonly [string, number, number])[] = [
  ['14', 4110, 3.14],
  ['12', 6530, 1.98],
  ['10', 10_380, 1.24],
  ['8', 16_510, 0.778],
  ['6', 26_240, 0.491],
  ['4', 41_740, 0.308],
  ['3', 52_620, 0.245],
  ['2', 66_360, 0.194],
  ['1', 83_690, 0.154],
  ['1/0', 105_600, 0.122],
  ['2/0', 133_100, 0.0967],
];

const areas: Suite = {
  id: 'electric/area-for-drop',
  area: 'electric',
  kind: 'published',
  document: 'National Electrical Code, Chapter 9 Table 8',
  at: 'uncoated copper, stranded, direct current at 75 °C',
  quantity:
    'cross-section that loses just what the printed resistance loses at 10 A over 1000 ft, circular mils',
  band: { relative: 0.006 },
  bandBecause: 'K is printed with three digits and called approximate',
  cases: STRANDED.map(([awg, circularMils, ohms]) => ({
    id: awg,
    published: circularMils,
    computed: () => {
      const allowedDrop = expectOk(evaluate(power.voltageDrop, { current: 10, resistance: ohms, phases: 1 }));
      const wanted = { current: 10, length: KFT, allowedDrop, phases: 1 };
      return expectOk(evaluate(power.areaForDrop, wanted)) / quantity.CIRCULAR_MIL;
    },
  })),
};

export const DROP_SUITES: readonly Suite[] = [examples, exactK, areas];
