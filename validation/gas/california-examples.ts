/** The sizing examples of the fuel gas code's appendix (A.6 of the 2012 edition, A.7 of 2018), each solved whole. */
import { gas, quantity } from '@firstfire/engine';
import {
  CFH,
  COPPER_TUBE,
  CSST_LOW_PRESSURE,
  CSST_TWO_PSI,
  columns,
  STEEL_SCHEDULE_40,
  section,
  solve,
  tubes,
} from './sizing-case.ts';

const { FOOT, INCH_OF_WATER, PSI } = quantity;

export const HALF_INCH_DROP: gas.TableBasis = {
  inletPressure: 7 * INCH_OF_WATER,
  pressureDrop: 0.5 * INCH_OF_WATER,
  fuel: gas.NATURAL_GAS,
};

/** Example 1: runs as in Example 6 of the same appendix; its figure puts 60 ft between the meter and outlet A. */
export const HALF_INCH_TREE = () =>
  solve({
    sections: [
      section('Section 3', 30, 0),
      section('Section 1', 10, 0, { upstream: 'Section 3' }),
      section('Outlet A', 20, 35 * CFH, { upstream: 'Section 1' }),
      section('Outlet B', 15, 75 * CFH, { upstream: 'Section 1' }),
      section('Section 2', 20, 135 * CFH, { upstream: 'Section 3' }),
    ],
    sizes: columns(STEEL_SCHEDULE_40, '1/2'),
    basis: HALF_INCH_DROP,
  });

/** Example 3: every appliance on its own branch behind section A, 1 in w.c. of drop. */
export const BRANCHES_OF_COPPER = () =>
  solve({
    sections: [
      section('A', 20, 0),
      section('B', 10, 75 * CFH, { upstream: 'A' }),
      section('C', 30, 30 * CFH, { upstream: 'A' }),
      section('D', 10, 35 * CFH, { upstream: 'A' }),
      section('E', 10, 80 * CFH, { upstream: 'A' }),
    ],
    sizes: columns(COPPER_TUBE, '1/4'),
    method: 'branch-length',
    basis: { ...HALF_INCH_DROP, pressureDrop: INCH_OF_WATER },
  });

const TUBE_ROWS = [5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 80, 100, 150].map((feet) => feet * FOOT);
const AT_HAND = [13, 18, 23, 30];

export const HIGH_ZONE = () =>
  solve({
    sections: [section('A', 100, 110 * CFH)],
    sizes: tubes(CSST_TWO_PSI, AT_HAND),
    rows: TUBE_ROWS,
    basis: { inletPressure: 2 * PSI, pressureDrop: PSI, fuel: gas.NATURAL_GAS },
  });

/** Sections of the low zone start at the manifold: each is a run of its own. */
export const LOW_ZONE = () =>
  solve({
    sections: [section('B', 15, 60 * CFH), section('C', 10, 30 * CFH), section('D', 25, 20 * CFH)],
    sizes: tubes(CSST_LOW_PRESSURE, AT_HAND),
    rows: TUBE_ROWS,
    method: 'branch-length',
    basis: { inletPressure: 10 * INCH_OF_WATER, pressureDrop: 3 * INCH_OF_WATER, fuel: gas.NATURAL_GAS },
  });

export const ADDED_BRANCH = () =>
  solve({
    sections: [section('G', 40, 40 * CFH)],
    sizes: tubes(CSST_LOW_PRESSURE, AT_HAND),
    rows: TUBE_ROWS,
    method: 'branch-length',
    basis: HALF_INCH_DROP,
  });
