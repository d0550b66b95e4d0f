import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { linearTable } from './linear.ts';
import { monotoneCubicTable } from './monotone-cubic.ts';
import type { Extrapolation } from './table.ts';

const table = (beyond: Extrapolation) => ({ where: 't', xs: [0, 1, 3], ys: [0, 10, 14], beyond });

describe.each([
  ['linear', linearTable],
  ['monotone cubic', monotoneCubicTable],
])('%s table', (_name, make) => {
  it('passes through its points', () => {
    const t = expectOk(make(table('issue')));
    expect([0, 1, 3].map((x) => expectOk(t.at(x)))).toEqual([0, 10, 14]);
  });

  it('is an issue beyond its points, or holds, as was stated', () => {
    const strict = expectOk(make(table('issue')));
    expect(strict.at(3.1)).toEqual({
      ok: false,
      issues: [{ code: 'out-of-range', where: 't', found: 3.1, min: 0, max: 3 }],
    });
    expect(strict.at(Number.NaN)).toMatchObject({ issues: [{ code: 'not-finite' }] });
    const held = expectOk(make(table('hold')));
    expect([held.value(-5), held.value(99)]).toEqual([0, 14]);
  });

  it('goes on with the slope at its end when told to extend', () => {
    const t = expectOk(make(table('extend')));
    const slope = (t.value(3) - t.value(3 - 1e-7)) / 1e-7;
    expect((t.value(5) - t.value(3)) / 2).toBeCloseTo(slope, 4);
  });

  it('refuses points that are too few, unequal, not rising or not finite', () => {
    const bad = (xs: number[], ys: number[]) => make({ where: 't', xs, ys, beyond: 'hold' });
    expect(bad([0], [1]).ok).toBe(false);
    expect(bad([0, 1], [1]).ok).toBe(false);
    expect(bad([0, 0], [1, 2])).toMatchObject({ issues: [{ reason: 'table-not-rising' }] });
    expect(bad([0, 1], [1, Number.NaN])).toMatchObject({ issues: [{ code: 'not-finite' }] });
  });

  it('never leaves the values of the interval it is in', () => {
    const points = fc.array(
      fc.tuple(fc.double({ min: 0.01, max: 5, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true })),
      { minLength: 2, maxLength: 9 },
    );
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (steps, part) => {
        let x = 0;
        const xs = steps.map(([dx]) => (x += dx));
        const ys = steps.map(([, y]) => y);
        const t = expectOk(make({ where: 't', xs, ys, beyond: 'issue' }));
        for (let k = 0; k + 1 < xs.length; k += 1) {
          const value = t.value(xs[k]! + part * (xs[k + 1]! - xs[k]!));
          const [low, high] = [Math.min(ys[k]!, ys[k + 1]!), Math.max(ys[k]!, ys[k + 1]!)];
          expect(value).toBeGreaterThanOrEqual(low - 1e-9);
          expect(value).toBeLessThanOrEqual(high + 1e-9);
        }
      }),
    );
  });
});

it('halves a line by hand: (0, 0) to (1, 10) at 0.4 is 4', () => {
  expect(expectOk(linearTable(table('issue'))).value(0.4)).toBeCloseTo(4, 12);
});

it('reproduces a straight line and comes close to a smooth function', () => {
  const xs = Array.from({ length: 21 }, (_, k) => k / 10);
  const line = expectOk(
    monotoneCubicTable({ where: 't', xs, ys: xs.map((x) => 3 * x - 1), beyond: 'issue' }),
  );
  expect(line.value(1.234)).toBeCloseTo(3 * 1.234 - 1, 12);
  const exp = expectOk(monotoneCubicTable({ where: 't', xs, ys: xs.map(Math.exp), beyond: 'issue' }));
  expect(Math.abs(exp.value(1.23) / Math.exp(1.23) - 1)).toBeLessThan(1e-4);
});
