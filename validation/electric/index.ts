/** The power line against the electrical codes and teaching pages. */
import type { Suite } from '../suite.ts';
import { BURIAL_SUITES } from './burial.ts';
import { CONDUCTOR_SUITES } from './conductors.ts';
import { DROP_SUITES } from './drop.ts';
import { FIGURE_SUITES } from './figures.ts';

export const ELECTRIC_SUITES: readonly Suite[] = [
  ...CONDUCTOR_SUITES,
  ...DROP_SUITES,
  ...BURIAL_SUITES,
  ...FIGURE_SUITES,
];
