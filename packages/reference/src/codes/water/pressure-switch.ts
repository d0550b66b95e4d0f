/**
 * The water-pressure switch: it must open with the pump off, whatever stands above it, and stay made at the slowest
 * speed and with the dirtiest filter at which the heater may run.
 */
import { type Because, defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPhysics } from '../known.ts';

/** Why there is no setting: none tells flow from rest, or the switch cannot be turned to one that does. */
const NO_SETTING: Readonly<Record<string, Because>> = {
  'flow-switch': { reason: 'only-a-flow-switch' },
  range: { reason: 'beyond-the-switch' },
};

/**
 * Whether there is a setting at all. The lowest one that opens at rest against the highest one that stays made,
 * divided by the least pressure that flow makes: all that the switch has to tell flow from rest by.
 */
export const switchWindow = defineRule({
  id: 'water.switch-window',
  line: 'water',
  scope: 'heater',
  numbers: {
    required: 'heater.switch-low',
    found: 'heater.switch-high',
    running: 'heater.switch-running',
  },
  words: { limit: 'heater.switch-limit' },
  editions: byPhysics({}),
  check: (n, w) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'pressure',
    // A heater under less than the atmosphere has nothing to tell flow by: 1 psi then stands for it.
    yardstick: n.running > 0 ? n.running : 6894.757,
    ...(NO_SETTING[w.limit] === undefined ? {} : { because: NO_SETTING[w.limit] }),
  }),
});

/** Where the switch is set, in the window: by half its width. */
export const switchSetting = defineRule({
  id: 'water.switch-setting',
  line: 'water',
  scope: 'heater',
  numbers: { low: 'heater.switch-low', high: 'heater.switch-high', found: 'heater.switch-setting' },
  words: {},
  editions: byNameplate({}),
  check: (n) =>
    n.low < n.high
      ? { sense: 'within', low: n.low, high: n.high, found: n.found, kind: 'pressure' }
      : { sense: 'does-not-apply' },
});
