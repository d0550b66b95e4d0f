/** A place's climate as a table prints it, and as the engine takes it. */
import { type heat, quantity, type Source } from '@firstfire/engine';

export interface ClimatePlace {
  readonly id: string;
  readonly name: string;
  /** Number of the weather station. */
  readonly station: string;
  readonly source: Source;
  /** Degrees, north and east positive. */
  readonly latitude: number;
  readonly longitude: number;
  /** Standard time, hours ahead of Greenwich. */
  readonly timeZone: number;
  /** m. */
  readonly elevation: number;
  /** Twelve monthly means, °C. */
  readonly airTemperature: readonly number[];
  /** °C. */
  readonly dewPoint?: readonly number[];
  /** %. */
  readonly relativeHumidity: readonly number[];
  /** m/s at 10 m. */
  readonly windSpeed: readonly number[];
  /** kWh/m2 a day, horizontal. */
  readonly globalRadiation: readonly number[];
  /** Tenths of the sky. */
  readonly cloud?: readonly number[];
  /** Mean daily high minus low, K. */
  readonly dailySwing?: readonly number[];
  /** Long-wave radiation of the sky on a horizontal surface, W/m2: to check a model by, not an input of it. */
  readonly skyRadiation?: readonly number[];
  /** °C at the depths of `GROUND_DEPTHS`: to check a model by. */
  readonly ground?: readonly (readonly number[])[];
}

/** m. */
export const GROUND_DEPTHS = [0.5, 2, 4] as const;

const { HOUR, ZERO_CELSIUS } = quantity;
const DEGREE = Math.PI / 180;
const KILOWATT_HOUR = 1000 * HOUR;

/** The normals of a place in the engine's units. */
export function normalsOf(place: ClimatePlace): heat.MonthlyNormals {
  return {
    place: {
      latitude: place.latitude * DEGREE,
      longitude: place.longitude * DEGREE,
      timeZone: place.timeZone * HOUR,
      elevation: place.elevation,
    },
    airTemperature: place.airTemperature.map((t) => t + ZERO_CELSIUS),
    relativeHumidity: place.relativeHumidity.map((percent) => percent / 100),
    windSpeed: place.windSpeed,
    globalRadiation: place.globalRadiation.map((energy) => energy * KILOWATT_HOUR),
    ...(place.dewPoint ? { dewPoint: place.dewPoint.map((t) => t + ZERO_CELSIUS) } : {}),
    ...(place.cloud ? { cloud: place.cloud.map((tenths) => tenths / 10) } : {}),
    ...(place.dailySwing ? { dailySwing: place.dailySwing } : {}),
  };
}
