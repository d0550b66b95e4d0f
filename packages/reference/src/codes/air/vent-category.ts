/** Gas under pressure or that condenses: a vent made for its category, and somewhere for the water to go. */
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPractice } from '../known.ts';
import { ifgc } from './codes.ts';

/** Category I leads dry gas by its draught; II is wet, III under pressure, IV both: these leak through joints that are not sealed. */
export const ventCategory = defineRule({
  id: 'air.vent-category',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { category: 'heater.vent-category', kind: 'heater.vent-kind' },
  editions: byNameplate({}),
  check: (_n, w) => ({ sense: 'holds', holds: (w.category === 'I') !== (w.kind === 'sealed') }),
});

export const ventListed = defineRule({
  id: 'air.vent-listed',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { listed: 'heater.vent-listed' },
  editions: byNameplate({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.listed === 'yes' }),
});

/** Materials that bear acid water, and those that bear dry gas of some hundred degrees. */
const BEARS_ACID: ReadonlySet<string> = new Set(['stainless steel', 'polypropylene', 'CPVC', 'PVC']);
const BEARS_HEAT: ReadonlySet<string> = new Set(['stainless steel']);

export const ventMaterial = defineRule({
  id: 'air.vent-material',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { material: 'heater.vent-material', category: 'heater.vent-category' },
  editions: byPractice({}),
  check: (_n, w) => {
    const bears = w.category === 'III' ? BEARS_HEAT : BEARS_ACID;
    return w.category === 'I'
      ? { sense: 'does-not-apply' }
      : { sense: 'holds', holds: bears.has(w.material) };
  },
});

/** Divided by the longest its maker allows. */
export const ventLength = defineRule({
  id: 'air.vent-length',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.vent-length', required: 'heater.vent-length-greatest' },
  words: {},
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'length',
    yardstick: n.required,
  }),
});

export const condensateDrained = defineRule({
  id: 'air.condensate-drained',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { drain: 'heater.condensate-drain' },
  editions: byNameplate({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.drain !== 'none' }),
});

export const condensateNeutral = defineRule({
  id: 'air.condensate-neutral',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { neutral: 'heater.condensate-neutral' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.neutral === 'yes' }),
});

export const condensateFrost = defineRule({
  id: 'air.condensate-frost',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { safe: 'heater.condensate-frost' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.safe === 'yes' }),
});

/** Divided by the most that runs. */
export const condensateCapacity = defineRule({
  id: 'air.condensate-capacity',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.condensate-capacity', required: 'heater.condensate' },
  words: {},
  editions: byNameplate({}),
  check: (n) =>
    // Warmer than its dew point the gas drops nothing.
    n.required === 0
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-least',
          required: n.required,
          found: n.found,
          kind: 'volume-flow',
          yardstick: n.required,
        },
});

/** What drips from a terminal freezes on the way of people. */
export const condensateOffWalkway = defineRule({
  id: 'air.condensate-off-walkway',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { category: 'heater.vent-category', walkway: 'heater.public-walkway' },
  editions: [ifgc('503.8, read as NFPA 54-2012 12.9.4', {})],
  check: (_n, w) =>
    w.category === 'II' || w.category === 'IV'
      ? { sense: 'holds', holds: w.walkway === 'no' }
      : { sense: 'does-not-apply' },
});
