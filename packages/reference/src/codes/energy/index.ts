/** Rules of the energy codes and of the law on the efficiency of appliances; each stands in the line it is looked for. */
import type { AnyRule } from '../../evaluate/index.ts';
import { cover, primarySource } from './basin.ts';
import {
  efficiencyLeast,
  integratedEfficiency,
  noPilot,
  offSwitch,
  offSwitchDistance,
  solarPipe,
  timeSwitch,
} from './heater.ts';

export const ENERGY_RULES: readonly AnyRule[] = [
  cover,
  primarySource,
  noPilot,
  efficiencyLeast,
  integratedEfficiency,
  offSwitch,
  offSwitchDistance,
  timeSwitch,
  solarPipe,
];
