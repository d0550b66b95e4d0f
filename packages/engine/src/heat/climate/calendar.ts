/**
 * The year as hours: months, days and weekdays of 8,760 hours, or 8,784 in a leap year.
 *
 * Hour i runs from i to i + 1 hours after the first midnight of the year, in local standard time all year; summer
 * time is not kept, so a schedule shifts by an hour against the bathers' clocks in summer.
 */

/** Months counted from 0, as arrays are. */
export const MONTHS = 12;
export const HOURS_A_DAY = 24;
export const HOURS_A_YEAR = 8760;
export const HOURS_A_LEAP_YEAR = 8784;

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const LEAP_DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** A day of the calendar: month 1 to 12, day from 1. */
export interface CalendarDay {
  readonly month: number;
  readonly day: number;
}

/** Days of each month. */
export function monthLengths(leap: boolean): readonly number[] {
  return leap ? LEAP_DAYS : DAYS;
}

/** Index of the first day of each month, from 0, with the length of the year at the end. */
export function monthStarts(leap: boolean): readonly number[] {
  const starts = [0];
  for (const length of monthLengths(leap)) starts.push((starts.at(-1) ?? 0) + length);
  return starts;
}

/** Index of a day in its year, from 0; undefined where the calendar has no such day. */
export function dayOfYear({ month, day }: CalendarDay, leap: boolean): number | undefined {
  const length = monthLengths(leap)[month - 1];
  if (length === undefined || !Number.isInteger(day) || day < 1 || day > length) return undefined;
  return (monthStarts(leap)[month - 1] ?? 0) + day - 1;
}

/** Month (0 to 11) of every hour of the year. */
export function monthOfHours(leap: boolean): Uint8Array {
  const months = new Uint8Array(leap ? HOURS_A_LEAP_YEAR : HOURS_A_YEAR);
  const starts = monthStarts(leap);
  for (let m = 0; m < MONTHS; m++)
    months.fill(m, (starts[m] ?? 0) * HOURS_A_DAY, (starts[m + 1] ?? 0) * HOURS_A_DAY);
  return months;
}

/** Hour of the week of hour i of the year: 0 is midnight before Sunday. `firstWeekday` is that of 1 January. */
export function hourOfWeek(hour: number, firstWeekday: number): number {
  return (hour + firstWeekday * HOURS_A_DAY) % 168;
}

/** Calls back with each month and the half-open range of its days. */
export function eachMonth(leap: boolean, run: (month: number, from: number, to: number) => void): void {
  const starts = monthStarts(leap);
  for (let m = 0; m < MONTHS; m++) run(m, starts[m] ?? 0, starts[m + 1] ?? 0);
}
