/** The rules of the power line. */
import type { AnyRule } from '../../evaluate/index.ts';
import {
  breakerProtectsWire,
  dropSmall,
  selectorMatches,
  voltageIdle,
  voltageRunning,
  wireCarriesLoad,
} from './circuit.ts';
import { bonded, disconnectInSight, groundFault } from './protection.ts';

export const POWER_RULES: readonly AnyRule[] = [
  selectorMatches,
  voltageIdle,
  voltageRunning,
  wireCarriesLoad,
  breakerProtectsWire,
  dropSmall,
  groundFault,
  disconnectInSight,
  bonded,
];
