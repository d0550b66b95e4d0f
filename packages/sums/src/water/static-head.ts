import { evaluate, ok, water } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** 60 °F, for which the trade's 0.433 psi a foot holds. */
const COLD_TEMPERATURE = (60 + 459.67) / 1.8;

/** Pressure of a column of water at rest. */
export const staticHead = defineSum({
  name: 'static-head',
  inputs: {
    height: number('length', 'ft'),
    temperature: number('temperature', 'degF', { optional: true, fallback: COLD_TEMPERATURE }),
  },
  outputs: { pressure: { kind: 'pressure', unit: 'psi' } },
  source: water.staticPressure.source,
  example: {
    given: { height: '100 ft' },
    gives: { pressure: '43.33 psi' },
    within: 0.001,
    source: { document: 'EPANET test suite', at: '100 ft = 43.33 psi', known: 'read in a public copy' },
  },
  run: (x) => {
    const at = water.waterAt(x.temperature ?? COLD_TEMPERATURE);
    if (!at.ok) return at;
    const pressure = evaluate(water.staticPressure, { height: x.height, density: at.value.density });
    return pressure.ok ? ok({ pressure: pressure.value }) : pressure;
  },
});
