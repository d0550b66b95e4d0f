/** Every suite of the validation, in the order of the report. */
import { NETWORK_SUITES } from './network/index.ts';
import type { Suite } from './suite.ts';

export const SUITES: readonly Suite[] = [...NETWORK_SUITES];
