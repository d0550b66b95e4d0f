/** Dew point and relative humidity of every hour of a year from monthly means of either. */
import { saturationPressureAt } from '../../properties/index.ts';
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { eachMonth, HOURS_A_DAY } from './calendar.ts';
import { daysOfMonths } from './days-of-months.ts';
import type { MonthlyNormals } from './normals.ts';
import type { HourlyWeather } from './weather.ts';

interface Air {
  readonly departures: Float64Array;
  readonly airTemperature: Float64Array;
  readonly leap: boolean;
}

type Humidity = Pick<HourlyWeather, 'dewPoint' | 'relativeHumidity'>;

/** Dew points shifted month by month until the mean given is met; no dew point exceeds the air's temperature. */
export function humidityByHour(normals: MonthlyNormals, air: Air): Result<Humidity> {
  const { airTemperature, leap } = air;
  const wanted = normals.dewPoint ?? normals.relativeHumidity ?? [];
  const course = unshifted(normals, air);
  const dewPoint = new Float64Array(airTemperature.length);
  const missed: number[] = [];
  eachMonth(leap, (m, from, to) => {
    const month: Month = {
      course: course.subarray(from * HOURS_A_DAY, to * HOURS_A_DAY),
      air: airTemperature.subarray(from * HOURS_A_DAY, to * HOURS_A_DAY),
      dew: dewPoint.subarray(from * HOURS_A_DAY, to * HOURS_A_DAY),
    };
    const meanAt = (shift: number): number =>
      normals.dewPoint ? meanDew(month, shift) : meanRelative(month, shift);
    if (!meetMean(meanAt, wanted[m] ?? 0)) missed.push(m + 1);
  });
  if (missed.length > 0) return fail(...missed.map((m) => aboveAir(normals, m)));
  const relativeHumidity = dewPoint.map((dew, i) => relative(dew, airTemperature[i] ?? 0));
  return ok({ dewPoint, relativeHumidity });
}

function aboveAir(normals: MonthlyNormals, month: number): Issue {
  const where = `${normals.dewPoint ? 'dewPoint' : 'relativeHumidity'}.${month}`;
  return { code: 'contradiction', where, reason: 'above-air' };
}

/** Dew points that follow the days, before they are shifted to the month's mean. */
function unshifted(normals: MonthlyNormals, { departures, leap }: Air): Float64Array {
  const days = daysOfMonths({ means: normals.dewPoint ?? normals.airTemperature, leap });
  const hours = new Float64Array(days.length * HOURS_A_DAY);
  for (let d = 0; d < days.length; d++)
    hours.fill((days[d] ?? 0) + (departures[d] ?? 0), d * HOURS_A_DAY, (d + 1) * HOURS_A_DAY);
  return hours;
}

interface Month {
  readonly course: Float64Array;
  readonly air: Float64Array;
  /** Written: the dew points. */
  readonly dew: Float64Array;
}

function meanDew({ course, air, dew }: Month, shift: number): number {
  let sum = 0;
  for (let i = 0; i < dew.length; i++) {
    const value = Math.min(air[i] ?? 0, (course[i] ?? 0) + shift);
    dew[i] = value;
    sum += value;
  }
  return sum / dew.length;
}

function meanRelative(month: Month, shift: number): number {
  meanDew(month, shift);
  let sum = 0;
  for (let i = 0; i < month.dew.length; i++) sum += relative(month.dew[i] ?? 0, month.air[i] ?? 0);
  return sum / month.dew.length;
}

function relative(dew: number, air: number): number {
  return saturationPressureAt(dew) / saturationPressureAt(air);
}

const WIDEST_SHIFT = 70;

/** Halves the interval of the shift until the rising mean is met; false where it cannot be. */
function meetMean(meanAt: (shift: number) => number, wanted: number): boolean {
  let [low, high] = [-WIDEST_SHIFT, WIDEST_SHIFT];
  const slack = 1e-9 * Math.abs(wanted);
  if (meanAt(high) < wanted - slack || meanAt(low) > wanted) return false;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (meanAt(middle) < wanted) low = middle;
    else high = middle;
  }
  meanAt(high);
  return true;
}
