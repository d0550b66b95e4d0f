import { evaluate, gas, ok } from '@firstfire/engine';
import { choice, defineSum, number } from '../sum.ts';

/** What a propane tank boils off in winter: by the trade's rule, or by the heat its wetted shell takes up. */
export const tankVaporisation = defineSum({
  name: 'tank-vaporisation',
  inputs: {
    diameter: number('diameter', 'in'),
    length: number('length', 'in'),
    fill: number('ratio', '%'),
    'air-temperature': number('temperature', 'degF'),
    method: { ...choice(['trade-rule', 'wetted-shell']), optional: true, fallback: 'trade-rule' },
    'liquid-temperature': number('temperature', 'degF', { optional: true }),
  },
  outputs: {
    'heat-input': { kind: 'heat-rate', unit: 'kBtu/h' },
  },
  source: gas.tankVaporisation.source,
  example: {
    given: { diameter: '37 in', length: '120 in', fill: '40 %', 'air-temperature': '0 degF' },
    gives: { 'heat-input': '355.2 kBtu/h' },
    within: 1e-6,
    source: { document: 'Trade rule of thumb', at: '37·120·80', known: 'from memory' },
  },
  run: (x) => {
    const tank = {
      diameter: x.diameter,
      length: x.length,
      fill: x.fill,
      airTemperature: x['air-temperature'],
    };
    const found =
      x.method === 'wetted-shell'
        ? evaluate(gas.wettedShellVaporisation, {
            ...tank,
            transmittance: gas.SHELL_TRANSMITTANCE,
            liquidTemperature: x['liquid-temperature'] ?? COLDEST_LIQUID,
          })
        : evaluate(gas.tankVaporisation, tank);
    return found.ok ? ok({ 'heat-input': found.value }) : found;
  },
});

/** −20 °F, where the trade's rule has its zero: about 10 psi left in the tank. K. */
const COLDEST_LIQUID = (459.67 - 20) / 1.8;
