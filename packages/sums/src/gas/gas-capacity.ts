import { evaluate, fail, gas, ok } from '@firstfire/engine';
import { choice, defineSum, number } from '../sum.ts';

/** What a run of pipe carries at a given drop, by the code's sizing equation. */
export const gasCapacity = defineSum({
  name: 'gas-capacity',
  inputs: {
    gas: choice(['natural', 'propane']),
    equation: choice(['low', 'high']),
    'inside-diameter': number('diameter', 'in'),
    length: number('length', 'ft'),
    'inlet-pressure': number('pressure', 'psi', { optional: true }),
    'pressure-drop': number('pressure-difference', 'in w.c.'),
    'heating-value': number('heating-value', 'Btu/ft3', { optional: true }),
  },
  outputs: {
    capacity: { kind: 'standard-gas-flow', unit: 'ft3/h' },
    'heat-input': { kind: 'heat-rate', unit: 'kBtu/h' },
  },
  source: gas.LOW_PRESSURE_SOURCE,
  example: {
    given: {
      gas: 'natural',
      equation: 'low',
      'inside-diameter': '0.824 in',
      length: '60 ft',
      'pressure-drop': '0.5 in w.c.',
    },
    gives: { capacity: '137 ft3/h' },
    within: 0.01,
    source: { document: 'NFPA 54 older edition', at: 'C.7.1', known: 'read in a public copy' },
  },
  run: (x) => {
    if (x.equation === 'high') return fail({ code: 'ill-formed', where: 'equation' });
    const capacity = evaluate(gas.lowPressureFlow, {
      insideDiameter: x['inside-diameter'],
      length: x.length,
      pressureDrop: x['pressure-drop'],
      cr: gas.SIZING_FACTORS[x.gas].cr,
    });
    if (!capacity.ok) return capacity;
    const heatingValue = x['heating-value'] ?? 37.3e6;
    return ok({ capacity: capacity.value, 'heat-input': capacity.value * heatingValue });
  },
});
