import { evaluate, ok, properties } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** Pressure of the standard atmosphere at an altitude, and the temperature at which water boils there. */
export const atmosphere = defineSum({
  name: 'atmosphere',
  inputs: { altitude: number('length', 'ft') },
  outputs: {
    pressure: { kind: 'absolute-pressure', unit: 'psia' },
    'boiling-point': { kind: 'temperature', unit: 'degF' },
  },
  source: properties.standardPressure.source,
  example: {
    given: { altitude: '1500 m' },
    gives: { pressure: '84559.7 Pa', 'boiling-point': '94.98 degC' },
    within: 3e-5,
    source: {
      document: 'U.S. Standard Atmosphere 1976 and IAPWS-IF97',
      at: 'worked from their constants, 1500 m',
      known: 'read in a public copy',
    },
  },
  run: ({ altitude }) => {
    const pressure = evaluate(properties.standardPressure, { altitude });
    if (!pressure.ok) return pressure;
    const boiling = evaluate(properties.boilingPoint, { altitude });
    return boiling.ok ? ok({ pressure: pressure.value, 'boiling-point': boiling.value }) : boiling;
  },
});
