/** The hours of a weather file: 8,760 or 8,784 lines in the order of the calendar, missing values as NaN. */
import { fail, type Issue, ok, type Result } from '../../../trace/index.ts';
import { HOURS_A_DAY, HOURS_A_LEAP_YEAR, HOURS_A_YEAR, monthLengths } from '../calendar.ts';
import { COLUMN_NAMES, COLUMNS, type ColumnName, FIELDS_NEEDED } from './columns.ts';
import { type Lines, LONGEST_LINE } from './lines.ts';
import { fieldNumber } from './number.ts';

export type Table = Record<ColumnName, Float64Array>;

/** After this many issues the file is plainly not a weather file, and nobody reads on. */
const MOST_ISSUES = 20;

/** Hour of 29 February, if there is one. */
const LEAP_DAY_AT = (31 + 28) * HOURS_A_DAY;

/** Reads every remaining line as an hour. */
export function readRows(lines: Lines): Result<Table> {
  const table = {} as Table;
  for (const name of COLUMN_NAMES) table[name] = new Float64Array(HOURS_A_LEAP_YEAR).fill(Number.NaN);
  const issues: Issue[] = [];
  let dates = calendarHours(false);
  let hour = 0;
  for (let line = lines.next(); line !== undefined; line = lines.next()) {
    if (line.length <= LONGEST_LINE && line.trim() === '') continue;
    const where = `line.${lines.at()}`;
    const refused = refusal(line, hour);
    if (refused) return fail(...issues, { ...refused, where });
    const fields = line.split(',', 40);
    if (hour === LEAP_DAY_AT && fieldNumber(fields[1]) === 2) dates = calendarHours(true);
    issues.push(...dateIssues(fields, dates[hour], where), ...valueIssues(fields, { table, hour, where }));
    if (issues.length >= MOST_ISSUES) return fail(...issues);
    hour++;
  }
  if (issues.length === 0 && hour !== dates.length)
    issues.push({
      code: 'ill-formed',
      where: `line.${lines.at()}`,
      found: hour,
      reason: 'not-a-year',
      min: dates.length,
    });
  if (issues.length > 0) return fail(...issues);
  for (const name of COLUMN_NAMES) table[name] = table[name].slice(0, hour);
  return ok(table);
}

function refusal(line: string, hour: number): Omit<Issue, 'where'> | undefined {
  if (line.length > LONGEST_LINE) return { code: 'ill-formed', reason: 'line-too-long', max: LONGEST_LINE };
  if (hour >= HOURS_A_LEAP_YEAR)
    return { code: 'ill-formed', reason: 'too-many-hours', max: HOURS_A_LEAP_YEAR };
  return undefined;
}

type CalendarHour = readonly [month: number, day: number, hour: number];

function calendarHours(leap: boolean): CalendarHour[] {
  const hours: CalendarHour[] = [];
  monthLengths(leap).forEach((length, m) => {
    for (let day = 1; day <= length; day++)
      for (let h = 1; h <= HOURS_A_DAY; h++) hours.push([m + 1, day, h]);
  });
  return hours;
}

function dateIssues(fields: readonly string[], due: CalendarHour | undefined, where: string): Issue[] {
  if (fields.length < FIELDS_NEEDED)
    return [
      { code: 'ill-formed', where, found: fields.length, min: FIELDS_NEEDED, reason: 'too-few-fields' },
    ];
  if (due === undefined) return [{ code: 'ill-formed', where, reason: 'too-many-hours', max: HOURS_A_YEAR }];
  const found = fields.slice(1, 4).map((x) => fieldNumber(x));
  if (found.every((x, i) => x === due[i])) return [];
  const text = fields.slice(1, 4).join('/').slice(0, 30);
  return [{ code: 'ill-formed', where, found: text, reason: 'out-of-sequence', expected: [due.join('/')] }];
}

interface Row {
  readonly table: Table;
  readonly hour: number;
  readonly where: string;
}

/** Writes the values of a line into the table. */
function valueIssues(fields: readonly string[], { table, hour, where }: Row): Issue[] {
  if (fields.length < FIELDS_NEEDED) return [];
  const issues: Issue[] = [];
  for (const name of COLUMN_NAMES) {
    const { at, missing, min, max } = COLUMNS[name];
    const value = fieldNumber(fields[at]);
    if (value === undefined || value >= missing) continue;
    if (value >= min && value <= max) table[name][hour] = value;
    else if (Number.isNaN(value))
      issues.push({
        code: 'not-understood',
        where: `${where}.${name}`,
        found: (fields[at] ?? '').slice(0, 30),
      });
    else issues.push({ code: 'out-of-range', where: `${where}.${name}`, found: value, min, max });
  }
  return issues;
}
