import { describe, expect, it } from 'vitest';
import { BTU, CUBIC_FOOT, FAHRENHEIT_STEP, HOUR, POUND } from '../quantity/index.ts';
import { evaluate, expectOk } from '../trace/index.ts';
import {
  annualElectricity,
  annualFuel,
  annualOutput,
  electricMinimum,
  gasMinimum,
  integratedEfficiency,
  thermalTest,
} from './index.ts';

const btu = (perHour: number): number => (perHour * BTU) / HOUR;

describe('the standard year', () => {
  // Arithmetic by hand from the formulas of 10 CFR 430 Appendix P as remembered: 104 h of 250 000 Btu/h are 26 MBtu.
  it('adds burner, season and the rest of the year', () => {
    const fuel = expectOk(
      evaluate(annualFuel, { heatInput: btu(250_000), pilot: btu(1000), offHeat: btu(500) }),
    );
    expect(fuel / BTU).toBeCloseTo(26e6 + 4360 * 1000 + 4296 * 500, 0);
    const watts = { burnerPower: 100, standbyPower: 8, offPower: 5 };
    expect(expectOk(evaluate(annualElectricity, watts)) / HOUR).toBeCloseTo(
      104 * 100 + 4360 * 8 + 4296 * 5,
      6,
    );
  });

  it('of a heater with nothing but a burner has its thermal efficiency', () => {
    const heatInput = btu(250_000);
    const output = expectOk(evaluate(annualOutput, { heatInput, burnerPower: 0, thermalEfficiency: 0.82 }));
    const fuel = expectOk(evaluate(annualFuel, { heatInput, pilot: 0, offHeat: 0 }));
    expect(expectOk(evaluate(integratedEfficiency, { output, fuel, electricity: 0 }))).toBeCloseTo(0.82, 12);
  });

  it('without any input has no efficiency', () => {
    expect(evaluate(integratedEfficiency, { output: 0, fuel: 0, electricity: 0 })).toMatchObject({
      ok: false,
      issues: [{ code: 'no-solution' }],
    });
  });
});

describe('the thermal test', () => {
  // By hand: 5000 lb · 20.5 °F · 1 Btu/(lb °F) over 125 000 Btu = 0.82.
  it('is water heat over gas heat', () => {
    const test = {
      waterMass: 5000 * POUND,
      rise: 20.5 * FAHRENHEIT_STEP,
      specificHeat: BTU / POUND / FAHRENHEIT_STEP,
      gasVolume: 125 * CUBIC_FOOT,
      heatingValue: (1000 * BTU) / CUBIC_FOOT,
      electricity: 0,
    };
    expect(expectOk(evaluate(thermalTest, test))).toBeCloseTo(0.82, 12);
  });
});

describe('the least allowed', () => {
  it('rises with size towards its constant', () => {
    const [small, large] = [50_000, 400_000].map((one) =>
      expectOk(evaluate(gasMinimum, { heatInput: btu(one) })),
    );
    expect(small).toBeLessThan(large ?? 0);
    expect(large).toBeLessThan(0.84);
    expect(expectOk(evaluate(electricMinimum, { heatOutput: btu(100_000) }))).toBeLessThan(6);
  });
});
