/** A typical year of the bundled place. */
import { fail, heat, ok, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { SurveyReader } from '../facts/survey-reader.ts';

export interface NamedWeather {
  readonly hours: heat.HourlyWeather;
  readonly name: string;
}

export const CLIMATE_PLACE = 'site/-/climatePlace';

export function bundledWeather(reader: SurveyReader): Result<NamedWeather> {
  const climate = reader.wordOr({ collection: 'site', id: '-', field: 'climatePlace' }, '');
  const place = catalog.climate.PLACES.find((one) => one.id === climate);
  if (place === undefined) return fail({ code: 'not-understood', where: CLIMATE_PLACE, found: climate });
  const made = heat.hourlyWeather(catalog.climate.normalsOf(place));
  return made.ok ? ok({ hours: made.value, name: place.name }) : made;
}
