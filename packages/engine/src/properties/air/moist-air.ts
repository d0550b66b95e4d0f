/**
 * Density and enthalpy of moist air, by mass of dry air, as ideal gases.
 *
 *     v = 287.042·T·(1 + 1.607858·W)/P        ρ = (1 + W)/v        ρ_da = 1/v = (P − pw)/(287.042·T)
 *     h = 1006·t + W·(2 501 000 + 1860·t)     t in °C
 *
 * ρ_da is the mass of *dry air* in a cubic metre of *moist* air: the density that evaporation by natural convection
 * is correlated with. The difference of two of them is about twice that of the moist-air densities.
 *
 * Source: ASHRAE Handbook-Fundamentals 2017, chapter 1, Equations 26, 28 and 30.
 * Range: −100 to 200 °C, 10 to 200 kPa, humidity ratio 0 to 1.
 * Errors: values outside are issues of `evaluate`; the plain functions check nothing.
 *
 * Worked example: 25 °C, W = 0.00988, 101.325 kPa → 1.1770 kg/m3 moist, 1.1654 kg/m3 dry, 50.3 kJ/kg.
 */
import { ZERO_CELSIUS } from '../../quantity/index.ts';
import type { Formula } from '../../trace/index.ts';
import { BAROMETRIC, HUMIDITY_RATIO } from './humidity.ts';
import { AIR_TEMPERATURE, PSYCHROMETRICS } from './saturation.ts';
import type { MoistAirState } from './wet-bulb.ts';

/** Gas constant of dry air, J/(kg K). */
export const AIR_GAS_CONSTANT = 287.042;
/** Specific heat of dry air at constant pressure, J/(kg K). */
export const AIR_SPECIFIC_HEAT = 1006;

const inputs = { temperature: AIR_TEMPERATURE, humidityRatio: HUMIDITY_RATIO, pressure: BAROMETRIC };

/** Mass of dry air (kg) in a cubic metre of moist air at T (K), vapour pressure and total pressure (Pa). */
export function dryAirDensityAt(T: number, vapour: number, pressure: number): number {
  return (pressure - vapour) / (AIR_GAS_CONSTANT * T);
}

/** Density of dry air in moist air, kg/m3. */
export const dryAirDensity: Formula<MoistAirState> = {
  id: 'properties.dry-air-density',
  equation: 'ρda = P/(287.042·T·(1 + 1.607858·W))',
  inputs,
  result: { symbol: 'ρda', kind: 'density' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equation 26' },
  kernel: (x) => x.pressure / (AIR_GAS_CONSTANT * x.temperature * (1 + 1.607858 * x.humidityRatio)),
};

/** Density of moist air, kg/m3. */
export const moistAirDensity: Formula<MoistAirState> = {
  id: 'properties.moist-air-density',
  equation: 'ρ = ρda·(1 + W)',
  inputs,
  result: { symbol: 'ρ', kind: 'density' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equations 11 and 26' },
  kernel: (x) => dryAirDensity.kernel(x) * (1 + x.humidityRatio),
};

/** Enthalpy (J a kg of dry air) of moist air at T (K) with humidity ratio W (kg/kg). */
export function moistAirEnthalpyAt(T: number, ratio: number): number {
  const t = T - ZERO_CELSIUS;
  return AIR_SPECIFIC_HEAT * t + ratio * (2_501_000 + 1860 * t);
}

export interface HeatInAir {
  /** T, K. */
  readonly temperature: number;
  /** W, kg/kg. */
  readonly humidityRatio: number;
}

/** Enthalpy of moist air, J a kg of dry air, over dry air at 0 °C and liquid water at 0 °C. */
export const moistAirEnthalpy: Formula<HeatInAir> = {
  id: 'properties.moist-air-enthalpy',
  equation: 'h = 1006·t + W·(2501000 + 1860·t)',
  inputs: { temperature: AIR_TEMPERATURE, humidityRatio: HUMIDITY_RATIO },
  result: { symbol: 'h', kind: 'latent-heat' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equation 30' },
  kernel: (x) => moistAirEnthalpyAt(x.temperature, x.humidityRatio),
};
