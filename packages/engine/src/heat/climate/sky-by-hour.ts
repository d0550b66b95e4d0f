/** Sunshine, cloud and wind of every hour of a year from monthly means. */
import { DAY, HOUR } from '../../quantity/index.ts';
import { eachMonth, HOURS_A_DAY, monthLengths } from './calendar.ts';
import { cloudOfClearness } from './cloud.ts';
import { daysOfMonths } from './days-of-months.ts';
import { clearnessOfMonth, type MonthlyNormals } from './normals.ts';
import {
  extraterrestrialOfDay,
  hourAngle,
  solarDeclination,
  solarTimeShift,
  sunsetHourAngle,
} from './solar.ts';
import { shareOfDay } from './sun-by-hour.ts';
import { clearnessOfDays } from './variability.ts';
import type { Place } from './weather.ts';

/** Clearness index of every day of the year. */
export function dailyClearness(normals: MonthlyNormals, days: string, leap: boolean): number[] {
  return monthLengths(leap).flatMap((length, m) => {
    const mean = clearnessOfMonth(normals, m);
    return days === 'mean' ? new Array<number>(length).fill(mean) : clearnessOfDays(length, mean);
  });
}

const WIND_SWING = 0.25;
const WINDIEST_HOUR = 15;

/** m/s, every hour. */
export function windsByHour(means: readonly number[], leap: boolean): Float64Array {
  const days = daysOfMonths({ means, leap, floor: 0 });
  const out = new Float64Array(days.length * HOURS_A_DAY);
  for (let i = 0; i < out.length; i++) {
    const angle = (2 * Math.PI * ((i % HOURS_A_DAY) + 0.5 - WINDIEST_HOUR)) / HOURS_A_DAY;
    out[i] = (days[Math.floor(i / HOURS_A_DAY)] ?? 0) * (1 + WIND_SWING * Math.cos(angle));
  }
  return out;
}

/** W/m2, every hour. */
export function sunshineByHour(
  { place, globalRadiation }: MonthlyNormals,
  clearness: number[],
  leap: boolean,
): Float64Array {
  const out = new Float64Array(clearness.length * HOURS_A_DAY);
  eachMonth(leap, (m, from, to) => {
    const days = clearness.slice(from, to).map((k, i) => k * extraterrestrialOfDay(place.latitude, from + i));
    const sum = days.reduce((a, b) => a + b, 0);
    const scale = sum > 0 ? ((globalRadiation[m] ?? 0) * (to - from)) / sum : 0;
    days.forEach((energy, i) => {
      spread(out, { place, day: from + i, energy: energy * scale });
    });
  });
  return out;
}

interface SunnyDay {
  readonly place: Place;
  readonly day: number;
  /** J/m2. */
  readonly energy: number;
}

/** Writes the 24 hours of one day's sunshine. */
function spread(out: Float64Array, { place, day, energy }: SunnyDay): void {
  const sunset = sunsetHourAngle(place.latitude, solarDeclination(day + 0.5));
  const shift = solarTimeShift(day + 0.5, place);
  for (let h = 0; h < HOURS_A_DAY; h++) {
    const from = hourAngle(h * HOUR + shift);
    const share = [0, -2 * Math.PI, 2 * Math.PI].reduce(
      (sum, turn) => sum + shareOfDay(from + turn, from + turn + (2 * Math.PI * HOUR) / DAY, sunset),
      0,
    );
    out[day * HOURS_A_DAY + h] = (energy * share) / HOUR;
  }
}

/** Share of the sky, every hour. */
export function cloudsByHour({ cloud }: MonthlyNormals, clearness: number[], leap: boolean): Float64Array {
  const out = new Float64Array(clearness.length * HOURS_A_DAY);
  eachMonth(leap, (m, from, to) => {
    for (let d = from; d < to; d++) {
      const share = cloud?.[m] ?? cloudOfClearness(clearness[d] ?? 0);
      out.fill(share, d * HOURS_A_DAY, (d + 1) * HOURS_A_DAY);
    }
  });
  return out;
}
