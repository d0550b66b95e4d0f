/**
 * Water in the air, in the three ways it is given: vapour pressure, humidity ratio, relative humidity.
 *
 *     pw = φ·ps(T)          W = 0.621945·pw/(P − pw)
 *
 * Below the triple point relative humidity is over ice, as the handbook has it; weather services often give it over
 * liquid water, which is 10 % more vapour at −10 °C for the same per cent.
 *
 * Source: ASHRAE Handbook-Fundamentals 2017, chapter 1, Equations 20 and 22.
 * Range: −100 to 200 °C, relative humidity 0 to 1, pressure 10 to 200 kPa, vapour pressure under the total.
 * Errors: values outside are issues of `evaluate`; the plain functions check nothing.
 *
 * Worked example: 25 °C, 50 %, 101.325 kPa → 1584.6 Pa, 0.00988 kg/kg.
 */
import type { Formula, Variable } from '../../trace/index.ts';
import { AIR_TEMPERATURE, PSYCHROMETRICS, saturationPressureAt } from './saturation.ts';

/** Molar mass of water over that of dry air. */
export const WATER_TO_AIR = 0.621945;

/** φ, 0 to 1. */
export const RELATIVE_HUMIDITY: Variable = { symbol: 'φ', kind: 'ratio', min: 0, max: 1 };
/** P of the moist air, Pa. */
export const BAROMETRIC: Variable = { symbol: 'P', kind: 'absolute-pressure', min: 1e4, max: 2e5 };
/** W, kg of vapour a kg of dry air. */
export const HUMIDITY_RATIO: Variable = { symbol: 'W', kind: 'ratio', min: 0, max: 1 };

export interface HumidAir {
  /** T, K. */
  readonly temperature: number;
  /** φ, 0 to 1. */
  readonly relativeHumidity: number;
}

/** Vapour pressure (Pa) of air at T (K) and relative humidity φ (0 to 1). */
export function vapourPressureAt(T: number, relativeHumidity: number): number {
  return relativeHumidity * saturationPressureAt(T);
}

/** Humidity ratio (kg/kg of dry air) of vapour pressure pw in air at pressure P (both Pa). */
export function humidityRatioAt(vapour: number, pressure: number): number {
  return (WATER_TO_AIR * vapour) / (pressure - vapour);
}

/** Vapour pressure of air of a relative humidity, Pa. */
export const vapourPressure: Formula<HumidAir> = {
  id: 'properties.vapour-pressure',
  equation: 'pw = φ·ps(T)',
  inputs: { temperature: AIR_TEMPERATURE, relativeHumidity: RELATIVE_HUMIDITY },
  result: { symbol: 'pw', kind: 'absolute-pressure' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equation 22' },
  kernel: (x) => vapourPressureAt(x.temperature, x.relativeHumidity),
};

export interface VapourInAir {
  /** pw, Pa. */
  readonly vapourPressure: number;
  /** P, Pa. */
  readonly pressure: number;
}

/** Humidity ratio, kg a kg of dry air. Not a finite answer where the vapour pressure reaches the total. */
export const humidityRatio: Formula<VapourInAir> = {
  id: 'properties.humidity-ratio',
  equation: 'W = 0.621945·pw/(P − pw)',
  inputs: {
    vapourPressure: { symbol: 'pw', kind: 'absolute-pressure', min: 0, max: 2e5 },
    pressure: BAROMETRIC,
  },
  result: { symbol: 'W', kind: 'ratio' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equation 20' },
  kernel: (x) => (x.vapourPressure < x.pressure ? humidityRatioAt(x.vapourPressure, x.pressure) : Number.NaN),
};

export interface RatioInAir {
  /** W, kg/kg. */
  readonly humidityRatio: number;
  /** P, Pa. */
  readonly pressure: number;
}

/** Vapour pressure of a humidity ratio, Pa: the inverse of `humidityRatio`. */
export const vapourPressureOfRatio: Formula<RatioInAir> = {
  id: 'properties.vapour-pressure-of-ratio',
  equation: 'pw = P·W/(0.621945 + W)',
  inputs: { humidityRatio: HUMIDITY_RATIO, pressure: BAROMETRIC },
  result: { symbol: 'pw', kind: 'absolute-pressure' },
  source: { ...PSYCHROMETRICS, at: 'Chapter 1, Equation 20 solved for pw' },
  kernel: (x) => (x.pressure * x.humidityRatio) / (WATER_TO_AIR + x.humidityRatio),
};
