export { type Prices, type YearCost, yearCost } from './cost.ts';
export { type Exposure, type Forcing, forcingOf, type RoomAir, skyTemperatures } from './forcing.ts';
export { type Heater, type HeaterMonths, type HeaterWork, heaterIssues, heaterMonths } from './heater.ts';
export { clearLedger, emptyLedger, FLOWS, type Flow, type Ledger, monthsOf, netHeat } from './ledger.ts';
export { marchYear } from './march.ts';
export {
  type BasinModel,
  loadHour,
  REFERENCE_WATER,
  VOLUMETRIC_HEAT,
  type YearBasin,
  type YearInput,
  type YearModel,
  yearModel,
} from './model.ts';
export {
  type CoverPlan,
  coveredHours,
  type Season,
  type SetPointPlan,
  seasonHours,
  setPoints,
  type WeekHour,
} from './schedule.ts';
export { type BasinYear, poolYear, type YearAnswer, type YearQuestion } from './year.ts';
