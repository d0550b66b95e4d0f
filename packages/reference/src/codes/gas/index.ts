/** The rules of the gas line, in the order a reader would ask. */
import type { AnyRule } from '../../evaluate/index.ts';
import { burnerPressureLockUp, burnerPressureRunning } from './burner-pressure.ts';
import { meterCapacity, regulatorCapacity, tankVaporisation } from './capacity.ts';
import { codePressureAtHeater, sectionCapacity } from './code-sizing.ts';
import { altitudeRating, fuelMatches, sedimentTrap, shutOffDistance } from './connection.ts';
import { testDuration, testGaugeRange, testPressure } from './pressure-test.ts';

export const GAS_RULES: readonly AnyRule[] = [
  fuelMatches,
  burnerPressureRunning,
  burnerPressureLockUp,
  codePressureAtHeater,
  sectionCapacity,
  meterCapacity,
  regulatorCapacity,
  tankVaporisation,
  altitudeRating,
  shutOffDistance,
  sedimentTrap,
  testPressure,
  testDuration,
  testGaugeRange,
];
