/** Every suite of the validation, in the order of the report. */

import { AIR_SUITES } from './air/index.ts';
import { ALTITUDE_SUITES } from './altitude/index.ts';
import { CHEMISTRY_SUITES } from './chemistry/index.ts';
import { CLIMATE_SUITES } from './climate/index.ts';
import { COMBUSTION_SUITES } from './combustion/index.ts';
import { EFFICIENCY_SUITES } from './efficiency/index.ts';
import { ELECTRIC_SUITES } from './electric/index.ts';
import { GAS_SUITES } from './gas/index.ts';
import { HANDLING_SUITES } from './handling/index.ts';
import { HEAT_SUITES } from './heat/index.ts';
import { HEAT_YEAR_SUITES } from './heat-year/index.ts';
import { NETWORK_SUITES } from './network/index.ts';
import { POOL_RULES_SUITES } from './pool-rules/index.ts';
import { PROPERTIES_SUITES } from './properties/index.ts';
import { RELIEF_SUITES } from './relief/index.ts';
import { SITING_SUITES } from './siting/index.ts';
import type { Suite } from './suite.ts';
import { VENT_SUITES } from './vent/index.ts';
import { WATER_SUITES } from './water/index.ts';

export const SUITES: readonly Suite[] = [
  ...GAS_SUITES,
  ...PROPERTIES_SUITES,
  ...HEAT_SUITES,
  ...CLIMATE_SUITES,
  ...HEAT_YEAR_SUITES,
  ...ALTITUDE_SUITES,
  ...WATER_SUITES,
  ...POOL_RULES_SUITES,
  ...NETWORK_SUITES,
  ...ELECTRIC_SUITES,
  ...AIR_SUITES,
  ...VENT_SUITES,
  ...SITING_SUITES,
  ...CHEMISTRY_SUITES,
  ...COMBUSTION_SUITES,
  ...EFFICIENCY_SUITES,
  ...RELIEF_SUITES,
  ...HANDLING_SUITES,
];
