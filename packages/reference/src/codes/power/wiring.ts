/** How the wiring runs: fixed, buried deep enough, low voltage kept from power. */
import { quantity } from '@firstfire/engine';
import { defineRule, reaches } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';
import { nec2011, nec2017 } from './sources.ts';

export const fixedWiring = defineRule({
  id: 'power.fixed-wiring',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { connection: 'heater.connection' },
  editions: [
    nec2011('400.8, cords are no substitute for fixed wiring', {}, 'from memory'),
    ...byPractice({}),
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.connection !== 'extension cord' }),
});

/** Divided by the limit. Where nothing must lie over it, nothing is asked. */
export const burialDepth = defineRule({
  id: 'power.burial-depth',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.cover', required: 'heater.cover-least' },
  words: {},
  editions: [nec2011('Table 300.5', {})],
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: n.required, found: n.found, kind: 'length', yardstick: n.required },
});

const REACH = 5 * quantity.FOOT;

/** Under the pool or within its reach only what serves it, and that in a raceway. */
export const racewayNearPool = defineRule({
  id: 'power.raceway-near-pool',
  line: 'power',
  scope: 'heater',
  numbers: { distance: 'heater.burial-from-pool' },
  words: { raceway: 'heater.buried-raceway' },
  editions: [
    nec2011('680.10, within 5 ft', { reach: REACH }),
    nec2017('680.11', { reach: REACH }, 'from memory'),
  ],
  check: (n, w, { reach }) =>
    !reaches(reach, n.distance)
      ? { sense: 'does-not-apply' }
      : { sense: 'holds', holds: w.raceway === 'yes' },
});

/** Divided by the limit. From the edition of 2017 on, depth is by Table 300.5 here too. */
export const burialNearPool = defineRule({
  id: 'power.burial-near-pool',
  line: 'power',
  scope: 'heater',
  numbers: {
    found: 'heater.cover',
    distance: 'heater.burial-from-pool',
    required: 'heater.cover-near-pool',
  },
  words: {},
  editions: [
    nec2011('680.10 and its table, within 5 ft', { asked: true }),
    nec2017('680.11, depth by Table 300.5', { asked: false }, 'from memory'),
  ],
  check: (n, _w, { asked }) =>
    asked && reaches(REACH, n.distance)
      ? { sense: 'at-least', required: n.required, found: n.found, kind: 'length', yardstick: n.required }
      : { sense: 'does-not-apply' },
});

export const lowVoltageApart = defineRule({
  id: 'power.low-voltage-apart',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { route: 'heater.control-route' },
  editions: [nec2011('725.136', {})],
  check: (_n, w) =>
    w.route === 'none' ? { sense: 'does-not-apply' } : { sense: 'holds', holds: w.route !== 'with power' },
});

/** Divided by the limit. */
export const lowVoltageSpacing = defineRule({
  id: 'power.low-voltage-spacing',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.control-spacing' },
  words: {},
  editions: [nec2011('725.136(I), 2 in from power conductors', { least: 2 * quantity.INCH })],
  check: (n, _w, { least }) => ({
    sense: 'at-least',
    required: least,
    found: n.found,
    kind: 'length',
    yardstick: least,
  }),
});
