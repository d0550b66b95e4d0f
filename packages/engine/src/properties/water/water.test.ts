import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../../trace/index.ts';
import {
  boilingTemperatureOfWater,
  densityOfWater,
  enthalpyOfWater,
  latentHeatOfWater,
  specificHeatOfWater,
  vapourPressureOfWater,
  viscosityOfWater,
  waterBoilingTemperature,
  waterDensity,
  waterLatentHeat,
  waterSpecificHeat,
  waterThermalConductivity,
  waterVapourPressure,
} from './index.ts';

const liquid = fc.double({ min: 273.15, max: 373.15, noNaN: true });

describe('liquid water', () => {
  // IAPWS SR6-08(2011), Table 6, as carried by an open implementation of it: 260 K, supercooled, beyond our door.
  it('gives the check values of its release', () => {
    expect(densityOfWater(260)).toBeCloseTo(997.06836027, 7);
    expect(enthalpyOfWater(260)).toBeCloseTo(-55_862.231745, 5);
  });

  it('has a specific heat that is the slope of its enthalpy', () => {
    fc.assert(
      fc.property(fc.double({ min: 274, max: 372, noNaN: true }), (T) => {
        const slope = (enthalpyOfWater(T + 0.01) - enthalpyOfWater(T - 0.01)) / 0.02;
        expect(slope / specificHeatOfWater(T)).toBeCloseTo(1, 6);
      }),
    );
  });

  it('is densest at 4 °C', () => {
    for (const T of [273.15, 275.15, 279.15, 290])
      expect(densityOfWater(T)).toBeLessThan(densityOfWater(277.13));
  });

  it('thins as it warms', () => {
    fc.assert(
      fc.property(liquid, (T) => {
        expect(viscosityOfWater(T + 1)).toBeLessThan(viscosityOfWater(T));
      }),
    );
  });

  it('refuses ice, steam and nonsense', () => {
    for (const formula of [waterDensity, waterSpecificHeat, waterThermalConductivity]) {
      for (const temperature of [0, 273, 400, Number.NaN]) {
        const answer = evaluate(formula, { temperature });
        expect(answer.ok).toBe(false);
      }
    }
  });
});

describe('boiling line', () => {
  // IAPWS R7-97(2012), Tables 35 and 36.
  it('gives the verification values of its release', () => {
    expect(vapourPressureOfWater(300) / 1e6).toBeCloseTo(0.353658941e-2, 11);
    expect(boilingTemperatureOfWater(0.1e6)).toBeCloseTo(372.755919, 6);
    expect(boilingTemperatureOfWater(1e6)).toBeCloseTo(453.035632, 6);
  });

  it('returns from pressure to temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: 273.15, max: 473.15, noNaN: true }), (T) => {
        expect(boilingTemperatureOfWater(vapourPressureOfWater(T))).toBeCloseTo(T, 8);
      }),
    );
  });

  it('takes less heat to evaporate the warmer the water', () => {
    fc.assert(
      fc.property(liquid, (T) => {
        expect(latentHeatOfWater(T + 0.5)).toBeLessThan(latentHeatOfWater(T));
      }),
    );
  });

  it('names the range it was left by', () => {
    const answer = evaluate(waterVapourPressure, { temperature: 200 });
    expect(answer).toMatchObject({
      ok: false,
      issues: [{ code: 'out-of-range', where: 'temperature', min: 273.15 }],
    });
    expect(evaluate(waterBoilingTemperature, { pressure: 100 }).ok).toBe(false);
    expect(expectOk(evaluate(waterLatentHeat, { temperature: 298.15 })) / 1e3).toBeCloseTo(2441.7, 0);
  });
});
