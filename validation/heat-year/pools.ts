/** The pool of the published annual figures, marched through a place's typical year. */
import { expectOk, heat, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';

const { SQUARE_FOOT } = quantity;

/** Water over the airport's wind: the middle of the range in which published costs are met. */
export const WIND_FACTOR = 0.225;
const AREA = 1000 * SQUARE_FOOT;
const MEAN_DEPTH = 1.5;

export interface PoolCase {
  readonly place: string;
  readonly season: heat.Season;
  /** °F. */
  readonly set: number;
  /** Hours of each day under a bubble cover, about midnight. */
  readonly coveredHours: number;
}

const weathers = new Map<string, heat.HourlyWeather>();

function weatherOf(id: string): heat.HourlyWeather {
  const known = weathers.get(id);
  if (known) return known;
  const place = catalog.climate.PLACES.find((one) => one.id === id);
  if (!place) throw new Error(`no place ${id}`);
  const weather = expectOk(heat.hourlyWeather(catalog.climate.normalsOf(place)));
  weathers.set(id, weather);
  return weather;
}

/** A year of an outdoor pool of 1,000 ft2 with a heater that is never short. */
export function poolYearOf({ place, season, set, coveredHours }: PoolCase): heat.YearAnswer {
  const weather = weatherOf(place);
  const half = coveredHours / 2;
  const day = coveredHours === 0 ? heat.coveredBetween(0, 0) : heat.coveredBetween(24 - half, half);
  const basin: heat.YearBasin = {
    setting: { ...heat.PLAIN_SURFACE, area: AREA, cover: heat.COVERS.bubble },
    volume: AREA * MEAN_DEPTH,
    exposure: { windFactor: WIND_FACTOR, wallDepth: MEAN_DEPTH },
    setPoint: expectOk(heat.setPoints({ temperature: (set + 459.67) / 1.8, season }, weather)),
    covered: expectOk(heat.coveredHours({ day }, weather)),
  };
  return expectOk(heat.poolYear({ weather, basins: [basin], heater: { output: 1e6, efficiency: 0.8 } }));
}

/** Heat into the water in a year, J. */
export function heatOf(year: heat.YearAnswer): number {
  return year.basins.reduce((sum, basin) => sum + basin.flows.heater.reduce((a, b) => a + b, 0), 0);
}
