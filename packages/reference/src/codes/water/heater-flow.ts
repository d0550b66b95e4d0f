/** Water through the heater: inside its nameplate band in every state it may run in, and no more than its header bears. */
import { quantity } from '@firstfire/engine';
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPractice } from '../known.ts';

/** A band, by half its width: the middle stands at 100 %, either end at 0. */
export const heaterFlow = defineRule({
  id: 'water.heater-flow',
  line: 'water',
  scope: 'water-state',
  numbers: {
    found: 'water-state.heater-flow',
    low: 'water-state.flow-least',
    high: 'water-state.flow-greatest',
  },
  words: {},
  editions: byNameplate({}),
  check: (n) => ({ sense: 'within', low: n.low, high: n.high, found: n.found, kind: 'volume-flow' }),
});

/** Nominal bore of the header that the figure is for, and how far another may be from it and still be called so, m. */
const TWO_INCH = 0.0508;
const NEAR = 0.004;

/**
 * 125 gpm is the most that a 2 in header takes before an outside bypass is needed. It is already about 12 ft/s in 2 in
 * pipe, above what is usual for returns. Divided by the limit.
 */
export const headerFlow = defineRule({
  id: 'water.header-flow',
  line: 'water',
  scope: 'heater',
  numbers: { found: 'heater.water-flow-greatest', header: 'heater.header' },
  words: {},
  editions: byPractice({ cubicMetresPerSecond: (125 * quantity.US_GALLON) / quantity.MINUTE }),
  check: (n, _w, values) =>
    Math.abs(n.header - TWO_INCH) > NEAR
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-most',
          required: values.cubicMetresPerSecond,
          found: n.found,
          kind: 'volume-flow',
          yardstick: values.cubicMetresPerSecond,
        },
});
