/** Every rule in every edition, with what it is held against. */
import { AIR_PROOFS } from './air/limits.table.ts';
import { VENT_PROOFS } from './air/vent-limits.table.ts';
import { BOILER_PROOFS } from './boiler/limits.table.ts';
import { COMBUSTION_PROOFS } from './combustion/limits.table.ts';
import { ENERGY_PROOFS } from './energy/limits.table.ts';
import { LAID_PROOFS } from './gas/laid-limits.table.ts';
import { GAS_PROOFS } from './gas/limits.table.ts';
import { HANDLING_PROOFS } from './handling/limits.table.ts';
import { HEAT_PROOFS } from './heat/limits.table.ts';
import { PERMIT_PROOFS } from './permits/limits.table.ts';
import { PLACE_PROOFS } from './place/limits.table.ts';
import { BONDING_PROOFS } from './power/bonding-limits.table.ts';
import { CIRCUIT_PROOFS } from './power/limits.table.ts';
import type { Proof } from './proof/index.ts';
import { WATER_PROOFS } from './water/limits.table.ts';

export const PROOFS: readonly Proof[] = [
  ...HEAT_PROOFS,
  ...ENERGY_PROOFS,
  ...GAS_PROOFS,
  ...LAID_PROOFS,
  ...AIR_PROOFS,
  ...VENT_PROOFS,
  ...COMBUSTION_PROOFS,
  ...WATER_PROOFS,
  ...BOILER_PROOFS,
  ...CIRCUIT_PROOFS,
  ...BONDING_PROOFS,
  ...PLACE_PROOFS,
  ...HANDLING_PROOFS,
  ...PERMIT_PROOFS,
];
