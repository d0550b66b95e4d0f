import { air, evaluate, ok, properties } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** Draught of a natural-draught vent, before friction takes any. */
export const ventDraught = defineSum({
  name: 'vent-draught',
  inputs: {
    height: number('length', 'ft'),
    'gas-temperature': number('temperature', 'degF'),
    'air-temperature': number('temperature', 'degF'),
    altitude: number('length', 'ft', { optional: true, fallback: 0, min: -500, max: 11_000 }),
  },
  outputs: { draught: { kind: 'pressure-difference', unit: 'in w.c.' } },
  source: air.DRAUGHT_SOURCE,
  example: {
    given: { height: '25 ft', 'gas-temperature': '250 °F', 'air-temperature': '70 °F' },
    gives: { draught: '0.091 in w.c.' },
    within: 0.01,
    source: {
      document: 'ASHRAE Handbook, HVAC Systems and Equipment',
      at: 'chimney draught, printed sample',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const found = evaluate(air.draught, {
      height: x.height,
      gasTemperature: x['gas-temperature'],
      airTemperature: x['air-temperature'],
      atmosphere: properties.standardPressureAt(x.altitude ?? 0),
    });
    return found.ok ? ok({ draught: found.value }) : found;
  },
});
