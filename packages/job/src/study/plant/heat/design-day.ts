/**
 * The day a heater is sized for: the mean of the coldest month of use, without sun, with the cover on for the hours it
 * is used. Leaving the sun out is the trade's habit (the usual rules by area and temperature know none) and lies on
 * the safe side; a year by the hour counts it. Ground and mains are those of the middle of that month.
 *
 * Who sizes for colder air, such as the 99 % heating dry bulb, says so: that temperature then stands in the stead of the
 * month's, with the month's relative humidity, wind and cloud.
 */
import { heat, properties } from '@firstfire/engine';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import {
  type ClimateSource,
  figureOf,
  hasClimate,
  type MonthAir,
  type SiteClimate,
  takeClimate,
} from './site-climate.ts';

/** Height at which weather stations take the wind, m. */
const STATION_HEIGHT = 10;
/** Air over an indoor pool, m/s: the handbook's factor form is made for it. */
const ROOM_AIR_SPEED = 0.1;
const DAY = 86_400;

/** Stands for the doubt of every evaporation equation, as one more number that can be moved. */
export const EVAPORATION: ReadingPath = 'method/-/evaporation';

export interface DesignDay {
  readonly indoors: boolean;
  readonly cover: heat.CoverName;
  readonly shelter: number;
  /** Month's climate, outdoors. */
  readonly climate: MonthClimate | undefined;
  readonly coverHours: ReadingPath;
  readonly airTemperature: ReadingPath;
  readonly airHumidity: ReadingPath;
  readonly activity: ReadingPath;
}

export interface MonthClimate extends MonthAir {
  readonly source: ClimateSource;
  readonly place: string;
  /** 1 to 12. */
  readonly month: number;
  /** Day of its middle, after the new year. */
  readonly day: number;
  /** Mean air of all twelve, K. */
  readonly months: readonly number[];
  readonly wave: heat.YearWave;
}

const NO_CLIMATE = { airTemperature: Number.NaN, relativeHumidity: Number.NaN, windSpeed: Number.NaN };
export const DESIGN_TEMPERATURE: Where = { collection: 'site', id: '-', field: 'designTemperature' };

const ALTITUDE = readingPath('site', '-', 'altitude');

/** Takes everything the day stands on for one basin. */
export function takeDesignDay(reader: SurveyReader, id: string): DesignDay {
  const at = (field: string): Where => ({ collection: 'basins', id, field });
  const indoors = reader.word(at('where')) === 'indoors';
  const cover = reader.word(at('cover'));
  reader.number({ collection: 'site', id: '-', field: 'altitude' });
  if (cover !== 'none') reader.number(at('coverHours'));
  if (indoors) {
    reader.number(at('airTemperature'));
    reader.number(at('airHumidity'));
    reader.numberOrUsual(at('activity'), { value: 0.5, kind: 'ratio' });
  }
  const method = indoors ? 'ashrae' : 'smith';
  const plusMinus = heat.EVAPORATION_TRAITS[method].relativeUncertainty;
  reader.parameters.push({ reading: EVAPORATION, value: 1, kind: 'ratio', plusMinus, assumed: false });
  return {
    indoors,
    cover: isCover(cover) ? cover : 'none',
    shelter: indoors ? 0 : shelterOf(reader),
    climate: indoors ? climateAround(reader, id) : monthClimate(reader, id),
    coverHours: readingPath('basins', id, 'coverHours'),
    airTemperature: readingPath('basins', id, 'airTemperature'),
    airHumidity: readingPath('basins', id, 'airHumidity'),
    activity: readingPath('basins', id, 'activity'),
  };
}

function isCover(name: string): name is heat.CoverName {
  return Object.hasOwn(heat.COVERS, name);
}

function shelterOf(reader: SurveyReader): number {
  const word = reader.word({ collection: 'site', id: '-', field: 'wind' });
  return Object.hasOwn(heat.SHELTER, word) ? heat.SHELTER[word as keyof typeof heat.SHELTER] : 1;
}

/** The design month of the site, else the coldest month of the basin's season. */
function monthClimate(reader: SurveyReader, id: string): MonthClimate | undefined {
  const climate = takeClimate(reader);
  if (climate === undefined) return undefined;
  const month = designMonth(reader, id, climate.months);
  if (month === undefined) return undefined;
  return { ...climateOfMonth(climate, month), ...coldAir(reader) };
}

function climateOfMonth({ source, name, months, take }: SiteClimate, month: number): MonthClimate {
  const [from = 0, to = 0] = heat.monthStarts(false).slice(month);
  const [day, wave] = [(from + to) / 2, heat.yearWave(months)];
  return { source, place: name, month: month + 1, day, months, wave, ...take(month) };
}

/** Around a hall: what its ground and mains follow from, where the job knows a climate; nothing is asked for it. */
function climateAround(reader: SurveyReader, id: string): MonthClimate | undefined {
  if (!hasClimate(reader)) return undefined;
  const climate = takeClimate(reader);
  if (climate === undefined) return undefined;
  const hasSeason = ['seasonFirst', 'seasonLast'].every((field) =>
    reader.has({ collection: 'basins', id, field }),
  );
  const month = hasSeason ? designMonth(reader, id, climate.months) : coldestOf(climate.months, () => true);
  return month === undefined ? undefined : climateOfMonth(climate, month);
}

/** Air that somebody sizes for in the stead of the month's. */
function coldAir(reader: SurveyReader): Partial<MonthAir> {
  if (!reader.has(DESIGN_TEMPERATURE)) return {};
  reader.number(DESIGN_TEMPERATURE);
  const { collection, id, field } = DESIGN_TEMPERATURE;
  return { airTemperature: readingPath(collection, id, field) };
}

