/**
 * How the days of a month differ: clear and dull, warm and cold, in a fixed order.
 *
 * A month made of thirty equal days has no cold spell to be heated through and no fine week that saves the fuel. The
 * days here have the distribution that the sources give, taken at N equal steps, so the month's mean is kept; no
 * chance enters, and a year computed twice is the same year.
 *
 *     temperature:  T = T̄ + σm·√N·ln(p/(1 − p))/(2·1.698),   σm = 1.45 − 0.0290·T̄ + 0.0664·σyr   (°C; N days)
 *     clearness:    F(K) = (e^(γ·0.05) − e^(γK))/(e^(γ·0.05) − e^(γ·Kmax))
 *                   γ = −1.498 + (1.184·ξ − 27.182·e^(−1.5ξ))/(Kmax − 0.05),  ξ = (Kmax − 0.05)/(Kmax − K̄)
 *                   Kmax = 0.6313 + 0.267·K̄ − 11.9·(K̄ − 0.75)^8
 *
 * σyr is the standard deviation of the twelve monthly means from the year's mean.
 *
 * The order of the days has no source: temperatures come and go in about eight days, sunshine in about six, which
 * gives neighbouring days a correlation of 0.7 and 0.5 and leaves the two unrelated.
 *
 * Source: Erbs, Klein and Beckman (1983) and Bendt, Collares-Pereira and Rabl (1981), as in Duffie and Beckman,
 * Equations 2.9.6 to 2.9.8 and 9.4 (from memory; the first reproduces NOAA's heating degree days, see the validation).
 * Range: K̄ 0.2 to 0.75; outside it the clearness of all days is the month's mean.
 * Errors: none.
 *
 * Worked example: T̄ = 15.1 °C, σyr = 10.1 K, 31 days → the warmest day of the month 11.4 K above its mean.
 */

const SLOPE = 2 * 1.698;
const K_MIN = 0.05;

/** Waves of the order of days in a month: not whole numbers, so that no two days share a place. */
const TEMPERATURE_WAVES = 3.7;
const CLEARNESS_WAVES = 5.3;

export interface MonthOfAir {
  readonly days: number;
  /** T̄, °C: the correlation is in Celsius. */
  readonly meanCelsius: number;
  /** σyr, K. */
  readonly yearDeviation: number;
}

/** Deviation (K) of each day's mean temperature from the month's. */
export function temperatureDeviations({ days, meanCelsius, yearDeviation }: MonthOfAir): number[] {
  const monthDeviation = Math.max(0, 1.45 - 0.029 * meanCelsius + 0.0664 * yearDeviation);
  const scale = (monthDeviation * Math.sqrt(days)) / SLOPE;
  return placesOfDays(days, TEMPERATURE_WAVES).map((place) => {
    const p = (place + 0.5) / days;
    return scale * Math.log(p / (1 - p));
  });
}

/** Clearness index of each day of a month whose mean it is. */
export function clearnessOfDays(days: number, mean: number): number[] {
  if (!(mean >= 0.2 && mean <= 0.75)) return Array.from({ length: days }, () => mean);
  const top = 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8;
  const xi = (top - K_MIN) / (top - mean);
  const gamma = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (top - K_MIN);
  const values = placesOfDays(days, CLEARNESS_WAVES).map((place) => {
    const f = (place + 0.5) / days;
    if (Math.abs(gamma) < 1e-6) return K_MIN + f * (top - K_MIN);
    return Math.log((1 - f) * Math.exp(gamma * K_MIN) + f * Math.exp(gamma * top)) / gamma;
  });
  const found = values.reduce((sum, k) => sum + k, 0) / days;
  return values.map((k) => (k * mean) / found);
}

/** The place of each day when the month's days are sorted from lowest to highest, from 0. */
function placesOfDays(days: number, waves: number): number[] {
  const height = (day: number): number => Math.sin((2 * Math.PI * waves * (day + 0.5)) / days);
  const order = Array.from({ length: days }, (_, day) => day).sort((a, b) => height(a) - height(b));
  const places = new Array<number>(days).fill(0);
  order.forEach((day, place) => {
    places[day] = place;
  });
  return places;
}
