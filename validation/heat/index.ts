/** Heat at a pool's surface held against measured pools, worked figures and carried factors. */
import type { Suite } from '../suite.ts';
import { COVER_SUITES } from './covers.ts';
import { ENERGY_SUITES } from './energy.ts';
import { EVAPORATION_SUITES } from './evaporation.ts';
import { FACTOR_SUITES } from './factors.ts';

export const HEAT_SUITES: readonly Suite[] = [
  ...EVAPORATION_SUITES,
  ...ENERGY_SUITES,
  ...COVER_SUITES,
  ...FACTOR_SUITES,
];
