/** What can be wrong with a year's question, all of it at once. */
import { type Issue, type Variable, variableIssue } from '../../trace/index.ts';
import { settingIssues } from '../surface/index.ts';
import type { YearBasin, YearInput } from './model.ts';

const VOLUME: Variable = { symbol: 'V', kind: 'volume', min: 0.05, max: 50_000 };
const OUTPUT: Variable = { symbol: 'P', kind: 'heat-rate', min: 0, max: 2e7 };
const START: Variable = { symbol: 'T', kind: 'temperature', min: 273.15, max: 323.15 };
const TOLERANCE: Variable = { symbol: 'ΔT', kind: 'temperature-difference', min: 0, max: 10 };

/** Everything wrong with a year's question except the weather's bearing on each basin. */
export function inputIssues(input: YearInput): Issue[] {
  const { basins, weather, output } = input;
  const issues: (Issue | undefined)[] = [variableIssue('output', output, OUTPUT)];
  if (basins.length < 1 || basins.length > 2)
    issues.push({ code: 'ill-formed', where: 'basins', found: basins.length, min: 1, max: 2 });
  if (input.tolerance !== undefined) issues.push(variableIssue('tolerance', input.tolerance, TOLERANCE));
  basins.forEach((basin, i) => {
    issues.push(...basinIssues(basin, weather.hours, `basins.${i + 1}.`));
  });
  input.start?.forEach((T, i) => {
    issues.push(variableIssue(`start.${i + 1}`, T, START));
  });
  if (input.exchange)
    issues.push(...hourlyIssues('exchange', input.exchange, { hours: weather.hours, min: 0, max: 0.1 }));
  return issues.filter((issue) => issue !== undefined);
}

function basinIssues(basin: YearBasin, hours: number, where: string): Issue[] {
  const { setting, volume, setPoint, covered, activity } = basin;
  const issues = settingIssues(setting).map((issue) => ({ ...issue, where: where + issue.where }));
  const size = variableIssue(`${where}volume`, volume, VOLUME);
  if (size) issues.push(size);
  issues.push(...hourlyIssues(`${where}setPoint`, setPoint, { hours, min: 0, max: 323.15 }));
  issues.push(...hourlyIssues(`${where}covered`, covered, { hours, min: 0, max: 1 }));
  if (activity) issues.push(...hourlyIssues(`${where}activity`, activity, { hours, min: 0, max: 5 }));
  return issues;
}

/** The issue of the first hour outside its range, or of a wrong number of hours. */
function hourlyIssues(
  where: string,
  values: Float64Array,
  { hours, min, max }: { readonly hours: number; readonly min: number; readonly max: number },
): Issue[] {
  if (values.length !== hours)
    return [
      { code: 'ill-formed', where, found: values.length, min: hours, max: hours, reason: 'not-this-year' },
    ];
  const at = values.findIndex((value) => !(value >= min && value <= max));
  if (at < 0) return [];
  return [{ code: 'out-of-range', where: `${where}.${at}`, found: values[at] ?? Number.NaN, min, max }];
}
