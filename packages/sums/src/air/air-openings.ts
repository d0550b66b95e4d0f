import { air, evaluate, ok } from '@firstfire/engine';
import { choice, defineSum, number } from '../sum.ts';

/** Free area of each opening that gives burners their air. */
export const airOpenings = defineSum({
  name: 'air-openings',
  inputs: {
    method: choice(['two-direct', 'two-horizontal', 'two-indoor', 'one']),
    'heat-input': number('heat-rate', 'kBtu/h', { min: 0, max: 1e7 }),
  },
  outputs: { area: { kind: 'area', unit: 'in2' } },
  source: air.OPENINGS_SOURCE,
  example: {
    given: { method: 'one', 'heat-input': '140 kBtu/h' },
    gives: { area: '47 in2' },
    within: 0.01,
    source: { document: 'NFPA 54-2012', at: 'annex J', known: 'read in a public copy' },
  },
  run: (x) => {
    const area = evaluate(air.openingArea, {
      heatInput: x['heat-input'],
      rate: air.OPENING_RATES[x.method],
      leastArea: x.method === 'two-indoor' ? air.LEAST_INDOOR_OPENING : 0,
    });
    return area.ok ? ok({ area: area.value }) : area;
  },
});
