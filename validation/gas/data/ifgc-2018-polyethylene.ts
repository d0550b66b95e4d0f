/**
 * Capacities of polyethylene pipe as printed in the International Fuel Gas Code 2018, Section 402.4: natural gas in
 * ft3/h (gravity 0.60), propane in kBtu/h (gravity 1.50). Only the rows that the public copy shows; a size that is cut
 * off in a row is left out of it. Read in the public flip-book copy, pages named by the table.
 */
import { quantity } from '@firstfire/engine';
import type { CapacityPrint } from '../capacity-print.ts';

const { INCH_OF_WATER, PSI } = quantity;

export const POLYETHYLENE_TABLES: readonly CapacityPrint[] = [
  {
    table: '402.4(20)',
    page: 65,
    what: 'natural gas under 2 psi, 0.3 in w.c. drop',
    gas: 'natural',
    inletPressure: 8 * INCH_OF_WATER,
    pressureDrop: 0.3 * INCH_OF_WATER,
    sizes: ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2', '3', '4'],
    rows: {
      10: [153, 305, 551, 955, 1440, 2590, 7170, 13900],
      20: [105, 210, 379, 656, 991, 1780, 4920, 9520],
      30: [84, 169, 304, 527, 796, 1430, 3950, 7640],
      40: [72, 144, 260, 451, 681, 1220, 3380, 6540],
      50: [64, 128, 231, 400, 604, 1080, 3000, 5800],
      60: [58, 116, 209, 362, 547, 983, 2720, 5250],
      70: [53, 107, 192, 333, 503, 904, 2500, 4830],
      80: [50, 99, 179, 310, 468, 841, 2330, 4500],
      90: [46, 93, 168, 291, 439, 789],
    },
  },
  {
    table: '402.4(22)',
    page: 67,
    what: 'natural gas at 2 psi, 1 psi drop',
    gas: 'natural',
    inletPressure: 2 * PSI,
    pressureDrop: 1 * PSI,
    sizes: ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2', '3', '4'],
    rows: {
      10: [1860, 3720, 6710, 11600, 17600, 31600, 87300, 169000],
      20: [1280, 2560, 4610, 7990, 12100, 21700, 60000, 116000],
      30: [1030, 2050, 3710, 6420, 9690, 17400, 48200, 93200],
      40: [878, 1760, 3170, 5490, 8300, 14900, 41200, 79700],
      50: [778, 1560, 2810, 4870, 7350, 13200, 36600, 70700],
      60: [705, 1410, 2550, 4410, 6660, 12000, 33100, 64000],
      70: [649, 1300, 2340, 4060, 6130, 11000, 30500, 58900],
      80: [603, 1210, 2180, 3780, 5700, 10200, 28300, 54800],
      90: [566, 1130, 2050, 3540, 5350, 9610],
    },
  },
  {
    table: '402.4(35)',
    page: 79,
    what: 'propane at 11 in w.c., 0.5 in w.c. drop',
    gas: 'propane',
    inletPressure: 11 * INCH_OF_WATER,
    pressureDrop: 0.5 * INCH_OF_WATER,
    sizes: ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2', '3', '4'],
    rows: {
      10: [340, 680, 1230, 2130, 3210, 5770, 16000, 30900],
      20: [233, 468, 844, 1460, 2210, 3970, 11000, 21200],
      30: [187, 375, 677, 1170, 1770, 3180, 8810, 17000],
      40: [160, 321, 580, 1000, 1520, 2730, 7540, 14600],
      50: [142, 285, 514, 890, 1340, 2420, 6680, 12900],
      60: [129, 258, 466, 807, 1220, 2190, 6050, 11700],
      70: [119, 237, 428, 742, 1120, 2010, 5570, 10800],
      80: [110, 221],
    },
  },
];
