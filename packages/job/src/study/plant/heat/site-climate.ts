/**
 * Whose climate stands for the site: the bundled place's, or twelve months that were typed in or taken from a weather
 * file. Where nobody has said, months that are there go before the place: somebody took them for this job.
 */
import { heat, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';

export type ClimateSource = 'bundled' | 'typed' | 'file';

/** What is known, or the reading that says it. */
export type Figure = number | ReadingPath;

export function figureOf(figure: Figure, values: Values): number {
  return typeof figure === 'number' ? figure : values(figure);
}

/** The mean of one month, in SI; of sun W/m2. */
export interface MonthAir {
  readonly airTemperature: Figure;
  readonly relativeHumidity: Figure;
  readonly windSpeed: Figure;
  /** Share of the sky; without it half is taken. */
  readonly cloud: Figure;
  readonly sun: Figure | undefined;
}

export interface SiteClimate {
  readonly source: ClimateSource;
  /** Of the place, or of place and file. */
  readonly name: string;
  /** Mean air of the twelve months, K. */
  readonly months: readonly number[];
  /** Takes one month (0 to 11). */
  readonly take: (month: number) => MonthAir;
}

export const CLIMATE_MONTHS = 'climateMonths';
const PLACE: Where = { collection: 'site', id: '-', field: 'climatePlace' };
const FROM: Where = { collection: 'site', id: '-', field: 'climateFrom' };
const NAME: Where = { collection: 'site', id: '-', field: 'climateName' };
const HALF = 0.5;
const { HOUR, ZERO_CELSIUS } = quantity;

export function climateSourceOf(reader: SurveyReader): ClimateSource {
  const said = reader.wordOr(FROM, '');
  if (said === 'bundled' || said === 'typed' || said === 'file') return said;
  return reader.view.all(CLIMATE_MONTHS).length > 0 ? 'typed' : 'bundled';
}

/** Whether the job knows any climate. */
export function hasClimate(reader: SurveyReader): boolean {
  return climateSourceOf(reader) !== 'bundled' || reader.has(PLACE);
}

/** Takes the climate of the site; undefined, and an entry in `missing` or `wrong`, where it is not known. */
export function takeClimate(reader: SurveyReader): SiteClimate | undefined {
  const source = climateSourceOf(reader);
  return source === 'bundled' ? placeClimate(reader) : monthsClimate(reader, source);
}

function placeClimate(reader: SurveyReader): SiteClimate | undefined {
  const name = reader.word(PLACE);
  if (name === '') return undefined;
  const place = catalog.climate.PLACES.find((one) => one.id === name);
  if (place === undefined) {
    reader.refuse(PLACE, { found: name, expected: catalog.climate.PLACES.map((one) => one.id) });
    return undefined;
  }
  const at = (of: readonly number[], month: number): number => of[month] ?? Number.NaN;
  return {
    source: 'bundled',
    name: place.name,
    months: place.airTemperature.map((t) => t + ZERO_CELSIUS),
    take: (month) => ({
      airTemperature: at(place.airTemperature, month) + ZERO_CELSIUS,
      relativeHumidity: at(place.relativeHumidity, month) / 100,
      windSpeed: at(place.windSpeed, month),
      cloud: place.cloud === undefined ? HALF : at(place.cloud, month) / 10,
      // kWh/m2 a day.
      sun: (at(place.globalRadiation, month) * 1000) / 24,
    }),
  };
}

export function climateMonth(month: number, field: string): Where {
  return { collection: CLIMATE_MONTHS, id: String(month + 1), field };
}

function monthsClimate(reader: SurveyReader, source: ClimateSource): SiteClimate | undefined {
  const months = Array.from({ length: heat.MONTHS }, (_, month) => {
    const fact = reader.fact(climateMonth(month, 'airTemperature'));
    return fact.state === 'number' ? fact.value : Number.NaN;
  });
  months.forEach((value, month) => {
    // Of the others only their mean and swing count, which no single ± moves.
    if (Number.isNaN(value)) reader.number(climateMonth(month, 'airTemperature'));
  });
  if (months.some(Number.isNaN)) return undefined;
  return {
    source,
    name: reader.wordOr(NAME, ''),
    months,
    take: (month) => {
      const taken = (field: string): ReadingPath => {
        const where = climateMonth(month, field);
        reader.number(where);
        return readingPath(where.collection, where.id, where.field);
      };
      const perhaps = (field: string): ReadingPath | undefined =>
        reader.has(climateMonth(month, field)) ? taken(field) : undefined;
      return {
        airTemperature: taken('airTemperature'),
        relativeHumidity: taken('relativeHumidity'),
        windSpeed: taken('windSpeed'),
        cloud: perhaps('cloud') ?? HALF,
        sun: perhaps('globalRadiation'),
      };
    },
  };
}

/** The twelve months as the engine makes a year of them; NaN, and entries in `missing`, for what is not known. */
export function takeNormals(reader: SurveyReader): heat.MonthlyNormals {
  const column = (field: string): readonly number[] =>
    Array.from({ length: heat.MONTHS }, (_, month) => reader.number(climateMonth(month, field)));
  const clouds = Array.from({ length: heat.MONTHS }, (_, month) => reader.has(climateMonth(month, 'cloud')));
  const latitude = reader.number({ collection: 'site', id: '-', field: 'latitude' });
  const elevation = reader.number({ collection: 'site', id: '-', field: 'altitude' });
  return {
    // Clocks go by the sun: which hour noon is called moves a cover by less than an hour.
    place: { latitude, longitude: 0, timeZone: 0, elevation },
    airTemperature: column('airTemperature'),
    relativeHumidity: column('relativeHumidity'),
    windSpeed: column('windSpeed'),
    globalRadiation: column('globalRadiation').map((flux) => flux * 24 * HOUR),
    ...(clouds.every(Boolean) ? { cloud: column('cloud') } : {}),
  };
}
