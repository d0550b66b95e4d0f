/** A year of weather as the text of an EPW file: fields as the EPW data dictionary orders them. */
import type { heat } from '@firstfire/engine';

const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const DEGREE = Math.PI / 180;
const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];

export function epwText(city: string, weather: heat.HourlyWeather): string {
  const days = MONTHS.flatMap((length, m) => Array.from({ length }, (_, d) => `${m + 1},${d + 1}`));
  const hours = days.flatMap((day, d) =>
    Array.from({ length: 24 }, (_, h) => `2001,${day},${h + 1},0,?9,${fields(weather, 24 * d + h)}`),
  );
  return [...header(city, weather), ...hours].join('\n');
}

function header(city: string, { place, firstWeekday }: heat.HourlyWeather): string[] {
  const { latitude, longitude, timeZone, elevation } = place;
  const where = [latitude / DEGREE, longitude / DEGREE, timeZone / 3600, elevation];
  return [
    `LOCATION,${city},-,-,invented,0,${where.map((x) => x.toFixed(2)).join()}`,
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,',
    'COMMENTS 2,',
    `DATA PERIODS,1,1,Data,${WEEKDAYS[firstWeekday]}, 1/ 1,12/31`,
  ];
}

/** Dry bulb to opaque cover, fields 7 to 24; what a pool does not feel is left missing. */
function fields(weather: heat.HourlyWeather, i: number): string {
  const at = (array: Float64Array, digits: number, scale = 1): string =>
    ((array[i] ?? Number.NaN) * scale).toFixed(digits);
  const celsius = (array: Float64Array): string => ((array[i] ?? Number.NaN) - 273.15).toFixed(1);
  return [
    celsius(weather.airTemperature),
    celsius(weather.dewPoint),
    at(weather.relativeHumidity, 0, 100),
    at(weather.pressure, 0),
    ...['9999', '9999', '9999'],
    at(weather.globalRadiation, 0),
    ...['9999', '9999', '999999', '999999', '999999', '9999', '999'],
    at(weather.windSpeed, 1),
    at(weather.cloud, 0, 10),
    at(weather.cloud, 0, 10),
  ].join();
}
