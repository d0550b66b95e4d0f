/** The filter: not overrun at the greatest flow, and how dirty it is now. */
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate } from '../known.ts';

/** The flow, not the rate, is what people know a pump and a filter by. Divided by the limit. */
export const filterRate = defineRule({
  id: 'water.filter-rate',
  line: 'water',
  scope: 'filter',
  numbers: { found: 'filter.flow-greatest', area: 'filter.area', rate: 'filter.rate-greatest' },
  words: {},
  editions: byNameplate({}),
  check: (n) => {
    const required = n.rate * n.area;
    return { sense: 'at-most', required, found: n.found, kind: 'volume-flow', yardstick: required };
  },
});

/** At the speed of the clean figure, whatever speed the gauge was read at. Divided by the rise allowed. */
export const filterLoading = defineRule({
  id: 'water.filter-loading',
  line: 'water',
  scope: 'filter',
  numbers: { found: 'filter.rise-at-clean-speed', required: 'filter.dirty-rise' },
  words: {},
  editions: byNameplate({}),
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-most',
          required: n.required,
          found: n.found,
          kind: 'pressure-difference',
          yardstick: n.required,
        },
});
