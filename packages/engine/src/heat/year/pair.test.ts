import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Pair, solvePair } from './pair.ts';

const around = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const pairs = fc
  .record({
    c1: around(100, 1e5),
    c2: around(100, 1e5),
    x: fc.oneof(fc.constant(0), around(0, 1e5)),
    s1: fc.oneof(fc.constant(0), around(280, 315)),
    s2: fc.oneof(fc.constant(0), around(280, 315)),
    before1: around(275, 320),
    before2: around(275, 320),
    lost1: around(-2e4, 5e4),
    lost2: around(-2e4, 5e4),
    limit: fc.oneof(fc.constant(0), around(0, 5e6)),
  })
  .map(({ before1, before2, lost1, lost2, ...rest }) => {
    const pair = Object.assign(new Pair(), rest);
    pair.r1 = rest.c1 * before1 - lost1;
    pair.r2 = rest.c2 * before2 - lost2;
    return pair;
  });

describe('two basins on one heater', () => {
  it('obey both balances and the heater’s limit', () => {
    fc.assert(
      fc.property(pairs, (p) => {
        solvePair(p);
        const scale = 1e-9 * (p.c1 + p.c2 + p.x) * 320;
        expect(Math.abs(p.c1 * p.t1 + p.x * (p.t1 - p.t2) - p.r1 - p.q1)).toBeLessThan(scale);
        expect(Math.abs(p.c2 * p.t2 + p.x * (p.t2 - p.t1) - p.r2 - p.q2)).toBeLessThan(scale);
        expect(Math.min(p.q1, p.q2)).toBeGreaterThanOrEqual(-scale);
        expect(p.q1 + p.q2).toBeLessThanOrEqual(p.limit + scale);
      }),
    );
  });

  it('heat no basin beyond its set point, and leave none cold while there is heat to spare', () => {
    fc.assert(
      fc.property(pairs, (p) => {
        solvePair(p);
        const near = 1e-6;
        if (p.q1 > near * p.c1) expect(p.t1).toBeLessThanOrEqual(p.s1 + near);
        if (p.q2 > near * p.c2) expect(p.t2).toBeLessThanOrEqual(p.s2 + near);
        const spare = p.limit - p.q1 - p.q2 > near * (p.c1 + p.c2 + p.x);
        if (spare) {
          expect(p.t1).toBeGreaterThanOrEqual(p.s1 - near);
          expect(p.t2).toBeGreaterThanOrEqual(p.s2 - near);
        }
      }),
    );
  });

  it('serve the first before the second', () => {
    fc.assert(
      fc.property(pairs, (p) => {
        solvePair(p);
        if (p.q2 > 1e-6 * p.c2) expect(p.t1).toBeGreaterThanOrEqual(p.s1 - 1e-6);
      }),
    );
  });
});