function designMonth(reader: SurveyReader, id: string, temperatures: readonly number[]): number | undefined {
  const first = monthOf(reader, { collection: 'basins', id, field: 'seasonFirst' });
  const last = monthOf(reader, { collection: 'basins', id, field: 'seasonLast' });
  if (first === undefined || last === undefined) return undefined;
  const inSeason = (month: number): boolean =>
    first <= last ? month >= first && month <= last : month >= first || month <= last;
  const wanted = reader.has({ collection: 'site', id: '-', field: 'designMonth' })
    ? monthOf(reader, { collection: 'site', id: '-', field: 'designMonth' })
    : undefined;
  if (wanted !== undefined && inSeason(wanted)) return wanted;
  return coldestOf(temperatures, inSeason);
}

function coldestOf(temperatures: readonly number[], isAsked: (month: number) => boolean): number {
  const months = temperatures.map((_, month) => month).filter(isAsked);
  return months.reduce(
    (coldest, month) => ((temperatures[month] ?? 0) < (temperatures[coldest] ?? 0) ? month : coldest),
    months[0] ?? 0,
  );
}

/** 0 to 11, from the words 1 to 12. */
function monthOf(reader: SurveyReader, where: Where): number | undefined {
  const word = reader.word(where);
  if (word === '') return undefined;
  const month = Number(word);
  if (Number.isInteger(month) && month >= 1 && month <= 12) return month - 1;
  reader.refuse(where, { found: word, expected: ['1', '…', '12'] });
  return undefined;
}

export type Measures = Pick<heat.BasinGeometry, 'area' | 'wettedArea' | 'meanDepth'>;

/** The setting of the basin's surface and walls; of ground that follows from no climate nothing is counted. */
export function surfaceOf(day: DesignDay, { area, wettedArea }: Measures): heat.SurfaceSetting {
  return {
    ...heat.PLAIN_SURFACE,
    area,
    evaporation: day.indoors ? 'ashrae' : 'smith',
    skyView: day.indoors ? 0 : 1,
    cover: heat.COVERS[day.cover],
    groundConductance: day.climate === undefined ? 0 : heat.WALL_TRANSMITTANCE.sunk * wettedArea,
  };
}

export type Weather = Omit<heat.SurfaceState, 'waterTemperature'>;

/** What stands over, around and before the water on the mean of that day. */
export function weatherOf(day: DesignDay, { meanDepth }: Measures, values: Values): Weather {
  const pressure = properties.standardPressureAt(values(ALTITUDE));
  const covered = day.cover === 'none' ? 0 : Math.min(1, values(day.coverHours) / DAY);
  const air = day.indoors ? roomAir(day, values) : outdoorAir(day, values);
  const vapourPressure = air.relativeHumidity * properties.saturationPressureAt(air.airTemperature);
  const activity = values(EVAPORATION) * (day.indoors ? values(day.activity) : 1);
  return {
    airTemperature: air.airTemperature,
    airSpeed: air.airSpeed,
    vapourPressure,
    pressure,
    activity,
    covered,
    sun: 0,
    skyTemperature: day.indoors ? air.airTemperature : skyOver(day, { vapourPressure, ...air }, values),
    ...belowGround(day, meanDepth, air.airTemperature),
  };
}

function roomAir(day: DesignDay, values: Values) {
  return {
    airTemperature: values(day.airTemperature),
    relativeHumidity: values(day.airHumidity),
    airSpeed: ROOM_AIR_SPEED,
  };
}

function outdoorAir(day: DesignDay, values: Values) {
  const { airTemperature, relativeHumidity, windSpeed } = day.climate ?? NO_CLIMATE;
  return {
    airTemperature: figureOf(airTemperature, values),
    relativeHumidity: figureOf(relativeHumidity, values),
    airSpeed: figureOf(windSpeed, values) * windFactorOf(day),
  };
}

/** Ground along the walls and water of the mains in the middle of the month; without a climate as warm as the room. */
function belowGround({ climate }: DesignDay, depth: number, room: number) {
  if (climate === undefined) return { groundTemperature: room, mainsTemperature: room };
  const { wave: surface, day, months } = climate;
  const point = { surface, depth, day, diffusivity: heat.SOIL_DIFFUSIVITY };
  return {
    groundTemperature: heat.groundLayerTemperature(point),
    mainsTemperature: heat.mainsTemperature(months, Math.floor(day)),
  };
}

/** Wind at the water over that of the station. */
export function windFactorOf({ shelter }: DesignDay): number {
  return heat.windAtWater.kernel({
    stationWind: 1,
    stationHeight: STATION_HEIGHT,
    height: heat.HEIGHT_AT_WATER,
    roughness: heat.GRASS_ROUGHNESS,
    shelter,
  });
}

interface Overhead {
  readonly vapourPressure: number;
  readonly airTemperature: number;
}

function skyOver(
  { climate }: DesignDay,
  { vapourPressure, airTemperature }: Overhead,
  values: Values,
): number {
  const dew = properties.dewPointOf(vapourPressure);
  const cloud = figureOf(climate?.cloud ?? Number.NaN, values);
  return heat.skyTemperatureOf(heat.berdahlMartinEmissivity(dew), cloud, airTemperature);
}

/** Mean sun of that month on the level, W/m2, which the day leaves out; nothing where it is not known. */
export function sunOf({ climate, indoors }: DesignDay, values: Values): number | undefined {
  return indoors || climate?.sun === undefined ? undefined : figureOf(climate.sun, values);
}
