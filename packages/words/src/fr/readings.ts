/** What records and their fields are called, as in `il manque tronçon de gaz s3 : longueur`. */
import { READINGS_GAS } from './readings-gas.ts';
import { READINGS_HEATER } from './readings-heater.ts';
import { READINGS_LIFT } from './readings-lift.ts';
import { READINGS_POWER } from './readings-power.ts';
import { READINGS_SITE } from './readings-site.ts';
import { READINGS_SURROUNDINGS } from './readings-surroundings.ts';
import { READINGS_TESTS } from './readings-tests.ts';
import { READINGS_WATER } from './readings-water.ts';

export const READINGS: Readonly<Record<string, string>> = {
  ...READINGS_SITE,
  ...READINGS_HEATER,
  ...READINGS_GAS,
  ...READINGS_WATER,
  ...READINGS_SURROUNDINGS,
  ...READINGS_POWER,
  ...READINGS_TESTS,
  ...READINGS_LIFT,
};
