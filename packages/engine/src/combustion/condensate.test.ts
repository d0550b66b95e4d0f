import { describe, expect, it } from 'vitest';
import { BTU, HOUR, US_GALLON } from '../quantity/index.ts';
import { evaluate, expectOk } from '../trace/index.ts';
import { COMBUSTION_FUELS, condensate, flueDewPoint, flueStateOf } from './index.ts';

const input = (100_000 * BTU) / HOUR;
const at = (fuel: 'natural' | 'propane', celsius: number, excessAir = 0.3): number =>
  expectOk(
    evaluate(condensate, {
      ...flueStateOf(COMBUSTION_FUELS[fuel], {
        excessAir,
        stackTemperature: 273.15 + celsius,
        airTemperature: 283.15,
        airPressure: 101_325,
      }),
      heatInput: input,
    }),
  );
/** kg/s of 100 kBtu/h as gallons an hour. */
const gallons = (flow: number): number => (flow * HOUR) / 1000 / US_GALLON;

describe('condensate', () => {
  // Arithmetic: CH4 + 2 O2 gives 36.03 g of water with 890.6 kJ of gross heat, 105.5 MJ an hour.
  it('is at most all the water that burning forms', () => {
    const all = ((0.03603 / 890_600) * 105.506e6) / 3600;
    expect(at('natural', 20)).toBeLessThan(all);
    expect(at('natural', 11)).toBeGreaterThan(0.9 * all);
  });

  // Common practice, no source: a gallon an hour from 100,000 Btu/h of natural gas is the most one reckons with.
  it('is about a gallon an hour of 100,000 Btu/h where it all condenses', () => {
    expect(gallons(at('natural', 12))).toBeGreaterThan(0.95);
    expect(gallons(at('natural', 12))).toBeLessThan(1.15);
  });

  it('is nothing above the dew point, and begins at it', () => {
    const dew = expectOk(flueDewPoint(COMBUSTION_FUELS.natural, { excessAir: 0.3, airPressure: 101_325 }));
    expect(at('natural', dew - 273.15 + 0.1)).toBe(0);
    expect(at('natural', dew - 273.15 - 0.5)).toBeGreaterThan(0);
  });

  it('is less with more air, and less of propane, which has less hydrogen', () => {
    expect(at('natural', 40, 0.6)).toBeLessThan(at('natural', 40, 0.2));
    expect(at('propane', 40)).toBeLessThan(at('natural', 40));
  });

  it('refuses an input beyond any heater', () => {
    const state = flueStateOf(COMBUSTION_FUELS.natural, {
      excessAir: 0.3,
      stackTemperature: 310,
      airTemperature: 283,
      airPressure: 101_325,
    });
    expect(evaluate(condensate, { ...state, heatInput: 3e6 })).toMatchObject({
      ok: false,
      issues: [{ where: 'heatInput' }],
    });
  });
});
