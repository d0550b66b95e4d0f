/** Properties of water, air and fuel held against published figures and an open library. */
import type { Suite } from '../suite.ts';
import { FUEL_SUITES } from './fuel.ts';
import { MOIST_AIR_SUITES } from './moist-air.ts';
import { SATURATION_SUITES } from './saturation.ts';
import { WATER_SUITES } from './water.ts';

export const PROPERTIES_SUITES: readonly Suite[] = [
  ...WATER_SUITES,
  ...SATURATION_SUITES,
  ...MOIST_AIR_SUITES,
  ...FUEL_SUITES,
];
