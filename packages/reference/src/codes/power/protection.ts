/** What keeps a fault from reaching a person in the water: ground-fault protection and the disconnect. */
import { quantity } from '@firstfire/engine';
import { CONTACT_LIMIT } from '../../catalog/power/index.ts';
import { defineRule, reaches } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';
import { c22, nec2011, nec2017 } from './sources.ts';

export const groundFault = defineRule({
  id: 'power.ground-fault',
  line: 'power',
  scope: 'heater',
  numbers: { volts: 'heater.volts' },
  words: { protected: 'heater.gfci' },
  editions: [
    nec2017('680.28 and 680.2, gas-fired pool heaters above the low-voltage contact limit', {
      limit: CONTACT_LIMIT.sine,
    }),
  ],
  check: (n, w, { limit }) =>
    reaches(limit, n.volts) ? { sense: 'does-not-apply' } : { sense: 'holds', holds: w.protected === 'yes' },
});

/** Within reach of the water and not shut off from it. */
export const groundFaultNearWater = defineRule({
  id: 'power.ground-fault-near-water',
  line: 'power',
  scope: 'heater',
  numbers: { distance: 'heater.water-reach' },
  words: { protected: 'heater.gfci' },
  editions: [
    c22(
      'section 68, as Quebec’s Safety Code, B-1.1 r. 3, s. 22(3), has it',
      { reach: 3 },
      'read in a public copy',
    ),
  ],
  check: (n, w, { reach }) =>
    !reaches(reach, n.distance)
      ? { sense: 'does-not-apply' }
      : { sense: 'holds', holds: w.protected === 'yes' },
});

export const disconnectInSight = defineRule({
  id: 'power.disconnect-in-sight',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { seen: 'heater.disconnect-in-sight' },
  editions: [nec2011('680.12, from 2017 on 680.13', {}), c22('rule 28-604', {})],
  check: (_n, w) => ({ sense: 'holds', holds: w.seen === 'yes' }),
});

/** Divided by the limit. */
export const disconnectFromWater = defineRule({
  id: 'power.disconnect-from-water',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.disconnect-reach' },
  words: {},
  guard: 0,
  editions: [nec2011('680.12 and 680.22(C), 5 ft from the inside wall', { least: 5 * quantity.FOOT })],
  check: (n, _w, { least }) => ({
    sense: 'at-least',
    required: least,
    found: n.found,
    kind: 'length',
    yardstick: least,
  }),
});

/** Nobody works on the heater before the cause is found. */
export const noTingle = defineRule({
  id: 'power.no-tingle',
  line: 'power',
  scope: 'job',
  numbers: {},
  words: { tingle: 'job.tingle' },
  stops: true,
  hazard: 'electricity',
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.tingle === 'no' }),
});
