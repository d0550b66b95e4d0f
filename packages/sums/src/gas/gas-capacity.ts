import { evaluate, fail, gas, ok, type Result } from '@firstfire/engine';
import { choice, defineSum, number } from '../sum.ts';
import { fuelOf } from './fuel-of.ts';

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
    'specific-gravity': number('ratio', '1', { optional: true, min: 0.3, max: 2.2 }),
  },
  outputs: {
    capacity: { kind: 'standard-gas-flow', unit: 'ft3/h' },
    'heat-input': { kind: 'heat-rate', unit: 'kBtu/h' },
  },
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Section 402.4, Equations 4-1 and 4-2',
    known: 'from memory',
  },
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
    const fuel = fuelOf(x.gas, x['heating-value'], x['specific-gravity']);
    const { cr, y } = gas.codeFactors(fuel);
    const run = {
      insideDiameter: x['inside-diameter'],
      length: x.length,
      pressureDrop: x['pressure-drop'],
      cr,
    };
    const capacity =
      x.equation === 'low' ? evaluate(gas.lowPressureFlow, run) : high(run, y, x['inlet-pressure']);
    if (!capacity.ok) return capacity;
    return ok({ capacity: capacity.value, 'heat-input': gas.heatOfFlow(fuel, capacity.value) });
  },
});

function high(run: gas.LowPressureRun, y: number, inletPressure: number | undefined): Result<number> {
  if (inletPressure === undefined)
    return fail({ code: 'ill-formed', where: 'inlet-pressure', reason: 'needed-by-equation' });
  if (run.pressureDrop > inletPressure)
    return fail({
      code: 'contradiction',
      where: 'pressure-drop',
      found: run.pressureDrop,
      max: inletPressure,
      kind: 'pressure-difference',
      reason: 'outlet-below-atmosphere',
    });
  return evaluate(gas.highPressureFlow, { ...run, y, inletPressure });
}
