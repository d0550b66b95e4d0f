/** Networks held against outside solutions. */
import type { Suite } from '../suite.ts';
import { COMPOSED_SUITES } from './composed-suites.ts';
import { PAD_SUITES } from './pad-suites.ts';
import { REGULATOR_SUITES } from './regulator-suites.ts';
import { TEXTBOOK_SUITES } from './textbook-suites.ts';

export const NETWORK_SUITES: readonly Suite[] = [
  ...PAD_SUITES,
  ...REGULATOR_SUITES,
  ...COMPOSED_SUITES,
  ...TEXTBOOK_SUITES,
];
