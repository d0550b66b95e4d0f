/** A typical year of the site: of the bundled place, or of the twelve months the job holds. */
import { fail, heat, type Issue, ok, quantity, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { SurveyReader } from '../facts/survey-reader.ts';
import { CLIMATE_MONTHS, climateSourceOf, takeNormals } from '../plant/heat/site-climate.ts';

export interface NamedWeather {
  readonly hours: heat.HourlyWeather;
  readonly name: string;
}

const CLIMATE_PLACE = 'site/-/climatePlace';

/** Whether a path is a reading of the climate, which a year with weather of its own does without. */
export function isOfClimate(path: string): boolean {
  return path === CLIMATE_PLACE || path === 'site/-/latitude' || path.startsWith(`${CLIMATE_MONTHS}/`);
}

export type SiteWeather = { readonly place: true } | { readonly normals: heat.MonthlyNormals };

/** Takes what a year of weather is made from; the place is asked for with the design day. */
export function takeSiteWeather(reader: SurveyReader): SiteWeather {
  return climateSourceOf(reader) === 'bundled' ? { place: true } : { normals: takeNormals(reader) };
}

export function siteWeather(reader: SurveyReader, site: SiteWeather): Result<NamedWeather> {
  if ('normals' in site) {
    const name = reader.wordOr({ collection: 'site', id: '-', field: 'climateName' }, '');
    const made = heat.hourlyWeather(site.normals);
    return made.ok ? ok({ hours: made.value, name }) : fail(...made.issues.map(atReading));
  }
  const climate = reader.wordOr({ collection: 'site', id: '-', field: 'climatePlace' }, '');
  const place = catalog.climate.PLACES.find((one) => one.id === climate);
  if (place === undefined) return fail({ code: 'not-understood', where: CLIMATE_PLACE, found: climate });
  const made = heat.hourlyWeather(catalog.climate.normalsOf(place));
  return made.ok ? ok({ hours: made.value, name: place.name }) : made;
}

/** An issue of `globalRadiation.3` at the reading of March; the sun of a day (J/m2) as the mean flux it is kept as. */
function atReading(issue: Issue): Issue {
  const [, field, month] = /^(\w+)\.(\d+)$/.exec(issue.where) ?? [];
  if (field === undefined) return issue;
  const where = `${CLIMATE_MONTHS}/${month}/${field}`;
  if (field !== 'globalRadiation' || typeof issue.found !== 'number') return { ...issue, where };
  const max = issue.max === undefined ? {} : { max: issue.max / quantity.DAY };
  return { ...issue, where, found: issue.found / quantity.DAY, ...max };
}
