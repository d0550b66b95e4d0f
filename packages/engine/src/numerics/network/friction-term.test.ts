import fc from 'fast-check';
import { expect, it } from 'vitest';
import { colebrook, colebrookSlope } from './friction.ts';
import { frictionRoot, LAST_RISE } from './friction-term.ts';
import { STRIDE } from './link-table.ts';

const roughness = fc.constantFrom(0, 1e-6, 1e-4, 0.001, 0.01, 0.05, 0.1);
const start = fc.double({ min: Math.log(4000), max: Math.log(1e9), noNaN: true }).map(Math.exp);
/** Steps that stay near, that go around, and that leap. */
const step = fc.oneof(
  fc.double({ min: -0.035, max: 0.035, noNaN: true }),
  fc.double({ min: -0.75, max: 0.75, noNaN: true }),
  fc.double({ min: 0, max: 1000, noNaN: true }),
);

it('gives the root and its rise to the last digits, from wherever it was last taken', () => {
  fc.assert(
    fc.property(roughness, start, fc.array(step, { maxLength: 8 }), (rough, first, steps) => {
      const p = new Float64Array(STRIDE);
      p[2] = rough;
      let reynolds = first;
      for (const by of [0, ...steps]) {
        reynolds = Math.min(1e9, Math.max(4000, reynolds * (1 + by)));
        const x = frictionRoot(p, 0, reynolds);
        const f = colebrook(reynolds, rough);
        expect(Math.abs(x * x * f - 1)).toBeLessThan(1e-14);
        const slope = (-2 * p[LAST_RISE]!) / (x * x * x * reynolds);
        expect(Math.abs(slope / colebrookSlope(reynolds, rough, f) - 1)).toBeLessThan(1e-12);
      }
    }),
    { numRuns: 500 },
  );
});
