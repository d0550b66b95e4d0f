/** Combustion: efficiency tables, stoichiometry, and facts of the trade. */
import type { Suite } from '../suite.ts';
import { FACTS } from './facts.ts';
import { SIEGERT_SUITES } from './siegert.ts';
import { STEAM_TIP_SUITES } from './steam-tip.ts';
import { STOICHIOMETRY } from './stoichiometry.ts';

export const COMBUSTION_SUITES: readonly Suite[] = [
  ...STEAM_TIP_SUITES,
  FACTS,
  STOICHIOMETRY,
  ...SIEGERT_SUITES,
];
