import { evaluate, gas, ok } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** Heat input at altitude by a rate from sea level that begins above an altitude; for a sea-level rating only. */
export const derate = defineSum({
  name: 'derate',
  inputs: {
    'heat-input': number('heat-rate', 'kBtu/h'),
    altitude: number('length', 'ft'),
    'per-thousand-feet': number('ratio', '%', { optional: true, fallback: 0.04 }),
    'from-altitude': number('length', 'ft', { optional: true, fallback: 609.6 }),
  },
  outputs: {
    'heat-input': { kind: 'heat-rate', unit: 'kBtu/h' },
  },
  source: gas.US_DERATE.source,
  example: {
    given: {
      'heat-input': '400 kBtu/h',
      altitude: '5000 ft',
      'per-thousand-feet': '4 %',
      'from-altitude': '2000 ft',
    },
    gives: { 'heat-input': '320 kBtu/h' },
    within: 1e-9,
    source: {
      document: 'NFPA 54 (2015)',
      at: 'Table E.1.1(d), 4 % per 1000 ft counted from sea level',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const derated = evaluate(gas.deratedInput, {
      heatInput: x['heat-input'],
      altitude: x.altitude,
      perThousandFeet: x['per-thousand-feet'] ?? 0.04,
      fromAltitude: x['from-altitude'] ?? gas.US_DERATE.above,
    });
    return derated.ok ? ok({ 'heat-input': derated.value }) : derated;
  },
});
