/**
 * Each section of the gas piping against the sizing method of the fuel-gas code, and the pressure the code's own
 * equation leaves at the heater. What the inspector checks; the gauge is another rule.
 */
import { defineRule, type Edition } from '../../evaluate/index.ts';

const sizing: readonly Edition<Record<string, never>>[] = [
  {
    edition: 'IFGC 2018',
    from: '2017-08-31',
    source: {
      document: 'International Fuel Gas Code 2018',
      at: 'Section 402.4, longest-length method',
      known: 'from memory',
    },
    values: {},
  },
];

/** Divided by the load: a section that carries 20 % more than its load stands at +20 %. */
export const sectionCapacity = defineRule({
  id: 'gas.section-capacity',
  line: 'gas',
  scope: 'segment',
  numbers: { found: 'segment.code-capacity', required: 'segment.code-load' },
  words: {},
  editions: sizing,
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-least',
          required: n.required,
          found: n.found,
          kind: 'standard-gas-flow',
          yardstick: n.required,
        },
});

/** Divided by the drop allowed, as the physical pressure is. */
export const codePressureAtHeater = defineRule({
  id: 'gas.code-pressure',
  line: 'gas',
  scope: 'heater',
  numbers: {
    found: 'heater.code-inlet-pressure',
    required: 'heater.inlet-pressure-minimum',
    supply: 'heater.supply-pressure',
  },
  words: {},
  editions: [
    {
      edition: 'IFGC 2018',
      from: '2017-08-31',
      source: {
        document: 'International Fuel Gas Code 2018',
        at: 'Section 402.5, allowable pressure drop',
        known: 'from memory',
      },
      values: {},
    },
  ],
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'pressure',
    yardstick: n.supply > n.required ? n.supply - n.required : n.required,
  }),
});
