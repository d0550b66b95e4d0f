/** Who may make the heater fire, and what holds it back. */
import { quantity } from '@firstfire/engine';
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPractice } from '../known.ts';
import { nec2011 } from './sources.ts';

export const interlocked = defineRule({
  id: 'power.interlocked',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { interlocked: 'heater.interlocked' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.interlocked === 'yes' }),
});

/** Divided by the time asked for; a timer set to just that is right. */
export const runOn = defineRule({
  id: 'power.run-on',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.run-on', required: 'heater.run-on-least' },
  words: {},
  guard: 0,
  editions: byNameplate({}),
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: n.required, found: n.found, kind: 'time', yardstick: n.required },
});

export const localLimit = defineRule({
  id: 'power.local-limit',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { limited: 'heater.local-limit' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.limited === 'yes' }),
});

/** Divided by the limit. */
export const remoteFromWater = defineRule({
  id: 'power.remote-from-water',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.remote-distance' },
  words: {},
  editions: [nec2011('680.22(D), control outlets 10 ft from the inside wall', { least: 10 * quantity.FOOT })],
  check: (n, _w, { least }) => ({
    sense: 'at-least',
    required: least,
    found: n.found,
    kind: 'length',
    yardstick: least,
  }),
});
