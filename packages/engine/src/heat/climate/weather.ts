/** Weather of a year by the hour, as flat arrays, from whichever source. */
import { HOURS_A_LEAP_YEAR, MONTHS, monthOfHours } from './calendar.ts';
import type { Meridian } from './solar.ts';

export interface Place extends Meridian {
  /** rad, north positive. */
  readonly latitude: number;
  /** m above sea level. */
  readonly elevation: number;
}

export interface HourlyWeather {
  readonly place: Place;
  /** 8,760 or 8,784, the length of every array. */
  readonly hours: number;
  /** Weekday of 1 January, 0 is Sunday. */
  readonly firstWeekday: number;
  /** K. */
  readonly airTemperature: Float64Array;
  /** K. */
  readonly dewPoint: Float64Array;
  /** 0 to 1. */
  readonly relativeHumidity: Float64Array;
  /** m/s, at the station's 10 m. */
  readonly windSpeed: Float64Array;
  /** W/m2 on a horizontal surface, mean of the hour. */
  readonly globalRadiation: Float64Array;
  /** Share of the sky covered, 0 to 1. */
  readonly cloud: Float64Array;
  /** Pa absolute. */
  readonly pressure: Float64Array;
  /** Long-wave radiation of the sky on a horizontal surface, W/m2; NaN in hours where the source has none. */
  readonly skyRadiation: Float64Array;
}

/** Whether the year has a 29 February. */
export function isLeap(weather: { readonly hours: number }): boolean {
  return weather.hours === HOURS_A_LEAP_YEAR;
}

/** Mean of an hourly array over each month. */
export function monthlyMeansOf(hourly: Float64Array): number[] {
  const months = monthOfHours(isLeap({ hours: hourly.length }));
  const sums = new Array<number>(MONTHS).fill(0);
  const counts = new Array<number>(MONTHS).fill(0);
  for (let i = 0; i < hourly.length; i++) {
    const m = months[i] ?? 0;
    sums[m] = (sums[m] ?? 0) + (hourly[i] ?? 0);
    counts[m] = (counts[m] ?? 0) + 1;
  }
  return sums.map((sum, m) => sum / (counts[m] ?? 1));
}
