/**
 * The standard atmosphere below 11 km: what the barometer, the thermometer and the air are expected to be at a site.
 *
 *     H = r0·Z/(r0 + Z)     T = T0 − L·H     p = p0·(T/T0)^(g0·M/(R*·L))     ρ = p·M/(R*·T)
 *
 * How sources disagree: handbooks print p = 101.325·(1 − 2.25577e-5·Z)^5.2559 kPa, which takes height above sea level
 * for geopotential height H; 0.004 % apart at 1500 m, 0.02 % at 3500 m. The exact form is followed.
 *
 * The barometer of a day departs from this by ±2 kPa; a measured pressure goes before it.
 *
 * Source: U.S. Standard Atmosphere 1976 (NOAA-S/T 76-1562), first layer, with its own constants.
 * Range: −500 to 11,000 m above sea level.
 * Errors: outside an issue of `evaluate`; the plain functions check nothing.
 *
 * Worked example: 1500 m → 84,559.7 Pa, 278.402 K, 1.0581 kg/m3, water boils at 94.98 °C.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula, Source, Variable } from '../../trace/index.ts';
import { boilingTemperatureOfWater } from '../water/index.ts';

const SOURCE: Source = {
  document: 'U.S. Standard Atmosphere 1976 (NOAA-S/T 76-1562)',
  at: 'Equations 18, 23, 33a and 42, first layer',
  known: 'read in a public copy',
};

const SEA_LEVEL_TEMPERATURE = 288.15;
const SEA_LEVEL_PRESSURE = 101_325;
/** L, K/m. */
const LAPSE = 0.0065;
/** r0, m. */
const EARTH_RADIUS = 6_356_766;
/** M, kg/kmol, and R*, J/(kmol K), as that standard has them. */
const MOLAR_MASS = 28.9644;
const GAS_CONSTANT = 8314.32;
const EXPONENT = (STANDARD_GRAVITY * MOLAR_MASS) / (GAS_CONSTANT * LAPSE);

const altitude: Variable = { symbol: 'Z', kind: 'length', min: -500, max: 11_000 };

export interface AtAltitude {
  /** Z, m above sea level. */
  readonly altitude: number;
}

/** Temperature (K) of the standard atmosphere at a height above sea level (m). */
export function standardTemperatureAt(height: number): number {
  return SEA_LEVEL_TEMPERATURE - (LAPSE * EARTH_RADIUS * height) / (EARTH_RADIUS + height);
}

/** Pressure (Pa) of the standard atmosphere at a height above sea level (m). */
export function standardPressureAt(height: number): number {
  return SEA_LEVEL_PRESSURE * (standardTemperatureAt(height) / SEA_LEVEL_TEMPERATURE) ** EXPONENT;
}

/** Temperature of the standard atmosphere, K. */
export const standardTemperature: Formula<AtAltitude> = {
  id: 'properties.standard-temperature',
  equation: 'T = T0 − L·r0·Z/(r0 + Z)',
  inputs: { altitude },
  result: { symbol: 'T', kind: 'temperature' },
  source: SOURCE,
  kernel: (x) => standardTemperatureAt(x.altitude),
};

/** Pressure of the standard atmosphere, Pa absolute. */
export const standardPressure: Formula<AtAltitude> = {
  id: 'properties.standard-pressure',
  equation: 'p = p0·(T/T0)^(g0·M/(R*·L))',
  inputs: { altitude },
  result: { symbol: 'p', kind: 'absolute-pressure' },
  source: SOURCE,
  kernel: (x) => standardPressureAt(x.altitude),
};

/** Density of dry air in the standard atmosphere, kg/m3. */
export const standardDensity: Formula<AtAltitude> = {
  id: 'properties.standard-density',
  equation: 'ρ = p·M/(R*·T)',
  inputs: { altitude },
  result: { symbol: 'ρ', kind: 'density' },
  source: SOURCE,
  kernel: (x) =>
    (standardPressureAt(x.altitude) * MOLAR_MASS) / (GAS_CONSTANT * standardTemperatureAt(x.altitude)),
};

/** Temperature at which water boils under the standard atmosphere of an altitude, K. */
export const boilingPoint: Formula<AtAltitude> = {
  id: 'properties.boiling-point',
  equation: 'ps(T) = p(Z)',
  inputs: { altitude },
  result: { symbol: 'T', kind: 'temperature' },
  source: { ...SOURCE, at: 'Equation 33a; boiling line after IAPWS R7-97(2012) Equation 31' },
  kernel: (x) => boilingTemperatureOfWater(standardPressureAt(x.altitude)),
};
