/**
 * Temperature of the mains water that fills a pool up, by the climate.
 *
 *     T = Tm + 6 + R·ΔT/2·sin(0.986·(n − 15 − L) − 90°)      °F, n the day of the year
 *     R = 0.4 + 0.01·(Tm − 44),   L = 35 − (Tm − 44) days
 *
 * Tm is the mean air temperature of the year, ΔT the difference of its warmest and coldest month.
 *
 * Source: Burch and Christensen (2007), Towards Development of an Algorithm for Mains Water Temperature, National
 * Renewable Energy Laboratory (from memory).
 * Range: Tm 0 to 30 °C; a well or a deep main stays nearer to Tm.
 * Errors: none; never under 0 °C, since mains run.
 *
 * Worked example: Tm 50 °F, ΔT 50 °F → mean 56 °F, lowest 44.5 °F in mid February.
 */
import { FAHRENHEIT_STEP, ZERO_CELSIUS } from '../../quantity/index.ts';
import { MONTHS } from './calendar.ts';

/** Mains temperature (K) on a day (from 0) of a climate of twelve monthly air means (K). */
export function mainsTemperature(months: readonly number[], day: number): number {
  const mean = toFahrenheit(months.reduce((sum, T) => sum + T, 0) / MONTHS);
  const swing = (Math.max(...months) - Math.min(...months)) / FAHRENHEIT_STEP;
  const ratio = 0.4 + 0.01 * (mean - 44);
  const lag = 35 - (mean - 44);
  const angle = ((0.986 * (day + 1 - 15 - lag) - 90) * Math.PI) / 180;
  const T = mean + 6 + ((ratio * swing) / 2) * Math.sin(angle);
  return Math.max(ZERO_CELSIUS, (T - 32) * FAHRENHEIT_STEP + ZERO_CELSIUS);
}

function toFahrenheit(T: number): number {
  return (T - ZERO_CELSIUS) / FAHRENHEIT_STEP + 32;
}
