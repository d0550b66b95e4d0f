/** Altitude held against published tables. */
import type { Suite } from '../suite.ts';
import { BOILING_TABLE_SUITES } from './boiling-table.ts';
import { STANDARD_ATMOSPHERE_SUITES } from './standard-atmosphere.ts';

export const ALTITUDE_SUITES: readonly Suite[] = [...STANDARD_ATMOSPHERE_SUITES, ...BOILING_TABLE_SUITES];
