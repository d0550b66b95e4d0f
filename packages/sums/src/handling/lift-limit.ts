import { handling, ok } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { choice, defineSum, number } from '../sum.ts';

/** What one person may lift with two hands in a posture. */
export const liftLimit = defineSum({
  name: 'lift-limit',
  inputs: {
    horizontal: number('length', 'in'),
    vertical: number('length', 'in'),
    distance: number('length', 'in'),
    asymmetry: number('angle', 'deg'),
    coupling: choice(handling.COUPLINGS),
    'per-minute': number('ratio', '1', { min: 0, max: 15 }),
    duration: { ...choice(['short', 'moderate', 'long']), optional: true, fallback: 'short' },
  },
  outputs: { weight: { kind: 'mass', unit: 'lb' } },
  source: handling.LIFTING_SOURCE,
  example: {
    given: {
      horizontal: '23 in',
      vertical: '15 in',
      distance: '49 in',
      asymmetry: '0 deg',
      coupling: 'fair',
      'per-minute': '0.2',
    },
    gives: { weight: '16.3 lb' },
    // The manual rounds each factor to two digits.
    within: 0.025,
    source: { document: 'NIOSH 94-110', at: 'example 1, origin', known: 'from memory' },
  },
  run: (x) => {
    const { horizontal, vertical, distance, asymmetry } = x;
    const pace = { coupling: x.coupling, perMinute: x['per-minute'], duration: x.duration ?? 'short' };
    const limit = handling.liftLimitOf({ horizontal, vertical, distance, asymmetry }, pace);
    return limit.ok ? ok({ weight: limit.value }) : failTyped(limit.issues);
  },
});
