/** The rules of the water line, in the order a reader would ask. */
import type { AnyRule } from '../../evaluate/index.ts';
import { bypassHandle, bypassRange } from './bypass.ts';
import {
  calciumHardness,
  cyanuricAcid,
  freeChlorine,
  ph,
  saturationIndex,
  saturationIndexHeated,
  totalAlkalinity,
} from './chemistry.ts';
import { checkValve, pumpSuction, turnover } from './circulation.ts';
import { filterLoading, filterRate } from './filter.ts';
import { headerFlow, heaterFlow } from './heater-flow.ts';
import { exchangerInlet, heaterPressure, temperatureRise } from './heater-water.ts';
import { bypassLine, feederOrder } from './order.ts';
import { switchSetting, switchWindow } from './pressure-switch.ts';
import {
  reliefCapacity,
  reliefDischarge,
  reliefDischargeEnd,
  reliefFitted,
  reliefSetting,
} from './relief-valve.ts';
import { pipeVelocity } from './velocity.ts';

export const WATER_RULES: readonly AnyRule[] = [
  heaterFlow,
  bypassRange,
  bypassHandle,
  headerFlow,
  temperatureRise,
  exchangerInlet,
  heaterPressure,
  switchWindow,
  switchSetting,
  pipeVelocity,
  filterRate,
  filterLoading,
  turnover,
  pumpSuction,
  checkValve,
  feederOrder,
  bypassLine,
  reliefFitted,
  reliefSetting,
  reliefCapacity,
  reliefDischarge,
  reliefDischargeEnd,
  saturationIndex,
  saturationIndexHeated,
  ph,
  calciumHardness,
  totalAlkalinity,
  cyanuricAcid,
  freeChlorine,
];
