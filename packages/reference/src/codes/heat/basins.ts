/** What the customer wants of the water: warm enough, in time, and not too hot. */
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { ispsc2021 } from '../entries.ts';

/** The balance is physics; what evaporates, most of it, follows correlations that were recalled. */
const byBalance: readonly Edition<Record<string, never>>[] = [
  {
    edition: 'any',
    from: '1900-01-01',
    source: {
      document: 'Heat balance of the water',
      at: 'evaporation by Smith, Löf and Jones or ASHRAE’s activity factor',
      known: 'from memory',
    },
    values: {},
  },
];

/** Divided by the load: heaters that give 20 % more than the design day takes stand at +20 %. */
export const holdTemperature = defineRule({
  id: 'heat.hold-temperature',
  line: 'heat',
  scope: 'job',
  numbers: { found: 'job.heat-output', required: 'job.hold-load' },
  words: {},
  editions: byBalance,
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: n.required, found: n.found, kind: 'heat-rate', yardstick: n.required },
});

/** Divided by the time wanted. */
export const warmInTime = defineRule({
  id: 'heat.warm-in-time',
  line: 'heat',
  scope: 'basin',
  numbers: { found: 'basin.warm-up-time', required: 'basin.warm-up-time-wanted' },
  words: {},
  editions: byBalance,
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'time',
    yardstick: n.required,
  }),
});

/** In kelvins: 10 K over the set temperature is a comfortable plateau, and counts as the whole margin. */
export const plateauAboveSet = defineRule({
  id: 'heat.plateau',
  line: 'heat',
  scope: 'basin',
  numbers: { found: 'basin.plateau', required: 'basin.set-temperature' },
  words: {},
  editions: byBalance,
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'temperature',
    yardstick: 10,
  }),
});

interface HottestWater {
  /** K. */
  readonly greatest: number;
}

const hottest: readonly Edition<HottestWater>[] = [
  {
    edition: 'any',
    from: '1900-01-01',
    source: {
      document: 'common practice',
      at: '104 °F (40 °C) upper limit',
      known: 'common practice, no source',
    },
    values: { greatest: 313.15 },
  },
  ispsc2021('316.4.1, 104 °F, number of the section recalled', { greatest: 313.15 }),
];

/** In kelvins: 5 K under the limit counts as the whole margin; at the limit itself a spa is set on purpose. */
export const notTooHot = defineRule({
  id: 'heat.not-too-hot',
  line: 'heat',
  scope: 'basin',
  numbers: { found: 'basin.set-temperature' },
  words: {},
  guard: 0,
  editions: hottest,
  check: (n, _w, values) => ({
    sense: 'at-most',
    required: values.greatest,
    found: n.found,
    kind: 'temperature',
    yardstick: 5,
  }),
});
