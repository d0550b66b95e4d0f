/**
 * Capacities of semirigid copper tube as printed in the International Fuel Gas Code 2018, Section 402.4: natural gas in
 * ft3/h (gravity 0.60), propane in kBtu/h (gravity 1.50). Only the rows that the public copy shows; a size that is cut
 * off in a row is left out of it. Read in the public flip-book copy, pages named by the table.
 */
import { quantity } from '@firstfire/engine';
import type { CapacityPrint } from '../capacity-print.ts';

const { INCH_OF_WATER, PSI } = quantity;

export const COPPER_TABLES: readonly CapacityPrint[] = [
  {
    table: '402.4(11)',
    page: 56,
    what: 'natural gas under 2 psi, 17.0 in w.c. drop',
    gas: 'natural',
    inletPressure: 8 * INCH_OF_WATER,
    pressureDrop: 17 * INCH_OF_WATER,
    sizes: ['1/4', '3/8', '1/2', '5/8', '3/4', '1', '1-1/4', '1-1/2', '2'],
    rows: {
      10: [190, 391, 796, 1390, 1970, 4220, 7590, 12000, 24900],
      20: [130, 269, 547, 956, 1360, 2900, 5220, 8230, 17100],
      30: [105, 216, 439, 768, 1090, 2330, 4190, 6610, 13800],
      40: [90, 185, 376, 657, 932, 1990, 3590, 5650, 11800],
      50: [79, 164, 333, 582, 826, 1770, 3180, 5010, 10400],
    },
  },
  {
    table: '402.4(12)',
    page: 57,
    what: 'natural gas at 2 psi, 1 psi drop',
    gas: 'natural',
    inletPressure: 2 * PSI,
    pressureDrop: 1 * PSI,
    sizes: ['1/4', '3/8', '1/2', '5/8', '3/4', '1', '1-1/4', '1-1/2', '2'],
    rows: {
      10: [245, 506, 1030, 1800, 2550, 5450, 9820, 15500, 32200],
      20: [169, 348, 708, 1240, 1760, 3750, 6750, 10600, 22200],
      30: [135, 279, 568, 993, 1410, 3010, 5420, 8550, 17800],
      40: [116, 239, 486, 850, 1210, 2580, 4640, 7310, 15200],
      50: [103, 212, 431, 754, 1070, 2280, 4110, 6480, 13500],
      60: [93, 192, 391, 683, 969, 2070, 3730, 5870],
    },
  },
  {
    table: '402.4(13)',
    page: 58,
    what: 'natural gas at 2 psi, 1.5 psi drop',
    gas: 'natural',
    inletPressure: 2 * PSI,
    pressureDrop: 1.5 * PSI,
    sizes: ['1/4', '3/8', '1/2', '5/8', '3/4', '1', '1-1/4', '1-1/2', '2'],
    rows: {
      10: [303, 625, 1270, 2220, 3150, 6740, 12100, 19100, 39800],
      20: [208, 430, 874, 1530, 2170, 4630, 8330, 13100, 27400],
      30: [167, 345, 702, 1230, 1740, 3720, 6690, 10600],
    },
  },
  {
    table: '402.4(30)',
    page: 74,
    what: 'propane at 11 in w.c., 0.5 in w.c. drop',
    gas: 'propane',
    inletPressure: 11 * INCH_OF_WATER,
    pressureDrop: 0.5 * INCH_OF_WATER,
    sizes: ['1/4', '3/8', '1/2', '5/8', '3/4', '1', '1-1/4', '1-1/2', '2'],
    rows: {
      10: [45, 93, 188, 329, 467, 997, 1800, 2830, 5890],
      20: [31, 64, 129, 226, 321, 685, 1230, 1950, 4050],
      30: [25, 51, 104, 182, 258, 550, 991, 1560, 3250],
      40: [21, 44, 89, 155, 220, 471, 848, 1340],
    },
  },
  {
    table: '402.4(31)',
    page: 75,
    what: 'propane at 2 psi, 1 psi drop',
    gas: 'propane',
    inletPressure: 2 * PSI,
    pressureDrop: 1 * PSI,
    sizes: ['1/4', '3/8', '1/2', '5/8', '3/4', '1', '1-1/4', '1-1/2', '2'],
    rows: {
      10: [413, 852, 1730, 3030, 4300, 9170, 16500, 26000, 54200],
      20: [284, 585, 1190, 2080, 2950, 6310, 11400, 17900, 37300],
      30: [228, 470, 956, 1670, 2370, 5060, 9120, 14400, 29900],
      40: [195, 402, 818, 1430, 2030, 4330, 7800, 12300, 25600],
      50: [173, 356, 725, 1270, 1800, 3840],
    },
  },
];
