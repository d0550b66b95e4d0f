/** The relief valve: one for each heater that water can be shut into, set and sized for it, and piped to where it is safe. */
import { defineRule, type Edition } from '../../evaluate/index.ts';

function anywhere<V>(document: string, at: string, values: V): readonly Edition<V>[] {
  const source = { document, at, known: 'read in a public copy' } as const;
  return [{ edition: 'any', from: '1900-01-01', source, values }];
}

/**
 * Asked by the plate, or by whatever behind the heater can hold the water back. Whether it is needed has to be known;
 * where it is not, whether it is there does not apply.
 */
export const reliefFitted = defineRule({
  id: 'water.relief-valve',
  line: 'water',
  scope: 'heater',
  numbers: {},
  words: { needed: 'heater.relief-needed', fitted: 'heater.relief-valve' },
  editions: anywhere('NFPA 54-2012', '10.21.3.2, read in the California Mechanical Code 2013, 922.3', {}),
  check: (_n, w) => ({ sense: 'holds', holds: w.fitted === 'yes' }),
});

/** Divided by the rating; a valve set just at it is what is usually fitted. */
export const reliefSetting = defineRule({
  id: 'water.relief-setting',
  line: 'water',
  scope: 'heater',
  numbers: { found: 'heater.relief-set', required: 'heater.water-pressure-greatest' },
  words: {},
  guard: 0,
  editions: anywhere(
    'ASME Boiler and Pressure Vessel Code, Section IV',
    'HG-400.2 as adopted in COMAR 09.12.01.13',
    {},
  ),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'pressure',
    yardstick: n.required,
  }),
});

/** Divided by the input. The water-heater rule; boiler rules ask for the output, which is less. */
export const reliefCapacity = defineRule({
  id: 'water.relief-capacity',
  line: 'water',
  scope: 'heater',
  numbers: { found: 'heater.relief-capacity', required: 'heater.input' },
  words: {},
  guard: 0,
  editions: anywhere('NFPA 54-2012', '10.28.5, read in the California Plumbing Code 2013, 504.6', {}),
  check: (n) => ({
    sense: 'at-least',
    required: n.required,
    found: n.found,
    kind: 'heat-rate',
    yardstick: n.required,
  }),
});

/** Full size, nothing in it that can shut, no thread at its end. */
export const reliefDischarge = defineRule({
  id: 'water.relief-discharge',
  line: 'water',
  scope: 'heater',
  numbers: {},
  words: { clear: 'heater.relief-discharge' },
  editions: anywhere('NFPA 54-2012', '10.3.6, read in the California Mechanical Code 2013, 904.6', {}),
  check: (_n, w) => ({ sense: 'holds', holds: w.clear === 'yes' }),
});

/** Divided by the limit, 18 in. */
export const reliefDischargeEnd = defineRule({
  id: 'water.relief-discharge-end',
  line: 'water',
  scope: 'heater',
  numbers: { found: 'heater.relief-discharge-height' },
  words: {},
  editions: anywhere('Uniform Mechanical Code 2012', '1006.1, boilers', { metres: 0.4572 }),
  check: (n, _w, { metres }) => ({
    sense: 'at-most',
    required: metres,
    found: n.found,
    kind: 'length',
    yardstick: metres,
  }),
});
