/** Every suite of the validation, in the order of the report. */
import type { Suite } from './suite.ts';

export const SUITES: readonly Suite[] = [];
