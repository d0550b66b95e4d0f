/** The synthetic hourly years that the climate suites look at, each made once. */
import { expectOk, heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';

const { PLACES, normalsOf } = catalog.climate;
export type ClimatePlace = catalog.climate.ClimatePlace;

export const MONTH_NAMES = [
  'jan',
  'feb',
  'mar',
  'apr',
  'may',
  'jun',
  'jul',
  'aug',
  'sep',
  'oct',
  'nov',
  'dec',
];

/** Places whose figures were read. */
export const READ_PLACES = PLACES.filter((place) => place.source.known !== 'from memory');

/** The place of an id; a missing one is a mistake here. */
export function placeOf(id: string): ClimatePlace {
  const place = PLACES.find((one) => one.id === id);
  if (!place) throw new Error(`no place ${id}`);
  return place;
}

const made = new Map<string, heat.HourlyWeather>();

/** Hourly year of a place's normals. */
export function yearOf(place: ClimatePlace): heat.HourlyWeather {
  return yearOfNormals(place.id, normalsOf(place));
}

/** Hourly year of any normals, kept under a key. */
export function yearOfNormals(key: string, normals: heat.MonthlyNormals): heat.HourlyWeather {
  const known = made.get(key);
  if (known) return known;
  const year = expectOk(heat.hourlyWeather(normals));
  made.set(key, year);
  return year;
}
