/**
 * The header of a weather file: where the station is, which weekday the year begins on, the ground beneath.
 *
 * Source: EnergyPlus Weather File (EPW) Data Dictionary: LOCATION, GROUND TEMPERATURES, DATA PERIODS.
 */
import { HOUR, ZERO_CELSIUS } from '../../../quantity/index.ts';
import { fail, type Issue, ok, type Result } from '../../../trace/index.ts';
import { MONTHS } from '../calendar.ts';
import { placeIssues } from '../normals.ts';
import type { Place } from '../weather.ts';
import type { Lines } from './lines.ts';
import { fieldNumber } from './number.ts';

export interface GroundLayer {
  /** m. */
  readonly depth: number;
  /** Twelve monthly means, K. */
  readonly months: readonly number[];
}

export interface EpwHeader {
  readonly city: string;
  /** Number of the weather station, as text. */
  readonly station: string;
  readonly place: Place;
  readonly ground: readonly GroundLayer[];
  /** Weekday of 1 January, 0 is Sunday. */
  readonly firstWeekday: number;
}

const HEADER_LINES = 8;
const WEEKDAYS = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];
const LONGEST_NAME = 80;

/** Reads the eight lines of the header; the next line is the first hour. */
export function readHeader(lines: Lines): Result<EpwHeader> {
  const records = new Map<string, { readonly fields: readonly string[]; readonly line: number }>();
  for (let i = 0; i < HEADER_LINES; i++) {
    const line = lines.next();
    if (line === undefined) return fail({ code: 'ill-formed', where: `line.${i + 1}`, reason: 'file-ends' });
    const fields = line.split(',', 200);
    records.set((fields[0] ?? '').trim().toUpperCase(), { fields, line: i + 1 });
  }
  const location = records.get('LOCATION');
  const periods = records.get('DATA PERIODS');
  if (!location)
    return fail({ code: 'ill-formed', where: 'line.1', reason: 'no-record', expected: ['LOCATION'] });
  if (!periods)
    return fail({ code: 'ill-formed', where: 'line.8', reason: 'no-record', expected: ['DATA PERIODS'] });
  const weekday = firstWeekday(periods.fields, periods.line);
  if (!weekday.ok) return weekday;
  const place = placeOf(location.fields);
  const issues = placeIssues(place).map((issue) => ({
    ...issue,
    where: `line.${location.line}.${issue.where}`,
  }));
  if (issues.length > 0) return fail(...issues);
  const ground = groundLayers(records.get('GROUND TEMPERATURES')?.fields ?? []);
  const [city, station] = [location.fields[1], location.fields[5]].map((x) =>
    (x ?? '').trim().slice(0, LONGEST_NAME),
  );
  return ok({ city: city ?? '', station: station ?? '', place, ground, firstWeekday: weekday.value });
}

function placeOf(fields: readonly string[]): Place {
  const at = (i: number): number => fieldNumber(fields[i]) ?? Number.NaN;
  return {
    latitude: (at(6) * Math.PI) / 180,
    longitude: (at(7) * Math.PI) / 180,
    timeZone: at(8) * HOUR,
    elevation: at(9),
  };
}

/** One period of whole hours is what a year is made of; its weekday, or Sunday where none is given. */
function firstWeekday(fields: readonly string[], line: number): Result<number> {
  const refuse = (what: string, found: string | undefined, expected: readonly string[]): Result<number> =>
    fail({ code: 'ill-formed', where: `line.${line}.${what}`, found: found ?? '', expected } satisfies Issue);
  if (fieldNumber(fields[1]) !== 1) return refuse('data-periods', fields[1], ['1']);
  if (fieldNumber(fields[2]) !== 1) return refuse('records-per-hour', fields[2], ['1']);
  const name = (fields[4] ?? '').trim().toLowerCase().slice(0, 3);
  if (name === '') return ok(0);
  const weekday = WEEKDAYS.indexOf(name);
  return weekday < 0 ? refuse('weekday', fields[4], ['Sunday', 'Monday']) : ok(weekday);
}

/** Layers whose twelve months are all numbers; a header without them is common and no fault. */
function groundLayers(fields: readonly string[]): GroundLayer[] {
  const layers: GroundLayer[] = [];
  for (let i = 2; i + 4 + MONTHS <= fields.length; i += 4 + MONTHS) {
    const depth = fieldNumber(fields[i]);
    const months = fields
      .slice(i + 4, i + 4 + MONTHS)
      .map((x) => (fieldNumber(x) ?? Number.NaN) + ZERO_CELSIUS);
    if (depth !== undefined && depth >= 0 && months.every(Number.isFinite)) layers.push({ depth, months });
  }
  return layers;
}
