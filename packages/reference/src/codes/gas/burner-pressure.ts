/**
 * Pressure at the heater's gas valve against its nameplate, as a gauge would read it (physical law).
 *
 * Both margins are divided by the drop allowed, which is what the piping has to spend: from the pressure the service
 * regulator leaves to the least that the nameplate bears. Divided by the pressure itself, a line that has lost nearly
 * all it may lose would look comfortable.
 */
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate } from '../known.ts';

export const burnerPressureRunning = defineRule({
  id: 'gas.burner-pressure-running',
  line: 'gas',
  scope: 'heater',
  numbers: {
    found: 'heater.inlet-pressure-everything-on',
    required: 'heater.inlet-pressure-minimum',
    supply: 'heater.supply-pressure',
  },
  words: {},
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'pressure',
    // A supply at or below the minimum leaves nothing to spend: the minimum itself is then the yardstick.
    yardstick: n.supply > n.required ? n.supply - n.required : n.required,
  }),
});

export const burnerPressureLockUp = defineRule({
  id: 'gas.burner-pressure-lock-up',
  line: 'gas',
  scope: 'heater',
  numbers: { found: 'heater.inlet-pressure-all-off', required: 'heater.inlet-pressure-maximum' },
  words: {},
  // Above what the valve bears, nothing may run.
  stops: true,
  hazard: 'gas',
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'pressure',
    yardstick: n.required,
  }),
});
