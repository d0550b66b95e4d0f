/**
 * Corrugated stainless steel tubing (CSST): capacities by equivalent hydraulic diameter, as the code's tables print
 * them, brought to SI. No maker's tubing; the trade sizes of each make stand in its own instructions.
 *
 * Only the propane tables could be read. They serve natural gas through the gravity (see the engine's
 * `gas/code/corrugated`); the code's natural-gas example A.7.2 agrees to 0.3 %. The printed kBtu/h become volumes at
 * 2500 Btu/ft3, the heating value that the code's propane examples use.
 */
import { gas, quantity, type Source } from '@firstfire/engine';

type CorrugatedTable = gas.CorrugatedTable;

const { BTU, FOOT, HOUR, INCH_OF_WATER, PSI } = quantity;
const KILO_BTU_PER_HOUR = (1000 * BTU) / HOUR;

interface PrintedTable {
  readonly id: string;
  readonly inletPressure: number;
  readonly pressureDrop: number;
  readonly source: Source;
  readonly feet: readonly number[];
  /** EHD → kBtu/h, one for each length. */
  readonly thousandBtu: Readonly<Record<number, readonly number[]>>;
}

/** Brings a printed propane table to SI. */
function table(printed: PrintedTable): CorrugatedTable {
  const { id, inletPressure, pressureDrop, source } = printed;
  const perKiloBtu = KILO_BTU_PER_HOUR / gas.PROPANE.heatingValue;
  return {
    id,
    inletPressure,
    pressureDrop,
    source,
    specificGravity: 1.5,
    lengths: printed.feet.map((feet) => feet * FOOT),
    sizes: Object.entries(printed.thousandBtu).map(([ehd, capacities]) => ({
      ehd: Number(ehd),
      flows: capacities.map((capacity) => capacity * perKiloBtu),
    })),
  };
}

/** 11 in w.c. at the inlet, 0.5 in w.c. drop; used under 1.5 psi. EHD 37 disagrees with the 2 psi table (doubtful). */
export const CSST_LOW_PRESSURE: CorrugatedTable = table({
  id: 'csst-11-inwc',
  inletPressure: 11 * INCH_OF_WATER,
  pressureDrop: 0.5 * INCH_OF_WATER,
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Table 402.4(32), rows to 60 ft',
    known: 'read in a public copy',
  },
  feet: [5, 10, 15, 20, 25, 30, 40, 50, 60],
  thousandBtu: {
    13: [72, 50, 39, 34, 30, 28, 23, 20, 19],
    15: [99, 69, 55, 49, 42, 39, 33, 30, 26],
    18: [181, 129, 104, 91, 82, 74, 64, 58, 53],
    19: [211, 150, 121, 106, 94, 87, 74, 66, 60],
    23: [355, 254, 208, 183, 164, 151, 131, 118, 107],
    25: [426, 303, 248, 216, 192, 177, 153, 137, 126],
    30: [744, 521, 422, 365, 325, 297, 256, 227, 207],
    31: [863, 605, 490, 425, 379, 344, 297, 265, 241],
    37: [1420, 971, 775, 661, 583, 528, 449, 397, 359],
    39: [1638, 1179, 972, 847, 762, 698, 610, 548, 502],
    46: [2830, 1990, 1620, 1400, 1250, 1140, 988, 884, 805],
    48: [3270, 2320, 1900, 1650, 1480, 1350, 1170, 1050, 961],
    60: [5780, 4110, 3370, 2930, 2630, 2400, 2090, 1870, 1710],
    62: [6550, 4640, 3790, 3290, 2940, 2680, 2330, 2080, 1900],
  },
});

/** 2 psi at the inlet, 1 psi drop; used from 1.5 psi. EHD 25 at 80 ft stands 1.8 % under its column. */
export const CSST_TWO_PSI: CorrugatedTable = table({
  id: 'csst-2-psi',
  inletPressure: 2 * PSI,
  pressureDrop: 1 * PSI,
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Table 402.4(33), all rows',
    known: 'read in a public copy',
  },
  feet: [10, 25, 30, 40, 50, 75, 80, 100, 150, 200, 250, 300, 400, 500],
  thousandBtu: {
    13: [426, 262, 238, 203, 181, 147, 140, 124, 101, 86, 77, 69, 60, 53],
    15: [558, 347, 316, 271, 243, 196, 189, 169, 137, 118, 105, 96, 82, 72],
    18: [927, 591, 540, 469, 420, 344, 333, 298, 245, 213, 191, 173, 151, 135],
    19: [1110, 701, 640, 554, 496, 406, 393, 350, 287, 248, 222, 203, 175, 158],
    23: [1740, 1120, 1030, 896, 806, 663, 643, 578, 477, 415, 373, 343, 298, 268],
    25: [2170, 1380, 1270, 1100, 986, 809, 768, 703, 575, 501, 448, 411, 355, 319],
    30: [4100, 2560, 2330, 2010, 1790, 1460, 1410, 1260, 1020, 880, 785, 716, 616, 550],
    31: [4720, 2950, 2690, 2320, 2070, 1690, 1630, 1450, 1180, 1020, 910, 829, 716, 638],
    37: [7130, 4560, 4180, 3630, 3260, 2680, 2590, 2330, 1910, 1660, 1490, 1360, 1160, 1030],
    39: [7958, 5147, 4719, 4116, 3702, 3053, 2961, 2662, 2195, 1915, 1722, 1578, 1376, 1237],
    46: [15200, 9550, 8710, 7530, 6730, 5480, 5300, 4740, 3860, 3340, 2980, 2720, 2350, 2100],
    48: [16800, 10700, 9790, 8500, 7610, 6230, 6040, 5410, 4430, 3840, 3440, 3150, 2730, 2450],
    60: [29400, 18800, 17200, 14900, 13400, 11000, 10600, 9530, 7810, 6780, 6080, 5560, 4830, 4330],
    62: [34200, 21700, 19800, 17200, 15400, 12600, 12200, 10900, 8890, 7710, 6900, 6300, 5460, 4880],
  },
});

/** The table that a gauge inlet pressure (Pa) asks for. */
export function corrugatedTableAt(inletPressure: number): CorrugatedTable {
  return gas.codeEquation(inletPressure) === 'low' ? CSST_LOW_PRESSURE : CSST_TWO_PSI;
}

/** Equivalent hydraulic diameters the tables hold, rising. */
export const CSST_SIZES: readonly number[] = CSST_LOW_PRESSURE.sizes.map((size) => size.ehd);
