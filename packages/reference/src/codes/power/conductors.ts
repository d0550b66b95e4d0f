/** Wire, breaker and ground of the heater’s circuit. Work on it is a licensed electrician’s. */
import { power } from '@firstfire/engine';
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate } from '../known.ts';
import { c22, nec2011, nec2023 } from './sources.ts';

export const conductorCopper = defineRule({
  id: 'power.conductor-copper',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { metal: 'heater.conductor-metal' },
  editions: byNameplate({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.metal === 'copper' }),
});

/** Divided by the load. */
export const wireCarriesLoad = defineRule({
  id: 'power.wire-carries-load',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.wire-ampacity', required: 'heater.circuit-load' },
  words: {},
  editions: [
    nec2011('310.15 and its table of ampacities, 310.15(B)(16)', {}),
    nec2023('310.15 and Table 310.16', {}),
    c22('rule 4-004 and table 2, as the United States’ table', {}),
  ],
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: n.required, found: n.found, kind: 'current', yardstick: n.required },
});

/** Divided by the current the breaker is laid out for; a heater runs for hours, so it counts as continuous. */
export const breakerCarriesLoad = defineRule({
  id: 'power.breaker-carries-load',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.breaker', load: 'heater.circuit-load' },
  words: {},
  editions: [
    nec2011('210.20(A), continuous load', { factor: 1.25 }, 'from memory'),
    c22('rule 8-104, continuous load', { factor: 1.25 }),
  ],
  guard: 0,
  check: (n, _w, { factor }) => {
    const required = power.designCurrent.kernel({
      continuousCurrent: n.load,
      otherCurrent: 0,
      continuousFactor: factor,
    });
    return required === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required, found: n.found, kind: 'current', yardstick: required };
  },
});

/** Divided by the largest breaker allowed; a breaker of just that rating is what is usually fitted. */
export const breakerProtectsWire = defineRule({
  id: 'power.breaker-protects-wire',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.breaker', required: 'heater.breaker-most' },
  words: {},
  guard: 0,
  editions: [
    nec2011('240.4(B) and (D), with the table of ampacities, 310.15(B)(16)', {}),
    nec2023('240.4(B) and (D), with Table 310.16', {}),
    c22('rule 14-104 and table 13, as the United States’ table', {}),
  ],
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'current',
    yardstick: n.required,
  }),
});

/** Divided by the least cross-section; a ground of just that size is what is usually fitted. */
export const equipmentGround = defineRule({
  id: 'power.equipment-ground',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.equipment-ground', required: 'heater.equipment-ground-least' },
  words: {},
  guard: 0,
  editions: [nec2011('250.122(B) and Table 250.122, copper', {})],
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'wire-size',
    yardstick: n.required,
  }),
});
