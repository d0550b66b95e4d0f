import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../trace/index.ts';
import { soundAtDistance, standingShare, windPressure } from './index.ts';

describe('sound at a distance', () => {
  // calculator.academy, Distance attenuation: 95 dB at 1 m → 76.94 dB at 8 m; ratios 2, 4, 10, 100 → 6.0, 12.0, 20.0, 40.0.
  it('meets the printed example and table', () => {
    const at = (level: number, distance: number) =>
      expectOk(evaluate(soundAtDistance, { level, referenceDistance: 1, distance }));
    expect(at(95, 8)).toBeCloseTo(76.94, 2);
    for (const [ratio, less] of [
      [2, 6],
      [4, 12],
      [10, 20],
      [100, 40],
    ] as const)
      expect(100 - at(100, ratio)).toBeCloseTo(less, 1);
  });

  it('is not asked nearer than it was measured', () => {
    const near = evaluate(soundAtDistance, { level: 60, referenceDistance: 3, distance: 1 });
    expect(near).toMatchObject({ ok: false, issues: [{ code: 'no-solution' }] });
  });
});

describe('wind', () => {
  // ASCE 7 prints the same law as 0.00256·V² in psf and mph; from memory.
  it('has the pressure of the customary equation', () => {
    const q = expectOk(evaluate(windPressure, { windSpeed: 115 * 0.44704, exposure: 0.85 }));
    expect(q / 47.880259).toBeCloseTo(0.00256 * 0.85 * 115 ** 2, 1);
  });

  it('holds a box as a balance of moments does', () => {
    const box = { mass: 80, width: 0.7, depth: 0.7, height: 0.9, windPressure: 1377 };
    const force = 1377 * 0.85 * 1.4 * 0.7 * 0.9;
    expect(expectOk(evaluate(standingShare, box))).toBeCloseTo(
      (0.6 * 80 * 9.80665 * 0.35) / (force * 0.45),
      12,
    );
  });

  it('never holds a lighter or taller box better', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 200, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (mass, factor) => {
          const box = { mass, width: 0.7, depth: 0.7, height: 0.9, windPressure: 900 };
          const share = expectOk(evaluate(standingShare, box));
          expect(expectOk(evaluate(standingShare, { ...box, mass: mass * factor }))).toBeGreaterThanOrEqual(
            share,
          );
          expect(expectOk(evaluate(standingShare, { ...box, height: 0.9 * factor }))).toBeLessThanOrEqual(
            share,
          );
        },
      ),
    );
  });

  it('in a calm there is nothing to divide by: out of range, no number', () => {
    const calm = evaluate(standingShare, { mass: 80, width: 1, depth: 1, height: 1, windPressure: 0 });
    expect(calm).toMatchObject({ ok: false, issues: [{ code: 'out-of-range' }] });
  });
});
