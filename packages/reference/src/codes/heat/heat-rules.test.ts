/** What the heat line claims of its sources. */
import { describe, expect, it } from 'vitest';
import { HEAT_RULES } from './index.ts';

describe('the heat balance', () => {
  // Smith, Löf and Jones, ASHRAE's activity form and the covers' shares outdoors were recalled or are practice.
  it.each(['heat.hold-temperature', 'heat.warm-in-time', 'heat.plateau'])(
    '%s rests on correlations from memory, and says so',
    (id) => {
      const rule = HEAT_RULES.find((one) => one.id === id);
      expect(rule?.editions.map((edition) => edition.source.known)).toEqual(['from memory']);
    },
  );
});
