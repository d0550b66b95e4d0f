import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { THERM } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { EMISSION_FACTORS, type GasName, gasMixture } from './index.ts';

describe('gas mixture', () => {
  // ISO 6976:1995, real gas at 15/15 °C and 101.325 kPa: methane 37.78 MJ/m3 and relative density 0.5548 (from memory).
  it('methane', () => {
    const methane = expectOk(gasMixture({ methane: 1 }));
    expect(methane.grossHeatingValue / 1e6).toBeCloseTo(37.78, 2);
    expect(methane.specificGravity).toBeCloseTo(0.5548, 3);
    expect(methane.netHeatingValue / methane.grossHeatingValue).toBeCloseTo(0.9, 2);
  });

  it('lies between its parts, and dilution takes heat away', () => {
    const fraction = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    const inert = fc.constantFrom<GasName>('nitrogen', 'carbon-dioxide');
    const methane = expectOk(gasMixture({ methane: 1 }));
    const propane = expectOk(gasMixture({ propane: 1 }));
    fc.assert(
      fc.property(fraction, inert, (x, name) => {
        const mixed = expectOk(gasMixture({ methane: x, propane: 1 - x }));
        expect(mixed.grossHeatingValue).toBeGreaterThan(methane.grossHeatingValue);
        expect(mixed.grossHeatingValue).toBeLessThan(propane.grossHeatingValue);
        const thinned = expectOk(gasMixture({ methane: x, [name]: 1 - x }));
        expect(thinned.wobbeIndex).toBeLessThan(methane.wobbeIndex);
      }),
    );
  });

  it.each([
    ['fractions-do-not-add-to-1', { methane: 0.9 }],
    ['fraction-outside-0-1', { methane: 1.5, propane: -0.5 }],
    ['nothing-burns', { nitrogen: 1 }],
  ])('%s', (reason, composition) => {
    expect(gasMixture(composition)).toMatchObject({ ok: false, issues: [{ code: 'ill-formed', reason }] });
  });
});

describe('emissions', () => {
  // 40 CFR 98 Table C-1: 53.06 kg a million Btu.
  it('a therm of natural gas', () => {
    expect(EMISSION_FACTORS.natural.carbonDioxide * THERM).toBeCloseTo(5.306, 6);
  });

  it('nothing else adds much to the carbon dioxide of a heater', () => {
    for (const factor of Object.values(EMISSION_FACTORS)) {
      const ratio = factor.carbonDioxideEquivalent / factor.carbonDioxide;
      expect(ratio).toBeGreaterThan(1);
      expect(ratio).toBeLessThan(1.005);
    }
  });
});
