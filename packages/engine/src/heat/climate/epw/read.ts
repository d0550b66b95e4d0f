/**
 * Reads a weather file of one year by the hour (EPW), as text, into the arrays that a pool year takes.
 *
 * Missing values are filled as `gaps` says and counted; dew point and relative humidity stand in for each other;
 * missing cloud is that of the day's clearness, missing pressure that of the standard atmosphere. Missing long-wave
 * radiation stays NaN: the sky model fills it where it is used. Opaque cover goes before total cover.
 *
 * Source: EnergyPlus Weather File (EPW) Data Dictionary, EnergyPlus Auxiliary Programs.
 * Range: one period of 8,760 or 8,784 whole hours from 1 January; at most 16 million characters.
 * Errors: issues with `line.N.column` as their place; after twenty of them the rest is not read. Never throws,
 * whatever the text holds.
 */
import { dewPointOf, saturationPressureAt, standardPressureAt } from '../../../properties/index.ts';
import { HOUR, ZERO_CELSIUS } from '../../../quantity/index.ts';
import { fail, type Issue, ok, type Result } from '../../../trace/index.ts';
import { HOURS_A_DAY } from '../calendar.ts';
import { cloudOfClearness } from '../cloud.ts';
import { extraterrestrialOfDay } from '../solar.ts';
import type { HourlyWeather, Place } from '../weather.ts';
import { type Filling, fillFromNearDays, fillStraight } from './gaps.ts';
import { type EpwHeader, readHeader } from './header.ts';
import { LONGEST_TEXT, linesOf } from './lines.ts';
import { readRows, type Table } from './rows.ts';

export interface EpwYear extends Pick<EpwHeader, 'city' | 'station' | 'ground'> {
  readonly weather: HourlyWeather;
  /** Hours filled, by array; only those with any. */
  readonly filled: Readonly<Record<string, number>>;
}

/** A year of hourly weather from the text of a file, or what is wrong with the file. */
export function readEpw(text: string): Result<EpwYear> {
  if (text.length > LONGEST_TEXT)
    return fail({
      code: 'ill-formed',
      where: 'text',
      found: text.length,
      max: LONGEST_TEXT,
      reason: 'too-long',
    });
  const lines = linesOf(text);
  const header = readHeader(lines);
  if (!header.ok) return header;
  const rows = readRows(lines);
  if (!rows.ok) return rows;
  const { place, firstWeekday, city, station, ground } = header.value;
  const made = weatherOf(rows.value, place);
  if (!made.ok) return made;
  const { filled, arrays } = made.value;
  const weather = { place, hours: arrays.airTemperature.length, firstWeekday, ...arrays };
  return ok({ city, station, ground, weather, filled });
}

type Arrays = Omit<HourlyWeather, 'place' | 'hours' | 'firstWeekday'>;

interface Made {
  readonly arrays: Arrays;
  readonly filled: Record<string, number>;
}

function weatherOf(table: Table, place: Place): Result<Made> {
  const issues: Issue[] = [];
  const filled: Record<string, number> = {};
  const note = (name: string, { filled: hours, left }: Filling): void => {
    if (hours > 0) filled[name] = hours;
    // The first hour of the year stands in line 9.
    if (left !== undefined)
      issues.push({ code: 'ill-formed', where: `line.${left + 9}.${name}`, reason: 'gap-too-long' });
  };
  const airTemperature = table.airTemperature.map((t) => t + ZERO_CELSIUS);
  note('airTemperature', fillStraight(airTemperature));
  const dewPoint = dewPoints(table, airTemperature);
  note('dewPoint', fillStraight(dewPoint));
  note('windSpeed', fillStraight(table.windSpeed));
  note('globalRadiation', fillFromNearDays(table.globalRadiation));
  if (issues.length > 0) return fail(...issues);
  note(
    'pressure',
    fillWith(table.pressure, () => standardPressureAt(place.elevation)),
  );
  const cloud = table.opaqueCover.map(
    (c, i) => (Number.isNaN(c) ? (table.totalCover[i] ?? Number.NaN) : c) / 10,
  );
  const estimate = cloudByDay(table.globalRadiation, place);
  note(
    'cloud',
    fillWith(cloud, (hour) => estimate(Math.floor(hour / HOURS_A_DAY))),
  );
  const relativeHumidity = table.relativeHumidity.map((percent) => percent / 100);
  const { pressure, windSpeed, globalRadiation, skyRadiation } = table;
  const humid = (hour: number): number =>
    saturationPressureAt(dewPoint[hour] ?? 0) / saturationPressureAt(airTemperature[hour] ?? 1);
  note('relativeHumidity', fillWith(relativeHumidity, humid));
  const arrays = {
    airTemperature,
    dewPoint,
    relativeHumidity,
    windSpeed,
    globalRadiation,
    cloud,
    pressure,
    skyRadiation,
  };
  return ok({ arrays, filled });
}

/** Dew point of each hour, K: the file's, else that of its relative humidity. */
function dewPoints(table: Table, airTemperature: Float64Array): Float64Array {
  return table.dewPoint.map((t, i) => {
    if (!Number.isNaN(t)) return t + ZERO_CELSIUS;
    const vapour =
      ((table.relativeHumidity[i] ?? Number.NaN) / 100) * saturationPressureAt(airTemperature[i] ?? 0);
    return vapour > 0 ? dewPointOf(vapour) : Number.NaN;
  });
}

function fillWith(values: Float64Array, value: (hour: number) => number): Filling {
  let filled = 0;
  for (let i = 0; i < values.length; i++) {
    if (!Number.isNaN(values[i])) continue;
    values[i] = value(i);
    filled++;
  }
  return { filled };
}

/** Cloud of a day by its clearness. */
function cloudByDay(globalRadiation: Float64Array, place: Place): (day: number) => number {
  return (day) => {
    const hours = globalRadiation.subarray(day * HOURS_A_DAY, (day + 1) * HOURS_A_DAY);
    const energy = hours.reduce((sum, flux) => sum + flux * HOUR, 0);
    const above = extraterrestrialOfDay(place.latitude, day);
    return cloudOfClearness(above > 0 ? energy / above : 0);
  };
}
