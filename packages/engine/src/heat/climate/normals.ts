/** Climate of a place as twelve monthly means: what a table prints, and what is checked before an hourly year is made. */
import { fail, type Issue, ok, type Result, type Variable, variableIssue } from '../../trace/index.ts';
import { MONTHS, monthStarts } from './calendar.ts';
import { extraterrestrialOfDay } from './solar.ts';
import type { Place } from './weather.ts';

export interface MonthlyNormals {
  readonly place: Place;
  /** K. */
  readonly airTemperature: readonly number[];
  /** K; it goes before the relative humidity where both are given. */
  readonly dewPoint?: readonly number[];
  /** 0 to 1. */
  readonly relativeHumidity?: readonly number[];
  /** m/s at 10 m. */
  readonly windSpeed: readonly number[];
  /** J/m2 a day on a horizontal surface. */
  readonly globalRadiation: readonly number[];
  /** Share of the sky covered, 0 to 1. */
  readonly cloud?: readonly number[];
  /** Mean daily high minus mean daily low, K. */
  readonly dailySwing?: readonly number[];
}

const RANGES = {
  airTemperature: { symbol: 'T', kind: 'temperature', min: 213.15, max: 323.15 },
  dewPoint: { symbol: 'Td', kind: 'temperature', min: 203.15, max: 308.15 },
  relativeHumidity: { symbol: 'φ', kind: 'ratio', min: 0.01, max: 1 },
  windSpeed: { symbol: 'v', kind: 'velocity', min: 0, max: 25 },
  globalRadiation: { symbol: 'H', kind: 'heat-flux', min: 0, max: 45e6 },
  cloud: { symbol: 'N', kind: 'ratio', min: 0, max: 1 },
  dailySwing: { symbol: 'A', kind: 'temperature-difference', min: 0, max: 30 },
} satisfies Record<string, Variable>;

const PLACE_RANGES = {
  latitude: { symbol: 'φ', kind: 'angle', min: -Math.PI / 2, max: Math.PI / 2 },
  longitude: { symbol: 'λ', kind: 'angle', min: -Math.PI, max: Math.PI },
  timeZone: { symbol: 'tz', kind: 'time', min: -12 * 3600, max: 14 * 3600 },
  elevation: { symbol: 'z', kind: 'length', min: -500, max: 6000 },
} satisfies Record<string, Variable>;

/** Highest clearness index a month can have; above it the sunshine or the latitude is wrong. */
const CLEAREST_MONTH = 0.85;

/** The normals themselves if every value can be true, else what cannot. Places in a table count from 1. */
export function checkedNormals(normals: MonthlyNormals): Result<MonthlyNormals> {
  const issues: Issue[] = [...placeIssues(normals.place)];
  for (const name of Object.keys(RANGES) as (keyof typeof RANGES)[]) {
    const values = normals[name];
    if (values !== undefined) issues.push(...tableIssues(name, values));
  }
  if (!(normals.dewPoint || normals.relativeHumidity))
    issues.push({ code: 'ill-formed', where: 'dewPoint', reason: 'no-humidity' });
  if (issues.length === 0) issues.push(...tooClear(normals));
  return issues.length > 0 ? fail(...issues) : ok(normals);
}

/** Issues of a place on earth. */
export function placeIssues(place: Place): Issue[] {
  return (Object.keys(PLACE_RANGES) as (keyof typeof PLACE_RANGES)[]).flatMap((name) => {
    const issue = variableIssue(`place.${name}`, place[name], PLACE_RANGES[name]);
    return issue ? [issue] : [];
  });
}

function tableIssues(name: keyof typeof RANGES, values: readonly number[]): Issue[] {
  if (values.length !== MONTHS)
    return [{ code: 'ill-formed', where: name, found: values.length, reason: 'not-twelve-months' }];
  return values.flatMap((value, m) => {
    const issue = variableIssue(`${name}.${m + 1}`, value, RANGES[name]);
    return issue ? [issue] : [];
  });
}

function tooClear({ place, globalRadiation }: MonthlyNormals): Issue[] {
  return globalRadiation.flatMap((value, m) => {
    const max = CLEAREST_MONTH * extraterrestrialOfMonth(place.latitude, m);
    if (value <= max) return [];
    return [
      { code: 'out-of-range', where: `globalRadiation.${m + 1}`, found: value, max, kind: 'heat-flux' },
    ];
  });
}

/** Mean radiation above the atmosphere in a month (0 to 11) of a common year, J/m2 a day. */
export function extraterrestrialOfMonth(latitude: number, month: number): number {
  const starts = monthStarts(false);
  const [from, to] = [starts[month] ?? 0, starts[month + 1] ?? 0];
  let sum = 0;
  for (let day = from; day < to; day++) sum += extraterrestrialOfDay(latitude, day);
  return sum / (to - from);
}

/** Clearness index of a month (0 to 11): sunshine over that above the atmosphere; 0 in polar night. */
export function clearnessOfMonth({ place, globalRadiation }: MonthlyNormals, month: number): number {
  const above = extraterrestrialOfMonth(place.latitude, month);
  return above > 0 ? (globalRadiation[month] ?? 0) / above : 0;
}
