import type { Suite } from '../suite.ts';
import { COST_SUITES } from './published-costs.ts';
import { RULE_SUITES } from './rules-of-thumb.ts';
import { SET_TEMPERATURE_SUITES } from './set-temperature.ts';

export const HEAT_YEAR_SUITES: readonly Suite[] = [...COST_SUITES, ...SET_TEMPERATURE_SUITES, ...RULE_SUITES];
