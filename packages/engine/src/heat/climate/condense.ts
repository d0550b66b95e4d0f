/**
 * A year by the hour condensed to what a design day needs: twelve monthly means, and the air of the cold hours.
 *
 *     month     T, φ, v, N = mean of the hours of the month;   H = mean of G · a day
 *     cold air  the temperature that a share of all hours of the year stands above, straight between hours
 *
 * Relative humidity is the mean of the hours, as station tables print it. A swing of the day is not kept.
 *
 * Source: means are arithmetic; the share of 99 % (or 99.6 %) of the year's hours is the heating dry bulb of ASHRAE
 * Handbook Fundamentals, Climatic Design Information (from memory). The handbook takes it from many years on end: a
 * single typical year leaves rare cold out and lies some kelvins above it.
 * Range: any year that `readEpw` or `hourlyWeather` gives; share over 0 and under 1.
 * Errors: none; the functions are total.
 *
 * Worked example: hours whose air rises evenly from −10 to 30 °C over the year → 99 % stand above −9.6 °C.
 */
import { HOUR } from '../../quantity/index.ts';
import type { MonthlyNormals } from './normals.ts';
import { type HourlyWeather, monthlyMeansOf } from './weather.ts';

/** Share of the hours of a year that the handbook's usual heating dry bulb lies under. */
export const COLD_HOURS_ABOVE = 0.99;

/** Twelve monthly means of a year by the hour. */
export function normalsOfYear(
  weather: HourlyWeather,
): Required<Omit<MonthlyNormals, 'dewPoint' | 'dailySwing'>> {
  return {
    place: weather.place,
    airTemperature: monthlyMeansOf(weather.airTemperature),
    relativeHumidity: monthlyMeansOf(weather.relativeHumidity),
    windSpeed: monthlyMeansOf(weather.windSpeed),
    globalRadiation: monthlyMeansOf(weather.globalRadiation).map((flux) => flux * 24 * HOUR),
    cloud: monthlyMeansOf(weather.cloud),
  };
}

/** The air temperature (K) that the share of all hours stands above. */
export function heatingDryBulb(
  { airTemperature }: Pick<HourlyWeather, 'airTemperature'>,
  share: number,
): number {
  const rising = Float64Array.from(airTemperature).sort();
  const at = Math.min(rising.length - 1, Math.max(0, (1 - share) * (rising.length - 1)));
  const below = Math.floor(at);
  const [low = Number.NaN, high = low] = [rising[below], rising[below + 1]];
  return low + (at - below) * (high - low);
}
