import fc from 'fast-check';
import { expect, it } from 'vitest';
import { powerTerm } from './power-term.ts';

it('gives r·q^(n−1) to the last digits, near the flow it was last taken at and far from it', () => {
  const n = fc.constantFrom(0.6, 1, 1.75, 1.852, 2.5, 4);
  const near = fc.double({ min: -0.012, max: 0.012, noNaN: true });
  fc.assert(
    fc.property(n, fc.double({ min: 1e-6, max: 10, noNaN: true }), near, (exponent, q, e) => {
      const p = Float64Array.of(3, exponent, 0, 0, 0, 0, 0, 0);
      expect(powerTerm(p, 0, q)).toBe(3 * q ** (exponent - 1));
      const moved = q * (1 + e);
      expect(Math.abs(powerTerm(p, 0, moved) / (3 * moved ** (exponent - 1)) - 1)).toBeLessThan(2e-15);
    }),
    { numRuns: 500 },
  );
});
