/**
 * What the weather does at one basin, hour by hour: the station's weather brought to the water's edge.
 *
 * Wind is multiplied by one factor (see `windAtWater`); the vapour pressure is that of the dew point; the sky's
 * temperature is that of its long-wave radiation, (IR/σ)^¼, and where none is given that of Berdahl and Martin's form,
 * refitted, with cloud. The ground is the mean of the layer as deep as the wall, with the first harmonic of the air at its
 * surface. Indoors the room's air stands all year, without sky or sun.
 *
 * How sources disagree: the long-wave radiation in typical-year files was not measured but computed, by Clark and
 * Allen's equation (met here within 8 W/m2 a month); Berdahl and Martin as first printed stands 17 W/m2 under it. The
 * refitted form, nearest to measured skies, stands 1 W/m2 over it in the mean of nine cities and is used.
 *
 * Source: the files imported, each with its own.
 * Range: wind factor 0 to 1.5, wall depth 0 to 30 m; rooms of 0 to 50 °C.
 * Errors: values outside are issues.
 */
import { saturationPressureAt } from '../../properties/index.ts';
import { fail, type Issue, ok, type Result, variableIssue } from '../../trace/index.ts';
import {
  groundLayerTemperature,
  HOURS_A_DAY,
  type HourlyWeather,
  mainsTemperature,
  monthlyMeansOf,
  SOIL_DIFFUSIVITY,
  yearWave,
} from '../climate/index.ts';
import { berdahlMartinRefitted, STEFAN_BOLTZMANN, skyTemperatureOf } from '../surface/index.ts';

export interface RoomAir {
  /** K. */
  readonly airTemperature: number;
  /** 0 to 1. */
  readonly relativeHumidity: number;
  /** m/s over the water. */
  readonly airSpeed: number;
}

export interface Exposure {
  /** Wind at the water over that of the station. */
  readonly windFactor: number;
  /** Depth of the walls in the ground, m. */
  readonly wallDepth: number;
  /** Air of the room, for a basin indoors. */
  readonly room?: RoomAir;
}

/** Flat arrays, one value an hour. */
export interface Forcing {
  readonly airTemperature: Float64Array;
  readonly vapourPressure: Float64Array;
  readonly pressure: Float64Array;
  readonly airSpeed: Float64Array;
  readonly skyTemperature: Float64Array;
  readonly sun: Float64Array;
  readonly groundTemperature: Float64Array;
  readonly mainsTemperature: Float64Array;
}

const WIND_FACTOR = { symbol: 's', kind: 'ratio', min: 0, max: 1.5 } as const;
const WALL_DEPTH = { symbol: 'z', kind: 'length', min: 0, max: 30 } as const;
const ROOM = {
  airTemperature: { symbol: 'Ta', kind: 'temperature', min: 273.15, max: 323.15 },
  relativeHumidity: { symbol: 'φ', kind: 'ratio', min: 0, max: 1 },
  airSpeed: { symbol: 'v', kind: 'velocity', min: 0, max: 15 },
} as const;

/** The weather at a basin. */
export function forcingOf(weather: HourlyWeather, exposure: Exposure): Result<Forcing> {
  const issues = exposureIssues(exposure);
  if (issues.length > 0) return fail(...issues);
  const air = exposure.room ? indoors(weather, exposure.room) : outdoors(weather, exposure.windFactor);
  return ok({ ...air, ...underground(weather, exposure.wallDepth), pressure: weather.pressure });
}

function exposureIssues({ windFactor, wallDepth, room }: Exposure): Issue[] {
  const inside = (Object.keys(ROOM) as (keyof RoomAir)[]).map((name) =>
    room ? variableIssue(`exposure.room.${name}`, room[name], ROOM[name]) : undefined,
  );
  return [
    variableIssue('exposure.windFactor', windFactor, WIND_FACTOR),
    variableIssue('exposure.wallDepth', wallDepth, WALL_DEPTH),
    ...inside,
  ].filter((issue) => issue !== undefined);
}

type Above = Omit<Forcing, 'groundTemperature' | 'mainsTemperature' | 'pressure'>;

function outdoors(weather: HourlyWeather, windFactor: number): Above {
  return {
    airTemperature: weather.airTemperature,
    vapourPressure: weather.dewPoint.map(saturationPressureAt),
    airSpeed: weather.windSpeed.map((v) => v * windFactor),
    skyTemperature: skyTemperatures(weather),
    sun: weather.globalRadiation,
  };
}

function indoors({ hours }: HourlyWeather, room: RoomAir): Above {
  const all = (value: number): Float64Array => new Float64Array(hours).fill(value);
  return {
    airTemperature: all(room.airTemperature),
    vapourPressure: all(room.relativeHumidity * saturationPressureAt(room.airTemperature)),
    airSpeed: all(room.airSpeed),
    skyTemperature: all(room.airTemperature),
    sun: all(0),
  };
}

/** K, every hour. */
export function skyTemperatures(weather: HourlyWeather): Float64Array {
  return weather.skyRadiation.map((radiation, i) => {
    if (radiation > 0) return (radiation / STEFAN_BOLTZMANN) ** 0.25;
    const clear = berdahlMartinRefitted.kernel({ dewPoint: weather.dewPoint[i] ?? 0 });
    return skyTemperatureOf(clear, weather.cloud[i] ?? 0, weather.airTemperature[i] ?? 0);
  });
}

function underground(
  weather: HourlyWeather,
  depth: number,
): Pick<Forcing, 'groundTemperature' | 'mainsTemperature'> {
  const months = monthlyMeansOf(weather.airTemperature);
  const surface = yearWave(months);
  const groundTemperature = new Float64Array(weather.hours);
  const mains = new Float64Array(weather.hours);
  for (let day = 0; day * HOURS_A_DAY < weather.hours; day++) {
    const [from, to] = [day * HOURS_A_DAY, (day + 1) * HOURS_A_DAY];
    const point = { surface, depth, day: day + 0.5, diffusivity: SOIL_DIFFUSIVITY };
    groundTemperature.fill(groundLayerTemperature(point), from, to);
    mains.fill(mainsTemperature(months, day), from, to);
  }
  return { groundTemperature, mainsTemperature: mains };
}
