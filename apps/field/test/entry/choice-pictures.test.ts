/** Drawings beside choices: each of a field has one, or none has; and pipes are drawn as wide as they are. */
import { RECORD_BY_COLLECTION } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { drawnChoices } from '../../src/entry/choice-pictures.ts';
import { boreOf } from '../../src/entry/sizes.ts';

describe('drawings of choices', () => {
  it.each(Object.entries(drawnChoices()))('of %s are of all its choices', (path, drawn) => {
    const [collection = '', field = ''] = path.split('.');
    const spec = RECORD_BY_COLLECTION.get(collection)?.fields[field];
    expect(spec?.type === 'choice' && [...spec.choices].sort()).toEqual([...drawn].sort());
  });
});

describe('the end of a pipe', () => {
  const INCH = 0.0254;

  it('is as wide as the trade makes it', () => {
    // ASTM D1785, schedule 40: 2 in is 2.375 in outside. Copper type L, ASTM B88: 3/4 in is 0.875 in outside.
    expect(boreOf('waterRuns', 'pvc-40', '2')?.outside).toBeCloseTo(2.375 * INCH, 5);
    expect(boreOf('gasSegments', 'copper-tube', '3/4')?.outside).toBeCloseTo(0.875 * INCH, 5);
    // Polyethylene of 1 in, iron pipe size: 1.315 in outside (ASTM D2513); the ratio gives it within a hundredth.
    expect(boreOf('gasSegments', 'polyethylene', '1')?.outside).toBeCloseTo(1.315 * INCH, 3);
  });

  it('is not known of corrugated tubing and of sizes there are not', () => {
    expect(boreOf('gasSegments', 'csst', 'EHD 25')).toBeUndefined();
    expect(boreOf('waterRuns', 'pvc-40', '99')).toBeUndefined();
  });
});
