/** Where readings are found and how they are taken, for a person with a tape and a gauge. */
import { HELP_BASINS } from './basins.ts';
import { HELP_GAS_PIPING } from './gas-piping.ts';
import { HELP_GAS_SUPPLY } from './gas-supply.ts';
import { HELP_HEATERS } from './heaters.ts';
import { HELP_PLAN } from './plan.ts';
import { HELP_POWER } from './power.ts';
import { HELP_SITE } from './site.ts';
import { HELP_SPOTS } from './spots.ts';
import { HELP_TESTS } from './tests.ts';
import { HELP_VENTS } from './vents.ts';
import { HELP_WATER } from './water.ts';

export const HELP: Readonly<Record<string, string>> = {
  ...HELP_BASINS,
  ...HELP_GAS_PIPING,
  ...HELP_GAS_SUPPLY,
  ...HELP_HEATERS,
  ...HELP_PLAN,
  ...HELP_POWER,
  ...HELP_SITE,
  ...HELP_SPOTS,
  ...HELP_TESTS,
  ...HELP_VENTS,
  ...HELP_WATER,
};
