/**
 * Where the sun stands, and the radiation above the atmosphere.
 *
 *     Γ  = 2π·t/365                                                   day angle
 *     δ  = 0.006918 − 0.399912·cosΓ + 0.070257·sinΓ − 0.006758·cos2Γ + 0.000907·sin2Γ − 0.002697·cos3Γ + 0.00148·sin3Γ
 *     E0 = 1.000110 + 0.034221·cosΓ + 0.001280·sinΓ + 0.000719·cos2Γ + 0.000077·sin2Γ
 *     E  = 229.18 min·(0.000075 + 0.001868·cosΓ − 0.032077·sinΓ − 0.014615·cos2Γ − 0.04089·sin2Γ)
 *     solar time = standard time + E + (longitude − zone meridian)·4 min a degree
 *     cosθz = sinφ·sinδ + cosφ·cosδ·cosω,   ω = 15°·(solar time − 12 h)
 *     G0 = Gsc·E0·(cosφ·cosδ·(sinω2 − sinω1) + (ω2 − ω1)·sinφ·sinδ)/(ω2 − ω1)      mean between ω1 and ω2
 *
 * How sources disagree: the solar constant is 1,361 W/m2 by satellites since 2003, 1,367 W/m2 in the solar
 * engineering of the decades before. 1,367 is used, since the clearness correlations beside this file divide by it.
 * The books put Γ = 2π·(n − 1)/365 with n the number of the day, which is the sun of its first midnight; here t is
 * the days since the new year with their fraction, and a whole day is taken at its noon, 0.2° nearer to the
 * astronomer's declination in spring and autumn. Refraction is left out.
 *
 * Source: Spencer (1971), Search 2(5):172, with the 1986 erratum's 0.000075; equations as in Duffie and Beckman,
 * Solar Engineering of Thermal Processes, Equations 1.4.1b, 1.5.3, 1.6.1b, 1.6.5, 1.10.4 (from memory).
 * Range: every latitude and day; polar day and night included.
 * Errors: none; the functions are total over finite numbers.
 *
 * Worked example: 43° N, 15 April → 33.9 MJ/m2 in the day, 3.80 MJ/m2 of it from 10 to 11 (the book, with the
 * declination of its midnight: 33.8 and 3.79).
 */
import { DAY, HOUR } from '../../quantity/index.ts';
import type { Source } from '../../trace/index.ts';

export const SOLAR_SOURCE: Source = {
  document: 'Duffie and Beckman, Solar Engineering of Thermal Processes',
  at: 'Equations 1.4.1b to 1.10.4, after Spencer (1971)',
  known: 'from memory',
};

/** Gsc, W/m2. */
export const SOLAR_CONSTANT = 1367;

/** δ (rad), `day` days and their fraction after the new year. */
export function solarDeclination(day: number): number {
  const g = (2 * Math.PI * day) / 365;
  return (
    0.006918 -
    0.399912 * Math.cos(g) +
    0.070257 * Math.sin(g) -
    0.006758 * Math.cos(2 * g) +
    0.000907 * Math.sin(2 * g) -
    0.002697 * Math.cos(3 * g) +
    0.00148 * Math.sin(3 * g)
  );
}

/** E0: (mean distance of the sun/distance)², `day` days after the new year. */
export function solarDistanceFactor(day: number): number {
  const g = (2 * Math.PI * day) / 365;
  return (
    1.00011 +
    0.034221 * Math.cos(g) +
    0.00128 * Math.sin(g) +
    0.000719 * Math.cos(2 * g) +
    0.000077 * Math.sin(2 * g)
  );
}

/** E (s): the sun's clock ahead of the mean one, `day` days after the new year. */
export function equationOfTime(day: number): number {
  const g = (2 * Math.PI * day) / 365;
  const sum =
    0.000075 +
    0.001868 * Math.cos(g) -
    0.032077 * Math.sin(g) -
    0.014615 * Math.cos(2 * g) -
    0.04089 * Math.sin(2 * g);
  return 229.18 * 60 * sum;
}

export interface Meridian {
  /** Longitude, rad, east positive. */
  readonly longitude: number;
  /** Standard time ahead of Greenwich, s. */
  readonly timeZone: number;
}

/** Solar time minus standard time (s) at a place, `day` days after the new year. */
export function solarTimeShift(day: number, { longitude, timeZone }: Meridian): number {
  return equationOfTime(day) + (longitude / (2 * Math.PI)) * DAY - timeZone;
}

/** ω (rad) at a solar time of the day (s): 0 at noon, negative in the morning. */
export function hourAngle(solarTime: number): number {
  return (2 * Math.PI * (solarTime - DAY / 2)) / DAY;
}

/** cos θz; below 0 the sun is under the horizon. */
export function cosineOfZenith(latitude: number, declination: number, omega: number): number {
  return (
    Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(omega)
  );
}

/** ωs (rad): hour angle of sunset; 0 in polar night, π in polar day. */
export function sunsetHourAngle(latitude: number, declination: number): number {
  return Math.acos(Math.min(1, Math.max(-1, -Math.tan(latitude) * Math.tan(declination))));
}

/** Azimuth of the sun (rad), clockwise from north. */
export function solarAzimuth(latitude: number, declination: number, omega: number): number {
  const east = -Math.cos(declination) * Math.sin(omega);
  const north =
    Math.sin(declination) * Math.cos(latitude) - Math.cos(declination) * Math.sin(latitude) * Math.cos(omega);
  const angle = Math.atan2(east, north);
  return angle < 0 ? angle + 2 * Math.PI : angle;
}

/** Radiation on a horizontal square metre above the atmosphere during a day counted from 0, J/m2. */
export function extraterrestrialOfDay(latitude: number, day: number): number {
  const ws = sunsetHourAngle(latitude, solarDeclination(day + 0.5));
  return extraterrestrialBetween({ latitude, day, from: -ws, to: ws });
}

export interface HourAngles {
  readonly latitude: number;
  /** Day of the year, counted from 0. */
  readonly day: number;
  /** Hour angles, rad; the part below the horizon counts nothing. */
  readonly from: number;
  readonly to: number;
}

/** The same between two hour angles, J/m2. */
export function extraterrestrialBetween({ latitude, day, from, to }: HourAngles): number {
  const declination = solarDeclination(day + 0.5);
  const ws = sunsetHourAngle(latitude, declination);
  const a = Math.max(from, -ws);
  const b = Math.min(to, ws);
  if (b <= a) return 0;
  const direct = Math.cos(latitude) * Math.cos(declination) * (Math.sin(b) - Math.sin(a));
  const sum = direct + (b - a) * Math.sin(latitude) * Math.sin(declination);
  return ((12 * HOUR) / Math.PI) * SOLAR_CONSTANT * solarDistanceFactor(day + 0.5) * sum;
}
