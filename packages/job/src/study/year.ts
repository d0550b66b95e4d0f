/**
 * A year of each basin by the hour: a pass of its own, for it takes a hundred times as long as everything else.
 *
 * Weather is that of the bundled place; each basin is marched by itself with the heaters it has, with its cover and
 * without. What the months leave open (rain, guests, a pump that rests) is not counted.
 */
import { fail, heat, type Issue, ok, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { nameOf } from './facts/subjects.ts';
import { SurveyReader, type Where } from './facts/survey-reader.ts';
import { type JobView, readingPath } from './facts/view.ts';
import { measureBasin, takeShape } from './plant/heat/basin-shape.ts';
import { type DesignDay, surfaceOf, takeDesignDay, windFactorOf } from './plant/heat/design-day.ts';
import { heatOutput, takeHeating } from './plant/heat/heating.ts';
import { ownValuesOf, type Values } from './plant/model.ts';

export interface YearOfUse {
  readonly answer: heat.YearAnswer;
  /** Absent where the price of the fuel is not known. */
  readonly cost?: heat.YearCost;
}

export interface BasinYearStudy {
  readonly id: string;
  readonly label: string;
  readonly covered: YearOfUse;
  readonly bare: YearOfUse;
}

export type YearStudy =
  | { readonly state: 'known'; readonly place: string; readonly basins: readonly BasinYearStudy[] }
  | { readonly state: 'unknown'; readonly missing: readonly string[] }
  | { readonly state: 'impossible'; readonly issues: readonly Issue[] };

/** Hours the cover is on are counted back from this hour of the morning. */
const UNCOVERED_AT = 8;

export interface YearOptions {
  /** Weather of a file in place of the bundled place's, and what to call it. */
  readonly weather?: { readonly hours: heat.HourlyWeather; readonly name: string };
}

export function yearOfJob(view: JobView, options: YearOptions = {}): YearStudy {
  const reader = new SurveyReader(view);
  const basins = view.all('basins').map((record) => takeYear(reader, record.id));
  if (basins.length === 0) return { state: 'unknown', missing: ['basins/pool/shape'] };
  const own = options.weather;
  // With weather of its own the job needs no place from the list.
  const missing = reader.missing.filter((path) => own === undefined || path !== CLIMATE_PLACE);
  if (missing.length > 0) return { state: 'unknown', missing };
  if (reader.wrong.length > 0) return { state: 'impossible', issues: reader.wrong };
  const weather = own ?? bundledWeather(reader);
  if ('issues' in weather) return { state: 'impossible', issues: weather.issues };
  const values = ownValuesOf(reader.parameters);
  const years: BasinYearStudy[] = [];
  for (const basin of basins) {
    const year = bothYears(view, basin, { weather: weather.hours, values });
    if (!year.ok) return { state: 'impossible', issues: year.issues };
    years.push(year.value);
  }
  return { state: 'known', place: weather.name, basins: years };
}

const CLIMATE_PLACE = 'site/-/climatePlace';

/** A typical year of the bundled place. */
function bundledWeather(
  reader: SurveyReader,
): NonNullable<YearOptions['weather']> | { issues: readonly Issue[] } {
  const climate = reader.wordOr({ collection: 'site', id: '-', field: 'climatePlace' }, '');
  const place = catalog.climate.PLACES.find((one) => one.id === climate);
  if (place === undefined)
    return { issues: [{ code: 'not-understood', where: CLIMATE_PLACE, found: climate }] };
  const made = heat.hourlyWeather(catalog.climate.normalsOf(place));
  return made.ok ? { hours: made.value, name: place.name } : { issues: made.issues };
}

type YearReadings = ReturnType<typeof takeYear>;

/** Takes what the year of a basin stands on. */
function takeYear(reader: SurveyReader, id: string) {
  const at = (field: string): Where => ({ collection: 'basins', id, field });
  reader.number(at('setTemperature'));
  const price = { collection: 'gasSupply', id: '-', field: 'price' };
  if (reader.has(price)) reader.number(price);
  return {
    id,
    shape: takeShape(reader, id),
    day: takeDesignDay(reader, id),
    burners: takeHeating(reader, id),
    first: Number(reader.word(at('seasonFirst'))),
    last: Number(reader.word(at('seasonLast'))),
    weekends: reader.wordOr(at('days'), 'all') === 'weekends',
    setBack: takeSetBack(reader, at),
    priced: reader.has(price),
    propane: reader.word({ ...price, field: 'fuel' }) === 'propane',
  };
}

/** Whether the water is let down for some hours; then from when to when and how far are needed. */
function takeSetBack(reader: SurveyReader, at: (field: string) => Where): boolean {
  if (!reader.has(at('setBackTemperature'))) return false;
  for (const field of ['setBackTemperature', 'setBackFrom', 'setBackTo']) reader.number(at(field));
  return true;
}

interface YearContext {
  readonly weather: heat.HourlyWeather;
  readonly values: Values;
}

function bothYears(view: JobView, basin: YearReadings, context: YearContext): Result<BasinYearStudy> {
  const covered = yearOf(basin, context, basin.day.cover !== 'none');
  if (!covered.ok) return covered;
  const bare = basin.day.cover === 'none' ? covered : yearOf(basin, context, false);
  if (!bare.ok) return bare;
  const label = nameOf('basins', view.record('basins', basin.id));
  return ok({ id: basin.id, label, covered: covered.value, bare: bare.value });
}

function yearOf(basin: YearReadings, context: YearContext, withCover: boolean): Result<YearOfUse> {
  const question = questionOf(basin, context, withCover);
  if (!question.ok) return question;
  const answer = heat.poolYear(question.value);
  if (!answer.ok) return answer;
  if (!basin.priced) return ok({ answer: answer.value });
  const fuelTariff = heat.flatTariff(context.values(readingPath('gasSupply', '-', 'price')));
  const cost = heat.yearCost(answer.value, { fuel: basin.propane ? 'propane' : 'natural', fuelTariff });
  return cost.ok ? ok({ answer: answer.value, cost: cost.value }) : cost;
}

function questionOf(
  basin: YearReadings,
  { weather, values }: YearContext,
  withCover: boolean,
): Result<heat.YearQuestion> {
  const measured = measureBasin(basin.shape, values);
  if (!measured.ok) return measured;
  const output = heatOutput(basin.burners, values);
  if (!output.ok) return output;
  const season = {
    from: { month: basin.first, day: 1 },
    to: { month: basin.last, day: DAYS[basin.last - 1] ?? 28 },
  };
  const temperature = values(readingPath('basins', basin.id, 'setTemperature'));
  const setPoint = heat.setPoints({ temperature, season, ...habits(basin, values) }, weather);
  const covered = heat.coveredHours({ day: coverDay(basin.day, values, withCover) }, weather);
  if (!setPoint.ok) return setPoint;
  if (!covered.ok) return covered;
  const inputs = basin.burners.map(({ efficiency }) => values(efficiency));
  const efficiency = inputs.reduce((sum, one) => sum + one, 0) / inputs.length;
  if (!(efficiency > 0)) return fail({ code: 'ill-formed', where: 'heaters', reason: 'none' });
  return ok({
    weather,
    basins: [
      {
        setting: {
          ...surfaceOf(basin.day, measured.value.area),
          groundConductance: heat.WALL_TRANSMITTANCE.sunk * measured.value.wettedArea,
        },
        volume: measured.value.volume,
        exposure: exposureOf(basin, measured.value.meanDepth, values),
        setPoint: setPoint.value,
        covered: covered.value,
        ...(basin.day.indoors
          ? { activity: new Float64Array(weather.hours).fill(values(basin.day.activity)) }
          : {}),
      },
    ],
    heater: { output: output.value, efficiency },
  });
}

/** Friday noon to the end of Sunday: the water is warm when the weekend begins. */
const WEEKEND = { from: { weekday: 5, hour: 12 }, to: { weekday: 1, hour: 0 } } as const;

/** Set-back and weekends, as the engine's plan of a year has them. */
function habits(
  { id, weekends, setBack }: YearReadings,
  values: Values,
): Pick<heat.SetPointPlan, 'setBack' | 'week'> {
  const of = (field: string): number => values(readingPath('basins', id, field));
  return {
    ...(weekends ? { week: WEEKEND } : {}),
    ...(setBack
      ? {
          setBack: {
            from: of('setBackFrom') / 3600,
            to: of('setBackTo') / 3600,
            temperature: of('setBackTemperature'),
          },
        }
      : {}),
  };
}

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function coverDay(day: DesignDay, values: Values, withCover: boolean): heat.CoverHours {
  if (!withCover) return heat.coveredBetween(0, 0);
  const hours = Math.min(24, values(day.coverHours) / 3600);
  if (hours >= 24) return heat.coveredBetween(0, 24);
  return heat.coveredBetween((UNCOVERED_AT - hours + 24) % 24, UNCOVERED_AT);
}

function exposureOf({ day }: YearReadings, wallDepth: number, values: Values): heat.Exposure {
  if (!day.indoors) return { windFactor: windFactorOf(day), wallDepth };
  const room = {
    airTemperature: values(day.airTemperature),
    relativeHumidity: values(day.airHumidity),
    airSpeed: 0.1,
  };
  return { windFactor: 0, wallDepth, room };
}
