/** Places in a weather file, as a person finds them: by line and column. */
import { heat } from '@firstfire/engine';
import { type Dictionary, fill } from '@firstfire/words';

/** Everything in a weather file that can be wrong or missing. */
const FIELDS: Readonly<Record<string, string>> = {
  airTemperature: 'weather.airTemperature',
  dewPoint: 'weather.dewPoint',
  relativeHumidity: 'weather.relativeHumidity',
  pressure: 'weather.pressure',
  skyRadiation: 'weather.skyRadiation',
  globalRadiation: 'weather.globalRadiation',
  windSpeed: 'weather.windSpeed',
  totalCover: 'weather.totalCover',
  opaqueCover: 'weather.opaqueCover',
  cloud: 'weather.cloud',
  'place.latitude': 'weather.place.latitude',
  'place.longitude': 'weather.place.longitude',
  'place.timeZone': 'weather.place.timeZone',
  'place.elevation': 'weather.place.elevation',
  'data-periods': 'weather.data-periods',
  'records-per-hour': 'weather.records-per-hour',
  weekday: 'weather.weekday',
};

function fieldName(field: string, { phrases }: Dictionary): string {
  return phrases[FIELDS[field] ?? ''] ?? field;
}

/** `line.20.windSpeed` → `line 20, column 22 (wind speed)`. */
export function weatherPlace(where: string, words: Dictionary): string {
  const { phrases } = words;
  const [, line, field] = /^line\.(\d+)(?:\.(.+))?$/.exec(where) ?? [];
  if (line === undefined) return where;
  if (field === undefined) return fill(phrases['weather.line'] ?? '', { line });
  const name = fieldName(field, words);
  const column = columnOf(field);
  if (column === undefined) return fill(phrases['weather.field'] ?? '', { line, field: name });
  return fill(phrases['weather.column'] ?? '', { line, column: String(column), field: name });
}

/** Counted from 1, as editors and spreadsheets do. */
function columnOf(field: string): number | undefined {
  return Object.hasOwn(heat.EPW_COLUMNS, field)
    ? heat.EPW_COLUMNS[field as heat.EpwColumnName].at + 1
    : undefined;
}

/** `wind speed 3 h, dew point 12 h`, or nothing. */
export function filledText(filled: Readonly<Record<string, number>>, words: Dictionary): string {
  const { phrases } = words;
  const arrays = Object.entries(filled).map(([array, hours]) =>
    fill(phrases['year.filled-hours'] ?? '', { array: fieldName(array, words), hours: String(hours) }),
  );
  return arrays.length === 0 ? '' : fill(phrases['year.filled'] ?? '', { arrays: arrays.join(', ') });
}
