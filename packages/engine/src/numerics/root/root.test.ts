import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { bracket } from './bracket.ts';
import { brentRoot } from './brent.ts';
import { brentMinimum } from './minimum.ts';

describe('root of one function', () => {
  it.each([
    // Known constants: the Dottie number, √2, the golden ratio, and π as a zero of the sine.
    ['cos x − x', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['x² − 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['x² − x − 1', (x: number) => x * x - x - 1, 1, 2, (1 + Math.sqrt(5)) / 2],
    ['sin x', Math.sin, 3, 4, Math.PI],
  ])('%s', (_name, f, low, high, root) => {
    expect(expectOk(brentRoot(f, { low, high }))).toBeCloseTo(root, 14);
  });

  it('finds the root of any shifted cubic (there and back)', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (r) => {
        const f = (x: number): number => (x - r) ** 3 + (x - r);
        const found = expectOk(brentRoot(f, { low: -60, high: 75 }));
        expect(Math.abs(found - r)).toBeLessThan(1e-12 * Math.max(1, Math.abs(r)));
      }),
    );
  });

  it('takes either order of the ends, a flat function and a jump', () => {
    expect(expectOk(brentRoot((x) => x - 1, { low: 3, high: 0 }))).toBeCloseTo(1, 14);
    expect(expectOk(brentRoot((x) => x ** 9, { low: -1, high: 4 }, { tolerance: 1e-9 }))).toBeCloseTo(0, 2);
    expect(expectOk(brentRoot((x) => (x < 0.3 ? -1 : 1), { low: 0, high: 1 }))).toBeCloseTo(0.3, 12);
  });

  it('reports ends of one sign, a bound too low, and a function that is not a number', () => {
    expect(brentRoot((x) => x * x + 1, { low: -1, high: 1 })).toMatchObject({
      issues: [{ code: 'no-solution', reason: 'no-sign-change' }],
    });
    expect(brentRoot(Math.cos, { low: 0, high: 3 }, { maxIterations: 2 })).toMatchObject({
      issues: [{ code: 'not-converged' }],
    });
    const hole = (x: number): number => (x > 0.4 && x < 0.6 ? Number.NaN : x - 0.5);
    expect(brentRoot(hole, { low: 0, high: 1 })).toMatchObject({ issues: [{ code: 'not-finite' }] });
  });
});

describe('bracket', () => {
  const limit = { low: -1000, high: 1000 };

  it('widens to a change of sign on either side', () => {
    fc.assert(
      fc.property(fc.double({ min: -900, max: 900, noNaN: true }), (r) => {
        const found = expectOk(bracket((x) => x - r, { low: 0, high: 1 }, limit));
        expect(found.low <= r && r <= found.high).toBe(true);
      }),
    );
  });

  it('gives up at its limit', () => {
    expect(bracket((x) => x - 2000, { low: 0, high: 1 }, limit)).toMatchObject({
      issues: [{ code: 'no-solution', min: -1000, max: 1000 }],
    });
    expect(bracket(() => Number.NaN, { low: 0, high: 1 }, limit).ok).toBe(false);
  });
});

describe('least value', () => {
  it('of a parabola, and of x·ln x at 1/e', () => {
    const parabola = expectOk(brentMinimum((x) => (x - 2) ** 2 + 1, { low: 0, high: 5 }));
    expect(parabola.at).toBeCloseTo(2, 7);
    expect(parabola.value).toBeCloseTo(1, 14);
    const entropy = expectOk(brentMinimum((x) => x * Math.log(x), { low: 1e-6, high: 3 }));
    expect(entropy.at).toBeCloseTo(1 / Math.E, 7);
  });

  it('at an end, when the function only falls', () => {
    expect(expectOk(brentMinimum((x) => -x, { low: 0, high: 1 })).at).toBeCloseTo(1, 6);
  });

  it('reports its bound and a function that is not a number', () => {
    expect(brentMinimum(Math.cos, { low: 0, high: 6 }, { maxIterations: 3 })).toMatchObject({
      issues: [{ code: 'not-converged' }],
    });
    expect(brentMinimum(() => Number.NaN, { low: 0, high: 1 })).toMatchObject({
      issues: [{ code: 'not-finite' }],
    });
  });
});
