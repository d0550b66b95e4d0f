/**
 * The output that holds a basin at its temperature through a month.
 *
 *     P = mean of L(T, hour) over the hours of the month, and over those of its hardest day
 *
 * The water stores the day's sun for its night, so a basin of ordinary depth is held by the day's mean; the mean of the
 * month is what it takes on the whole, that of the hardest day what it takes without ever falling back. Below zero
 * the weather alone would warm the water further.
 *
 * Source: first law; losses of `surfaceLosses`.
 * Range: as a pool year; months 1 to 12.
 * Errors: those of a pool year.
 *
 * Worked example: see the test: in weather that does not change both are the loss of that hour.
 */
import { fail, ok, type Result, variableIssue } from '../../trace/index.ts';
import { HOURS_A_DAY, type HourlyWeather } from '../climate/index.ts';
import { surfaceLosses } from '../surface/index.ts';
import { type BasinModel, loadHour, type YearBasin, yearModel } from '../year/index.ts';

export interface HoldQuestion {
  readonly weather: HourlyWeather;
  readonly basin: Omit<YearBasin, 'setPoint'>;
  /** K. */
  readonly temperature: number;
  /** 1 to 12. */
  readonly month: number;
}

export interface Hold {
  /** W over the whole month. */
  readonly mean: number;
  /** W over the hardest of its days. */
  readonly hardestDay: number;
}

const MONTH = { symbol: 'm', kind: 'ratio', min: 1, max: 12 } as const;

/** Output that holds a basin through a month. */
export function holdOutput({ weather, basin, temperature, month }: HoldQuestion): Result<Hold> {
  const setPoint = new Float64Array(weather.hours).fill(temperature);
  const model = yearModel({ weather, basins: [{ ...basin, setPoint }], output: 0, start: [temperature] });
  const issue = variableIssue('month', month, MONTH);
  if (!model.ok) return issue ? fail(issue, ...model.issues) : model;
  const [one] = model.value.basins;
  if (issue || !one) return fail(...(issue ? [issue] : []));
  const days = dailyLosses(one, {
    temperature,
    month: Math.floor(month) - 1,
    monthOfHour: model.value.monthOfHour,
  });
  return ok({ mean: days.reduce((a, b) => a + b, 0) / days.length, hardestDay: Math.max(...days) });
}

interface Month {
  readonly temperature: number;
  readonly month: number;
  readonly monthOfHour: Uint8Array;
}

/** Mean loss (W) of each day of the month with the water at one temperature. */
function dailyLosses(basin: BasinModel, { temperature, month, monthOfHour }: Month): number[] {
  const days: number[] = [];
  for (let first = 0; first < monthOfHour.length; first += HOURS_A_DAY) {
    if (monthOfHour[first] !== month) continue;
    let sum = 0;
    for (let hour = first; hour < first + HOURS_A_DAY; hour++) {
      loadHour(basin, hour);
      basin.state.waterTemperature = temperature;
      sum += surfaceLosses(basin.setting, basin.state, basin.losses);
    }
    days.push(sum / HOURS_A_DAY);
  }
  return days;
}
