/** A year of one unchanging hour: for what must hold in any weather, and for a day taken to last. */
import { saturationPressureAt } from '../../properties/index.ts';
import { HOURS_A_YEAR, type HourlyWeather } from '../climate/index.ts';

export interface SteadyHour {
  /** K. */
  readonly airTemperature: number;
  /** K. */
  readonly dewPoint: number;
  /** m/s at the station. */
  readonly windSpeed: number;
  /** W/m2. */
  readonly globalRadiation: number;
  /** Share of the sky. */
  readonly cloud: number;
  /** Pa. */
  readonly pressure: number;
}

/** That hour, all year. */
export function steadyWeather(hour: SteadyHour, hours: number = HOURS_A_YEAR): HourlyWeather {
  const all = (value: number): Float64Array => new Float64Array(hours).fill(value);
  return {
    place: { latitude: 0, longitude: 0, timeZone: 0, elevation: 0 },
    hours,
    firstWeekday: 0,
    airTemperature: all(hour.airTemperature),
    dewPoint: all(hour.dewPoint),
    relativeHumidity: all(saturationPressureAt(hour.dewPoint) / saturationPressureAt(hour.airTemperature)),
    windSpeed: all(hour.windSpeed),
    globalRadiation: all(hour.globalRadiation),
    cloud: all(hour.cloud),
    pressure: all(hour.pressure),
    skyRadiation: all(Number.NaN),
  };
}
