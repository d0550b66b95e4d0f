/** What pool codes and the trade print of water: formulas, surge, rating curves, practice. */
import type { Suite } from '../suite.ts';
import { FORMULAS } from './formulas.ts';
import { PRACTICE } from './practice.ts';
import { PRINTED_LIMITS } from './printed-limits.ts';
import { PUMP_TEST_CURVES } from './pump-test-curves.ts';
import { WATER_HAMMER } from './water-hammer.ts';

export const POOL_RULES_SUITES: readonly Suite[] = [
  ...PRINTED_LIMITS,
  ...FORMULAS,
  ...WATER_HAMMER,
  ...PUMP_TEST_CURVES,
  PRACTICE,
];
