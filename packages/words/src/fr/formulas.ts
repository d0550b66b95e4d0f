/** The title of each step of a working: a formula, a group of steps, or a value that enters from outside. */
import { FORMULAS_AIR } from './formulas-air.ts';
import { FORMULAS_CHEMISTRY } from './formulas-chemistry.ts';
import { FORMULAS_COMBUSTION } from './formulas-combustion.ts';
import { FORMULAS_GAS } from './formulas-gas.ts';
import { FORMULAS_GAS_SUPPLY } from './formulas-gas-supply.ts';
import { FORMULAS_HEAT } from './formulas-heat.ts';
import { FORMULAS_PLACE } from './formulas-place.ts';
import { FORMULAS_POWER } from './formulas-power.ts';
import { FORMULAS_PROPERTIES } from './formulas-properties.ts';
import { FORMULAS_WATER } from './formulas-water.ts';

export const FORMULAS: Readonly<Record<string, string>> = {
  reading: 'Relevé',
  ...FORMULAS_AIR,
  ...FORMULAS_GAS,
  ...FORMULAS_GAS_SUPPLY,
  ...FORMULAS_WATER,
  ...FORMULAS_HEAT,
  ...FORMULAS_PLACE,
  ...FORMULAS_POWER,
  ...FORMULAS_CHEMISTRY,
  ...FORMULAS_COMBUSTION,
  ...FORMULAS_PROPERTIES,
};
