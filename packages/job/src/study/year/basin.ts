/** One basin as the engine's year asks for it: surface, set point and cover of every hour. */
import { heat, ok, type Result } from '@firstfire/engine';
import { readingPath } from '../facts/view.ts';
import { measureBasin } from '../plant/heat/basin-shape.ts';
import { type DesignDay, surfaceOf, windFactorOf } from '../plant/heat/design-day.ts';
import type { Values } from '../plant/model.ts';
import type { YearReadings } from './readings.ts';

export interface YearContext {
  readonly weather: heat.HourlyWeather;
  readonly values: Values;
}

/** Hours the cover is on are counted back from this hour of the morning. */
const UNCOVERED_AT = 8;
/** Friday noon to the end of Sunday: the water is warm when the weekend begins. */
const WEEKEND = { from: { weekday: 5, hour: 12 }, to: { weekday: 1, hour: 0 } } as const;
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const HOUR = 3600;

export function yearBasinOf(
  basin: YearReadings,
  { weather, values }: YearContext,
  withCover: boolean,
): Result<heat.YearBasin> {
  const measured = measureBasin(basin.shape, values);
  if (!measured.ok) return measured;
  const temperature = values(readingPath('basins', basin.id, 'setTemperature'));
  const plan = { temperature, season: seasonOf(basin), ...habits(basin, values) };
  const setPoint = heat.setPoints(plan, weather);
  if (!setPoint.ok) return setPoint;
  const covered = heat.coveredHours({ day: coverDay(basin.day, values, withCover) }, weather);
  if (!covered.ok) return covered;
  return ok({
    setting: {
      ...surfaceOf(basin.day, measured.value),
      groundConductance: heat.WALL_TRANSMITTANCE.sunk * measured.value.wettedArea,
    },
    volume: measured.value.volume,
    exposure: exposureOf(basin, measured.value.meanDepth, values),
    setPoint: setPoint.value,
    covered: covered.value,
    ...(basin.day.indoors
      ? { activity: new Float64Array(weather.hours).fill(values(basin.day.activity)) }
      : {}),
  });
}

/** First day of the first month to the last day of the last. */
export function seasonOf({ first, last }: YearReadings): heat.Season {
  return { from: { month: first, day: 1 }, to: { month: last, day: DAYS[last - 1] ?? 28 } };
}

/** Set-back and weekends, as the engine's plan of a year has them. */
function habits(
  { id, weekends, setBack }: YearReadings,
  values: Values,
): Pick<heat.SetPointPlan, 'setBack' | 'week'> {
  const of = (field: string): number => values(readingPath('basins', id, field));
  const plan = () => ({
    from: of('setBackFrom') / HOUR,
    to: of('setBackTo') / HOUR,
    temperature: of('setBackTemperature'),
  });
  return { ...(weekends ? { week: WEEKEND } : {}), ...(setBack ? { setBack: plan() } : {}) };
}

export interface CoverWindow {
  /** Hours of the clock at which the cover goes on and comes off; 0 and 24 where it is never off. */
  readonly on: number;
  readonly off: number;
}

/** When a cover that is on for so many hours a day is on. */
export function coverWindow(hours: number): CoverWindow {
  if (hours >= 24) return { on: 0, off: 24 };
  return { on: (UNCOVERED_AT - hours + 24) % 24, off: UNCOVERED_AT };
}

function coverDay(day: DesignDay, values: Values, withCover: boolean): heat.CoverHours {
  if (!withCover) return heat.coveredBetween(0, 0);
  const { on, off } = coverWindow(values(day.coverHours) / HOUR);
  return heat.coveredBetween(on, off);
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
