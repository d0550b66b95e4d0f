import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INCH, POUND } from '../quantity/index.ts';
import { expectOk } from '../trace/index.ts';
import { frequencyMultiplier, type LiftPosture, liftLimitOf } from './index.ts';

const DEGREE = Math.PI / 180;
const SELDOM = { perMinute: 0.2, duration: 'short' } as const;

const posture = ([horizontal, vertical, distance, degrees]: readonly [
  number,
  number,
  number,
  number,
]): LiftPosture => ({
  horizontal: horizontal * INCH,
  vertical: vertical * INCH,
  distance: distance * INCH,
  asymmetry: degrees * DEGREE,
});

describe('the lifting equation', () => {
  // By its own definition: hands close, at 75 cm, a way of 25 cm, no twist, good grip, seldom.
  it('gives its load constant in the best of postures', () => {
    const best = posture([10, 30, 10, 0]);
    expect(expectOk(liftLimitOf(best, { coupling: 'good', ...SELDOM })) / POUND).toBeCloseTo(51, 9);
  });

  // NIOSH 94-110, examples 1 and 2, from memory: 16.3 lb at the origin, 14.5 lb at the destination; 18.9 lb. The manual
  // rounds each factor to two digits: up to 2.5 % in the product.
  it.each([
    [[23, 15, 49, 0], 'fair', 16.3],
    [[23, 64, 49, 0], 'fair', 14.5],
    [[18, 15, 21, 45], 'fair', 18.9],
  ] as const)('meets its worked example %j, %s', (at, coupling, pounds) => {
    const limit = expectOk(liftLimitOf(posture(at), { coupling, ...SELDOM }));
    expect(Math.abs(limit / POUND / pounds - 1)).toBeLessThan(0.025);
  });

  it('is never more for reaching, twisting or lifting farther or oftener', () => {
    const any = fc.record({
      horizontal: fc.double({ min: 0, max: 0.6, noNaN: true }),
      vertical: fc.double({ min: 0, max: 1.7, noNaN: true }),
      distance: fc.double({ min: 0, max: 1.7, noNaN: true }),
      asymmetry: fc.double({ min: 0, max: 2.3, noNaN: true }),
    });
    fc.assert(
      fc.property(any, fc.double({ min: 0, max: 14, noNaN: true }), (at, perMinute) => {
        const of = (more: Partial<LiftPosture>, pace = perMinute): number =>
          expectOk(
            liftLimitOf({ ...at, ...more }, { coupling: 'poor', perMinute: pace, duration: 'moderate' }),
          );
        const own = of({});
        expect(of({ horizontal: at.horizontal + 0.03 })).toBeLessThanOrEqual(own);
        expect(of({ distance: at.distance + 0.05 })).toBeLessThanOrEqual(own);
        expect(of({ asymmetry: at.asymmetry + 0.05 })).toBeLessThanOrEqual(own);
        expect(of({}, perMinute + 1)).toBeLessThanOrEqual(own);
      }),
    );
  });

  it('recommends nothing where hands reach too far, and says what bounds them', () => {
    const far = { horizontal: 0.7, vertical: 0.75, distance: 0.25, asymmetry: 0 };
    expect(liftLimitOf(far, { coupling: 'good', ...SELDOM })).toMatchObject({
      ok: false,
      issues: [{ code: 'out-of-range', where: 'horizontal', max: 25 * INCH }],
    });
  });
});

describe('the frequency multiplier', () => {
  it.each([
    [0, 'short', 0.5, 1],
    [3, 'short', 0.5, 0.88],
    [2.5, 'long', 1, 0.6],
    [9, 'long', 0.5, 0],
    [9, 'long', 1, 0.15],
    [15, 'short', 1, 0.28],
    [16, 'short', 1, 0],
  ] as const)('at %d a minute, %s, hands at %d m is %d', (perMinute, duration, vertical, factor) => {
    expect(frequencyMultiplier({ perMinute, duration, vertical })).toBeCloseTo(factor, 12);
  });
});
