/**
 * Heat that air carries off which is blown or sucked through the water: spa blowers, air rings, venturi jets.
 *
 *     Q = ṁ_da·(h_out − h_in)       out: at the water's temperature, with φ_out of saturation
 *
 * A bubble of a few millimetres is saturated and at the water's temperature within centimetres, so φ_out = 1 is near
 * the truth and on the safe side. A blower warms its air by 10 to 30 K; that counts in the air's temperature.
 *
 * Source: first law with the enthalpy of moist air, ASHRAE Handbook-Fundamentals 2017 chapter 1; saturation of the
 * bubbles is *common practice, no source*.
 * Range: 0 to 1 m3/s of air as it enters, water 0 to 50 °C, air −50 to 60 °C.
 * Errors: values outside are issues of `evaluate`; `airJetHeat` checks nothing.
 *
 * Worked example: 10 L/s of air at 15 °C and 60 %, water 38 °C, sea level → 1.44 kW.
 */
import {
  dryAirDensityAt,
  humidityRatioAt,
  moistAirEnthalpyAt,
  saturationPressureAt,
} from '../../properties/index.ts';
import type { Formula } from '../../trace/index.ts';
import type { RoomOverWater } from './evaporation/index.ts';
import { PRESSURE_AT_POOL, RELATIVE_HUMIDITY, WATER_AND_AIR, type WaterAndAir } from './variables.ts';

export interface AirJets {
  /** Air as it enters, m3/s. */
  readonly airFlow: number;
  /** What the blower warms it by, K. */
  readonly warming: number;
  /** φ_out, 0 to 1. */
  readonly saturation: number;
  /** Share of the time they run, 0 to 1. */
  readonly running: number;
}

/** Heat (W) that running jets take out of the water; share of the time not counted. */
export function airJetHeat(jets: AirJets, x: RoomOverWater): number {
  const entering = x.airTemperature + jets.warming;
  const dryFlow = jets.airFlow * dryAirDensityAt(entering, x.vapourPressure, x.pressure);
  const leaving = humidityRatioAt(jets.saturation * saturationPressureAt(x.waterTemperature), x.pressure);
  const brought = moistAirEnthalpyAt(entering, humidityRatioAt(x.vapourPressure, x.pressure));
  return dryFlow * (moistAirEnthalpyAt(x.waterTemperature, leaving) - brought);
}

export interface BlownAir extends WaterAndAir {
  readonly airFlow: number;
  /** P, Pa. */
  readonly pressure: number;
  /** φ_out, 0 to 1. */
  readonly saturation: number;
}

/** Heat that blown air carries off, W. */
export const airJetLoss: Formula<BlownAir> = {
  id: 'heat.air-jets',
  equation: 'Q = ṁ·(h(Tw, φout) − h(Ta, φ))',
  inputs: {
    ...WATER_AND_AIR,
    airFlow: { symbol: 'V̇', kind: 'volume-flow', min: 0, max: 1 },
    pressure: PRESSURE_AT_POOL,
    saturation: { ...RELATIVE_HUMIDITY, symbol: 'φout' },
  },
  result: { symbol: 'Q', kind: 'heat-rate' },
  source: {
    document: 'First law with moist-air enthalpy of ASHRAE Handbook-Fundamentals 2017',
    at: 'chapter 1, Equation 30',
    known: 'physics',
  },
  kernel: (x) => {
    const { airFlow, saturation, relativeHumidity, airTemperature } = x;
    const vapourPressure = relativeHumidity * saturationPressureAt(airTemperature);
    return airJetHeat({ airFlow, warming: 0, saturation, running: 1 }, { ...x, vapourPressure });
  },
};
