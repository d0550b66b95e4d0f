/** The valve beside the heater: whether one opening suits every speed and filter state, and whether it stands there. */
import { type Because, defineRule, type Outcome } from '../../evaluate/index.ts';
import { byNameplate } from '../known.ts';

/** Whom the finding is about, by the ids that stand in one word. */
function between(ids: string): Pick<Because, 'scope' | 'ids'> {
  return { scope: 'water-state', ids: ids.split('|').filter((id) => id !== '') };
}

/** Yes or no: the width of the interval is the next rule's matter. */
export const bypassRange = defineRule({
  id: 'water.bypass-range',
  line: 'water',
  scope: 'job',
  numbers: {},
  words: { found: 'job.bypass-found', between: 'job.bypass-between' },
  editions: byNameplate({}),
  check: (_n, w) =>
    w.found === 'interval'
      ? { sense: 'holds', holds: true }
      : { sense: 'holds', holds: false, because: { reason: w.found, ...between(w.between) } },
});

/**
 * A band, by half its width. An end that is the valve's own stop is no limit: what is left is one limit, and an
 * opening has a true zero, so that it is divided by that limit.
 */
export const bypassHandle = defineRule({
  id: 'water.bypass-handle',
  line: 'water',
  scope: 'job',
  numbers: { low: 'job.bypass-low', high: 'job.bypass-high', found: 'job.bypass-opening' },
  words: {},
  editions: byNameplate({}),
  check: ({ low, high, found }): Outcome => {
    const kind = 'ratio';
    if (low <= 0 && high >= 1) return { sense: 'does-not-apply' };
    if (low <= 0) return { sense: 'at-most', required: high, found, kind, yardstick: high };
    if (high >= 1) return { sense: 'at-least', required: low, found, kind, yardstick: low };
    return { sense: 'within', low, high, found, kind };
  },
});
