/**
 * A year by the hour: water temperature, heat by kind and month, fuel, and the hours that did not hold.
 *
 * What it answers: what this water, with this heater, set point, cover and weather, needs in a year. The method stands
 * in `march`, the weather in `forcing`.
 *
 * How far to believe it: a typical year is not the next one, and evaporation is good to ±30 % at best. Published
 * annual costs of open pools are met within the bands stated in the validation.
 *
 * Source: first law; the flows as in `surfaceLosses`.
 * Range: one or two basins, an hour's weather each hour of a common or a leap year.
 * Errors: everything out of range, at once, with its place; a basin too shallow for the hour.
 *
 * Worked example: see the validation, published costs by city.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import { MONTHS } from '../climate/index.ts';
import { type Heater, type HeaterMonths, heaterIssues, heaterMonths } from './heater.ts';
import { clearLedger, emptyLedger, FLOWS, type Flow, type Ledger, monthsOf, netHeat } from './ledger.ts';
import { marchYear } from './march.ts';
import { type BasinModel, type YearInput, type YearModel, yearModel } from './model.ts';

export interface YearQuestion extends Omit<YearInput, 'output'> {
  readonly heater: Heater;
}

export interface BasinYear {
  /** At the end of each hour, K. */
  readonly waterTemperature: Float64Array;
  /** Heat by kind in each month, J. `heater` enters, the others leave; `sun` is below zero. */
  readonly flows: Readonly<Record<Flow, readonly number[]>>;
  /** Water evaporated in each month, kg. */
  readonly evaporated: readonly number[];
  /** Hours of each month that ended more than the tolerance under the set point. */
  readonly shortHours: readonly number[];
  /** Hours with a set point. */
  readonly wantedHours: number;
  /** Heat in the water (and ice) at the end less at the beginning, J. */
  readonly stored: number;
  /** What the books miss: heat in, less heat out, less stored, J. Round-off only. */
  readonly imbalance: number;
}

export interface YearAnswer extends HeaterMonths {
  readonly basins: readonly BasinYear[];
}

/** Years at most that are marched before the one that counts, until the water begins as it ends. */
const MOST_RUN_INS = 3;
const SAME = 0.01;

/** The year of one or two basins. */
export function poolYear(question: YearQuestion): Result<YearAnswer> {
  const issues = heaterIssues(question.heater);
  const model = yearModel({ ...question, output: question.heater.output });
  if (!model.ok) return fail(...issues, ...model.issues);
  if (issues.length > 0) return fail(...issues);
  const ledgers = model.value.basins.map(() => emptyLedger(model.value.hours));
  if (!question.start) runIn(model.value, ledgers);
  const before = model.value.basins.map(heatIn);
  ledgers.forEach(clearLedger);
  marchYear(model.value, ledgers);
  const basins = model.value.basins.map((basin, i) => basinYear(basin, ledgers[i], before[i]));
  return ok({ basins, ...heaterMonths(question.heater, heaterWork(model.value, ledgers)) });
}

/** Marches whole years until the year ends as it began. */
function runIn(model: YearModel, ledgers: readonly Ledger[]): void {
  for (let i = 0; i < MOST_RUN_INS; i++) {
    const before = model.basins.map((basin) => basin.now[0] ?? 0);
    marchYear(model, ledgers);
    if (model.basins.every((basin, b) => Math.abs((basin.now[0] ?? 0) - (before[b] ?? 0)) < SAME)) return;
  }
}

/** Heat of the water over 0 K less what its ice lacks, J. */
function heatIn({ now, capacity }: BasinModel): number {
  return capacity * (now[0] ?? 0) - (now[1] ?? 0);
}

function basinYear(basin: BasinModel, ledger: Ledger = emptyLedger(0), before = 0): BasinYear {
  const stored = heatIn(basin) - before;
  return {
    waterTemperature: ledger.waterTemperature,
    flows: Object.fromEntries(FLOWS.map((flow) => [flow, monthsOf(ledger, flow)])) as Record<Flow, number[]>,
    evaporated: [...ledger.evaporated],
    shortHours: [...ledger.short],
    wantedHours: basin.setPoint.reduce((count, T) => count + (T > 0 ? 1 : 0), 0),
    stored,
    imbalance: netHeat(ledger) - stored,
  };
}

function heaterWork(model: YearModel, ledgers: readonly Ledger[]) {
  const [heat, hours, inSeason] = [0, 1, 2].map(() => new Array<number>(MONTHS).fill(0)) as [
    number[],
    number[],
    number[],
  ];
  for (const ledger of ledgers)
    monthsOf(ledger, 'heater').forEach((value, m) => {
      heat[m] = (heat[m] ?? 0) + value;
    });
  for (let i = 0; i < model.hours; i++) {
    const m = model.monthOfHour[i] ?? 0;
    hours[m] = (hours[m] ?? 0) + 1;
    if (model.basins.some((basin) => (basin.setPoint[i] ?? 0) > 0)) inSeason[m] = (inSeason[m] ?? 0) + 1;
  }
  return { heat, hours, inSeason };
}
