/** The rules of the heat line. */
import type { AnyRule } from '../../evaluate/index.ts';
import { holdTemperature, notTooHot, plateauAboveSet, warmInTime } from './basins.ts';

export const HEAT_RULES: readonly AnyRule[] = [holdTemperature, warmInTime, plateauAboveSet, notTooHot];
