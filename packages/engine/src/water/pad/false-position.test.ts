import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { falsePosition } from './false-position.ts';

function search(f: (x: number) => number, low: number, high: number) {
  let evaluations = 0;
  const counted = (x: number): number => {
    evaluations += 1;
    return f(x);
  };
  const found = falsePosition(counted, { low, atLow: f(low), high, atHigh: f(high), small: 1e-9 });
  return { found, evaluations };
}

describe('falsePosition', () => {
  it('finds √2, and stops at the argument it looked at last', () => {
    const { found, evaluations } = search((x) => x * x - 2, 1, 2);
    expect(Math.abs(expectOk(found) - Math.SQRT2)).toBeLessThan(1e-9);
    expect(evaluations).toBeLessThan(6);
  });

  it('finds the zero of any function that rises, gently or with a kink', () => {
    const bend = fc.double({ min: 0.05, max: 20, noNaN: true });
    fc.assert(
      fc.property(bend, bend, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (before, after, root) => {
        const f = (x: number): number => (x < root ? before : after) * Math.sinh(3 * (x - root));
        const { found, evaluations } = search(f, 0, 1);
        expect(Math.abs(f(expectOk(found)))).toBeLessThanOrEqual(1e-9);
        expect(evaluations).toBeLessThan(40);
      }),
    );
  });

  it('says when there is nothing to find', () => {
    expect(search((x) => x + 1, 0, 1).found).toMatchObject({ issues: [{ reason: 'no-sign-change' }] });
    expect(search((x) => (x < 0.5 ? -1 : x === 1 ? 1 : Number.NaN), 0, 1).found).toMatchObject({
      issues: [{ code: 'not-finite' }],
    });
  });
});
