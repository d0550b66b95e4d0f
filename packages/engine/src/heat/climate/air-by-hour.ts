/** Air temperature of every hour of a year from monthly means: the course of the year, the day's departure, its swing. */
import { ZERO_CELSIUS } from '../../quantity/index.ts';
import { eachMonth, HOURS_A_DAY, MONTHS } from './calendar.ts';
import { daysOfMonths } from './days-of-months.ts';
import { clearnessOfMonth, type MonthlyNormals } from './normals.ts';
import { diurnalShape, diurnalSwing } from './temperature-by-hour.ts';
import { temperatureDeviations } from './variability.ts';

/**
 * Deviation of each day's temperature from the smooth course of the year. The course itself drifts within a month;
 * the distribution is that of both together, so the days are given what the drift leaves of its variance.
 */
export function dailyDepartures(means: readonly number[], days: string, leap: boolean): Float64Array {
  const smooth = daysOfMonths({ means, leap });
  const out = new Float64Array(smooth.length);
  if (days === 'mean') return out;
  const year = means.reduce((sum, T) => sum + T, 0) / MONTHS;
  const yearDeviation = Math.sqrt(means.reduce((sum, T) => sum + (T - year) ** 2, 0) / (MONTHS - 1));
  eachMonth(leap, (m, from, to) => {
    const mean = means[m] ?? 0;
    const all = temperatureDeviations({ days: to - from, meanCelsius: mean - ZERO_CELSIUS, yearDeviation });
    const variance = all.reduce((sum, x) => sum + x * x, 0);
    let drift = 0;
    for (let d = from; d < to; d++) drift += ((smooth[d] ?? 0) - mean) ** 2;
    const left = variance > 0 ? Math.sqrt(Math.max(0, 1 - drift / variance)) : 0;
    for (let d = from; d < to; d++) out[d] = (all[d - from] ?? 0) * left;
  });
  return out;
}

/** K, every hour. */
export function temperaturesByHour(
  normals: MonthlyNormals,
  departures: Float64Array,
  leap: boolean,
): Float64Array {
  const smooth = daysOfMonths({ means: normals.airTemperature, leap });
  const out = new Float64Array(smooth.length * HOURS_A_DAY);
  eachMonth(leap, (m, from, to) => {
    const swing = normals.dailySwing?.[m] ?? diurnalSwing(clearnessOfMonth(normals, m));
    for (let d = from; d < to; d++)
      for (let h = 0; h < HOURS_A_DAY; h++)
        out[d * HOURS_A_DAY + h] = (smooth[d] ?? 0) + (departures[d] ?? 0) + swing * diurnalShape(h + 0.5);
  });
  return out;
}
