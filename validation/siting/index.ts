import type { Suite } from '../suite.ts';
import { GEOMETRY_SUITES } from './geometry.ts';
import { RULE_FIGURE_SUITES } from './rule-figures.ts';
import { SOUND_AND_WIND_SUITES } from './sound-and-wind.ts';

export const SITING_SUITES: readonly Suite[] = [
  ...GEOMETRY_SUITES,
  ...SOUND_AND_WIND_SUITES,
  ...RULE_FIGURE_SUITES,
];
