/** The gas line's suites, one file a source or a subject. */
import type { Suite } from '../suite.ts';
import { ALTITUDE_SUITES } from './altitude.ts';
import { B149_SUITES } from './b149-examples.ts';
import { CALIFORNIA_APPENDIX_SUITES } from './california-appendix.ts';
import { CALIFORNIA_CAPACITY_SUITES } from './california-capacities.ts';
import { CLOCKING_SUITES } from './clocking.ts';
import { CORRUGATED_SUITES } from './corrugated.ts';
import { HUNDRED_FOOT_SUITES } from './hundred-foot.ts';
import { IFGC_CAPACITY_SUITES } from './ifgc-2018-capacities.ts';
import { IFGC_APPENDIX_SUITES } from './ifgc-appendix-a.ts';
import { IRC_SUITES } from './irc-2018.ts';
import { PHYSICAL_LAW_SUITES } from './physical-law.ts';
import { PROPANE_SUITES } from './propane.ts';
import { SIZING_SUITES } from './sizing-examples.ts';

export const GAS_SUITES: readonly Suite[] = [
  ...IFGC_CAPACITY_SUITES,
  ...IFGC_APPENDIX_SUITES,
  ...CALIFORNIA_CAPACITY_SUITES,
  ...CALIFORNIA_APPENDIX_SUITES,
  ...CORRUGATED_SUITES,
  ...IRC_SUITES,
  ...HUNDRED_FOOT_SUITES,
  ...SIZING_SUITES,
  ...B149_SUITES,
  ...CLOCKING_SUITES,
  ...ALTITUDE_SUITES,
  ...PROPANE_SUITES,
  ...PHYSICAL_LAW_SUITES,
];
