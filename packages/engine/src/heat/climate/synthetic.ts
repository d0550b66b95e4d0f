/**
 * A year by the hour from twelve monthly means, without chance: the same normals give the same year.
 *
 * Temperature: days smooth from month to month, deviating from it in a fixed order, swinging about the day's mean.
 * Dew point: follows the day's deviation and never exceeds the air's temperature. Sunshine: each day's clearness times
 * the radiation above the atmosphere, spread over the hours by the sun's height. Wind: the month's, a quarter stronger
 * at 15 h and a quarter weaker at 3 h (common practice, no source). Cloud: the month's, or that of the clearness.
 *
 * Each month's means of temperature, dew point (or relative humidity), wind, sunshine and cloud are those given, to
 * round-off. What cannot be kept at the same time is the relative humidity beside the dew point, since means of a
 * curved relation do not follow it; the deviation is stated in the validation.
 *
 * Source: the methods in the files imported here, each with its own; the way they are joined is ours.
 * Range: as in `normals`.
 * Errors: values that cannot be true are issues; a dew point above the air's temperature is a contradiction.
 */

import { standardPressureAt } from '../../properties/index.ts';
import { ok, type Result } from '../../trace/index.ts';
import { dailyDepartures, temperaturesByHour } from './air-by-hour.ts';
import { humidityByHour } from './humidity-by-hour.ts';
import { checkedNormals, type MonthlyNormals } from './normals.ts';
import { cloudsByHour, dailyClearness, sunshineByHour, windsByHour } from './sky-by-hour.ts';
import type { HourlyWeather } from './weather.ts';

export interface SyntheticOptions {
  /** `varied` (the default): days differ as they do. `mean`: every day of a month is its mean day. */
  readonly days?: 'varied' | 'mean';
  /** A year of 366 days. */
  readonly leap?: boolean;
  /** Weekday of 1 January, 0 is Sunday (the default). */
  readonly firstWeekday?: number;
}

/** Hourly weather of a year whose monthly means are the normals. */
export function hourlyWeather(
  normals: MonthlyNormals,
  { days = 'varied', leap = false, firstWeekday = 0 }: SyntheticOptions = {},
): Result<HourlyWeather> {
  const checked = checkedNormals(normals);
  if (!checked.ok) return checked;
  const clearness = dailyClearness(normals, days, leap);
  const departures = dailyDepartures(normals.airTemperature, days, leap);
  const airTemperature = temperaturesByHour(normals, departures, leap);
  const humid = humidityByHour(normals, { departures, airTemperature, leap });
  if (!humid.ok) return humid;
  const hours = airTemperature.length;
  const { place } = normals;
  return ok({
    place,
    hours,
    firstWeekday,
    airTemperature,
    ...humid.value,
    windSpeed: windsByHour(normals.windSpeed, leap),
    globalRadiation: sunshineByHour(normals, clearness, leap),
    cloud: cloudsByHour(normals, clearness, leap),
    pressure: new Float64Array(hours).fill(standardPressureAt(place.elevation)),
    skyRadiation: new Float64Array(hours).fill(Number.NaN),
  });
}
