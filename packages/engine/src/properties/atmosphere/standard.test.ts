import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../trace/index.ts';
import {
  boilingPoint,
  standardDensity,
  standardPressure,
  standardPressureAt,
  standardTemperature,
} from './index.ts';

describe('standard atmosphere', () => {
  // U.S. Standard Atmosphere 1976, its defining sea-level values and the top of its first layer (11 km geopotential,
  // 11,019 m geometric: 226.32 hPa, from memory), which the range of the door stops just short of.
  it('meets its own ends', () => {
    expect(standardPressureAt(0)).toBe(101_325);
    expect(standardTemperature.kernel({ altitude: 0 })).toBe(288.15);
    expect(Math.abs(standardDensity.kernel({ altitude: 0 }) - 1.225)).toBeLessThan(5e-5);
    expect(Math.abs(standardPressureAt(11_019.1) - 22_632)).toBeLessThan(1);
  });

  it('falls with height, and so does the boiling point', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 10_900, noNaN: true }), (altitude) => {
        for (const formula of [standardPressure, standardTemperature, standardDensity, boilingPoint]) {
          expect(formula.kernel({ altitude: altitude + 10 })).toBeLessThan(formula.kernel({ altitude }));
        }
      }),
    );
  });

  // Hydrostatics, which the printed equation is the integral of: dp = −ρ·g·dH.
  it('carries its own weight', () => {
    for (const altitude of [0, 1000, 3000, 8000]) {
      const drop = standardPressureAt(altitude - 1) - standardPressureAt(altitude + 1);
      const gravity = 9.80665 * (6_356_766 / (6_356_766 + altitude)) ** 2;
      expect(drop / (2 * gravity * standardDensity.kernel({ altitude }))).toBeCloseTo(1, 6);
    }
  });

  it('stops where the layer stops', () => {
    for (const altitude of [-600, 12_000, Number.NaN])
      expect(evaluate(standardPressure, { altitude }).ok).toBe(false);
  });
});
