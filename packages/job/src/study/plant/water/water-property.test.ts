import type { Finding } from '@firstfire/reference';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findingOf, foundBy, LOOP, type Survey, studyOf, withFields } from './example-loop.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Every field of the loop, as a place to lose. */
const PLACES = Object.entries(LOOP).flatMap(([collection, part]) =>
  (Array.isArray(part) ? (part as readonly Fields[]) : [{ ...(part as Fields), id: '-' }]).flatMap((one) =>
    Object.keys(one)
      .filter((field) => field !== 'id')
      .map((field) => [`${collection}/${String((one as Fields)['id'])}`, field] as const),
  ),
);

function without(places: readonly (readonly [string, string])[]): Survey {
  return places.reduce<Survey>(
    (survey, [path, field]) => withFields(survey, path as `${string}/${string}`, { [field]: undefined }),
    LOOP,
  );
}

function figures({ outcome, margin, plusMinus }: Finding): number[] {
  const shown = Object.values(outcome ?? {}).filter((value) => typeof value === 'number');
  return [...shown, ...[margin, plusMinus].filter((value) => value !== undefined)];
}

describe('any loop', () => {
  it('with fields lost yields findings without NaN, and an unknown one names what is missing', () => {
    fc.assert(
      fc.property(fc.subarray(PLACES, { maxLength: 6 }), fc.boolean(), (lost, uncertainty) => {
        for (const finding of studyOf(without(lost), uncertainty).lines.flatMap((line) => line.findings)) {
          expect(figures(finding).every(Number.isFinite), finding.rule).toBe(true);
          if (finding.line !== 'water' || finding.verdict !== 'unknown') continue;
          expect(finding.missing.length, `${finding.rule} ${JSON.stringify(lost)}`).toBeGreaterThan(0);
        }
      }),
      { numRuns: 80 },
    );
  });

  it('gives the heater no less water for a bigger pipe anywhere but beside it', () => {
    const SIZES = ['1-1/2', '2', '2-1/2', '3', '4', '6'] as const;
    fc.assert(
      fc.property(
        fc.constantFrom('suction', 'discharge', 'approach', 'branch', 'back'),
        fc.nat(SIZES.length - 2),
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom('low clean', 'low dirty', 'high clean', 'high dirty'),
        (id, size, feet, opening, state) => {
          const loop = withFields(LOOP, 'waterLoop/-', { bypassOpening: `measured ${opening.toFixed(3)}` });
          const flow = (place: number): number | undefined => {
            const run = { size: SIZES[place], length: `measured ${feet.toFixed(2)} ft` };
            const finding = findingOf(
              studyOf(withFields(loop, `waterRuns/${id}`, run)),
              'water.heater-flow',
              `h1 ${state}`,
            );
            return finding.verdict === 'unknown' ? undefined : foundBy(finding);
          };
          const [small, big] = [flow(size), flow(size + 1)];
          // A suction so small that the water boils has no flow to compare.
          fc.pre(small !== undefined && big !== undefined);
          expect(big).toBeGreaterThan((small ?? 0) * (1 - 1e-6));
        },
      ),
      { numRuns: 60 },
    );
  });
});
