/** The rules of the gas line, in the order a reader would ask. */
import type { AnyRule } from '../../evaluate/index.ts';
import { shutOffAccessible, trapNipple, union } from './appliance.ts';
import { burialDepth, plasticRisers, plasticUnderground, tracer, tracerSize } from './buried.ts';
import { burnerPressureLockUp, burnerPressureRunning } from './burner-pressure.ts';
import { meterCapacity, regulatorCapacity, tankVaporisation } from './capacity.ts';
import { codePressureAtHeater, sectionCapacity } from './code-sizing.ts';
import { altitudeRating, fuelMatches, sedimentTrap, shutOffDistance } from './connection.ts';
import { csstBonded, csstBondLength, csstBondSize } from './csst.ts';
import { designDrop } from './design-drop.ts';
import { noLeak, testDuration, testGas, testGaugeRange, testPressure } from './pressure-test.ts';
import {
  purgeEnd,
  purgeFromIgnition,
  purgeFromIntake,
  purgeFromOpenings,
  purgeInert,
  purgeWhere,
} from './purge.ts';

export const GAS_RULES: readonly AnyRule[] = [
  fuelMatches,
  burnerPressureRunning,
  burnerPressureLockUp,
  codePressureAtHeater,
  sectionCapacity,
  designDrop,
  meterCapacity,
  regulatorCapacity,
  tankVaporisation,
  altitudeRating,
  shutOffDistance,
  shutOffAccessible,
  union,
  sedimentTrap,
  trapNipple,
  csstBonded,
  csstBondSize,
  csstBondLength,
  burialDepth,
  plasticUnderground,
  plasticRisers,
  tracer,
  tracerSize,
  testPressure,
  testDuration,
  testGaugeRange,
  testGas,
  noLeak,
  purgeWhere,
  purgeInert,
  purgeFromIgnition,
  purgeFromOpenings,
  purgeFromIntake,
  purgeEnd,
];
