/** What the water does to the heater: its temperature rise, how cold it comes, how hard it presses. */
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate } from '../known.ts';

/** At the least flow. A rise has a true zero: divided by the limit. */
export const temperatureRise = defineRule({
  id: 'water.temperature-rise',
  line: 'water',
  scope: 'heater',
  numbers: { found: 'heater.temperature-rise', required: 'heater.rise-greatest' },
  words: {},
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'temperature-difference',
    yardstick: n.required,
  }),
});

/** A temperature, by stated kelvins: 10 K, about what the first hours of a warm-up lift the water. */
export const exchangerInlet = defineRule({
  id: 'water.exchanger-inlet',
  line: 'water',
  scope: 'heater',
  numbers: { found: 'heater.exchanger-inlet', required: 'heater.inlet-water-least' },
  words: {},
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'temperature',
    yardstick: 10,
  }),
});

/** With the return shut and the pump at its greatest speed. Divided by the limit. */
export const heaterPressure = defineRule({
  id: 'water.heater-pressure',
  line: 'water',
  scope: 'heater',
  numbers: { found: 'heater.shut-off-pressure', required: 'heater.water-pressure-greatest' },
  words: {},
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'pressure',
    yardstick: n.required,
  }),
});
