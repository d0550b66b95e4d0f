import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frictionFactor, frictionSlope } from './friction.ts';

const roughness = fc.constantFrom(0, 1e-6, 1e-4, 0.001, 0.01, 0.05, 0.1);
const reynolds = fc.double({ min: Math.log(50), max: Math.log(1e9), noNaN: true }).map(Math.exp);

describe('friction factor', () => {
  it.each([
    // Moody chart, read to two or three digits (from memory).
    [1e5, 0.001, 0.0222],
    [1e6, 0, 0.0116],
    [1e5, 0, 0.018],
    [1e7, 0.01, 0.0379],
  ])('stands on the Moody chart at Re %d, ε/D %d', (re, rough, f) => {
    expect(Math.abs(frictionFactor(re, rough) / f - 1)).toBeLessThan(0.015);
  });

  it('is 64/Re in laminar flow', () => {
    expect(frictionFactor(640, 0.01)).toBe(0.1);
  });

  it('satisfies the Colebrook equation to the last digits from Re 4000', () => {
    fc.assert(
      fc.property(fc.double({ min: 4000, max: 1e9, noNaN: true }), roughness, (re, rough) => {
        const x = 1 / Math.sqrt(frictionFactor(re, rough));
        expect(Math.abs(x + 2 * Math.log10(rough / 3.7 + (2.51 / re) * x))).toBeLessThan(1e-13 * x);
      }),
    );
  });

  it('has no step and no kink at either end of the bridge', () => {
    for (const re of [2000, 4000])
      for (const rough of [0, 0.001, 0.05]) {
        const [below, above] = [re * (1 - 1e-9), re * (1 + 1e-9)];
        expect(frictionFactor(above, rough)).toBeCloseTo(frictionFactor(below, rough), 8);
        expect(frictionSlope(above, rough)).toBeCloseTo(frictionSlope(below, rough), 8);
      }
  });

  it('has the slope of its own differences', () => {
    fc.assert(
      fc.property(reynolds, roughness, (re, rough) => {
        const h = 1e-5 * re;
        const difference = (frictionFactor(re + h, rough) - frictionFactor(re - h, rough)) / (2 * h);
        const scale = frictionFactor(re, rough) / re;
        expect(Math.abs(frictionSlope(re, rough) - difference)).toBeLessThan(1e-4 * scale);
      }),
    );
  });

  it('gives a loss that rises with flow everywhere: f·Re² never falls', () => {
    fc.assert(
      fc.property(reynolds, roughness, (re, rough) => {
        const loss = (x: number): number => frictionFactor(x, rough) * x * x;
        expect(loss(re * 1.001)).toBeGreaterThan(loss(re));
      }),
    );
  });
});
