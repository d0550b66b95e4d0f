/** Combustion air and draught: the code's own example, its table of rooms, and printed draughts. */
import { air, evaluate, expectOk, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';
import { CANADIAN_DUCTS, CANADIAN_OPENINGS } from './canadian-openings.ts';
import { ROOM_VOLUMES } from './room-volumes.ts';
import { RULES_IN_SI } from './rules-in-si.ts';
import { btu } from './units.ts';

const { CUBIC_FOOT, FOOT, INCH, INCH_OF_MERCURY, INCH_OF_WATER, PSI } = quantity;
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
        return single(140_000) * (1 - volumeShare());
      },
    },
  ],
};

const annexJShares: Suite = {
  id: 'air/nfpa-54-annex-j-shares',
  area: 'air',
  kind: 'published',
  document: 'NFPA 54-2012',
  at: 'annex J, the same room: shares of what is needed',
  quantity: 'ratio',
  band: { absolute: 0.0051 },
  bandBecause: 'two decimals',
  cases: [
    { id: 'volume', published: 0.51, computed: volumeShare },
    { id: 'left for the opening', published: 0.49, computed: () => 1 - volumeShare() },
  ],
};

function volumeShare(): number {
  const required = expectOk(evaluate(air.standardRoomVolume, { heatInput: btu(140_000) }));
  return (15 * 30 * 8 * CUBIC_FOOT) / required;
}

function single(input: number): number {
  const need = { heatInput: btu(input), rate: air.OPENING_RATES.one, leastArea: 0 };
  return expectOk(evaluate(air.openingArea, need)) / INCH ** 2;
}

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

export const AIR_SUITES: readonly Suite[] = [
  annexJ,
  annexJShares,
  RULES_IN_SI,
  ROOM_VOLUMES,
  CANADIAN_OPENINGS,
  CANADIAN_DUCTS,
  draughts,
];
