/**
 * When a basin is to be how warm, and when it is covered: plans a person makes, turned into one value an hour.
 *
 * A set point of 0 K means *not heated*. Hours are those of the calendar (standard time); a day runs from 0 to 24, a
 * span of hours or days may pass midnight or the new year.
 *
 * Source: none needed.
 * Errors: days the calendar has not, hours outside the day, temperatures outside 0 to 50 °C are issues.
 */
import { fail, type Issue, ok, type Result, variableIssue } from '../../trace/index.ts';
import {
  type CalendarDay,
  dayOfYear,
  HOURS_A_DAY,
  type HourlyWeather,
  hourOfWeek,
  isLeap,
} from '../climate/index.ts';

/** First and last day, both heated. */
export interface Season {
  readonly from: CalendarDay;
  readonly to: CalendarDay;
}

/** Hour of the week: weekday 0 is Sunday. */
export interface WeekHour {
  readonly weekday: number;
  readonly hour: number;
}

export interface SetPointPlan {
  /** K. */
  readonly temperature: number;
  /** All year where absent. */
  readonly season?: Season;
  /** A lower temperature from one hour of the day to another. */
  readonly setBack?: { readonly from: number; readonly to: number; readonly temperature: number };
  /** Heated from one hour of the week to another only, such as Friday noon to Sunday night. */
  readonly week?: { readonly from: WeekHour; readonly to: WeekHour; readonly otherwise?: number };
}

/** The year a plan is laid over. */
export type Calendar = Pick<HourlyWeather, 'hours' | 'firstWeekday'>;

const TEMPERATURE = { symbol: 'T', kind: 'temperature', min: 273.15, max: 323.15 } as const;

/** Set point of every hour, K; 0 where the basin is not heated. */
export function setPoints(plan: SetPointPlan, calendar: Calendar): Result<Float64Array> {
  const issues = planIssues(plan);
  const season = seasonHours(plan.season, calendar);
  if (!season.ok) return fail(...issues, ...season.issues);
  if (issues.length > 0) return fail(...issues);
  return ok(
    Float64Array.from({ length: calendar.hours }, (_, i) =>
      season.value[i] === 1 ? temperatureAt(plan, i, calendar.firstWeekday) : 0,
    ),
  );
}

function temperatureAt(
  { temperature, setBack, week }: SetPointPlan,
  i: number,
  firstWeekday: number,
): number {
  if (week && !within(hourOfWeek(i, firstWeekday), weekHour(week.from), weekHour(week.to)))
    return week.otherwise ?? 0;
  if (setBack && within(i % HOURS_A_DAY, setBack.from, setBack.to)) return setBack.temperature;
  return temperature;
}

function weekHour({ weekday, hour }: WeekHour): number {
  return weekday * HOURS_A_DAY + hour;
}

/** Whether a place on a ring lies from one place up to another. */
function within(at: number, from: number, to: number): boolean {
  return from <= to ? at >= from && at < to : at >= from || at < to;
}

/** 1 in every hour of the season, both days included. */
export function seasonHours(season: Season | undefined, calendar: Calendar): Result<Uint8Array> {
  const hours = new Uint8Array(calendar.hours);
  if (!season) return ok(hours.fill(1));
  const leap = isLeap(calendar);
  const [from, to] = [dayOfYear(season.from, leap), dayOfYear(season.to, leap)];
  const issues: Issue[] = [];
  if (from === undefined) issues.push({ code: 'ill-formed', where: 'season.from', reason: 'no-such-day' });
  if (to === undefined) issues.push({ code: 'ill-formed', where: 'season.to', reason: 'no-such-day' });
  if (from === undefined || to === undefined) return fail(...issues);
  for (let i = 0; i < hours.length; i++) {
    const day = Math.floor(i / HOURS_A_DAY);
    const inside = from <= to ? day >= from && day <= to : day >= from || day <= to;
    hours[i] = inside ? 1 : 0;
  }
  return ok(hours);
}

export interface CoverPlan {
  /** Share covered in each hour of a day, see `coveredBetween`. */
  readonly day: readonly number[];
  /** Share covered outside the season; as in the season where absent. */
  readonly outOfSeason?: number;
  readonly season?: Season;
}

/** Share of the water covered in every hour. */
export function coveredHours(plan: CoverPlan, calendar: Calendar): Result<Float64Array> {
  const season = seasonHours(plan.season, calendar);
  if (!season.ok) return season;
  if (plan.day.length !== HOURS_A_DAY || !plan.day.every((share) => share >= 0 && share <= 1))
    return fail({ code: 'ill-formed', where: 'cover.day', found: plan.day.length, reason: 'not-24-shares' });
  return ok(
    Float64Array.from({ length: calendar.hours }, (_, i) => {
      const daily = plan.day[i % HOURS_A_DAY] ?? 0;
      return season.value[i] === 1 ? daily : (plan.outOfSeason ?? daily);
    }),
  );
}

function planIssues({ temperature, setBack, week }: SetPointPlan): Issue[] {
  const issues: (Issue | undefined)[] = [variableIssue('temperature', temperature, TEMPERATURE)];
  if (setBack) {
    issues.push(variableIssue('setBack.temperature', setBack.temperature, TEMPERATURE));
    issues.push(hourIssue('setBack.from', setBack.from), hourIssue('setBack.to', setBack.to));
  }
  if (week) {
    if (week.otherwise !== undefined)
      issues.push(variableIssue('week.otherwise', week.otherwise, TEMPERATURE));
    for (const end of ['from', 'to'] as const) {
      issues.push(hourIssue(`week.${end}.hour`, week[end].hour));
      const { weekday } = week[end];
      if (!(Number.isInteger(weekday) && weekday >= 0 && weekday <= 6))
        issues.push({ code: 'out-of-range', where: `week.${end}.weekday`, found: weekday, min: 0, max: 6 });
    }
  }
  return issues.filter((issue) => issue !== undefined);
}

function hourIssue(where: string, hour: number): Issue | undefined {
  if (hour >= 0 && hour <= HOURS_A_DAY) return undefined;
  return { code: 'out-of-range', where, found: hour, min: 0, max: HOURS_A_DAY };
}
