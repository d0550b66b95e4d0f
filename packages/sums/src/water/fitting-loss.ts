import { evaluate, ok, water } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** Head lost in a fitting of known loss coefficient. */
export const fittingLoss = defineSum({
  name: 'fitting-loss',
  inputs: {
    k: number('ratio', '1'),
    'inside-diameter': number('diameter', 'in'),
    flow: number('volume-flow', 'gpm'),
  },
  outputs: { 'head-loss': { kind: 'head', unit: 'ft' } },
  source: water.fittingLoss.source,
  example: {
    given: { k: '0.07', 'inside-diameter': '6 cm', flow: '19.792 L/s' },
    gives: { 'head-loss': '0.175 m' },
    within: 0.003,
    source: {
      document: 'Cengel & Cimbala, Fluid Mechanics',
      at: 'Example 8-6: 7 m/s, K = 0.07',
      known: 'from memory',
    },
  },
  run: (x) => {
    const head = evaluate(water.fittingLoss, { k: x.k, insideDiameter: x['inside-diameter'], flow: x.flow });
    return head.ok ? ok({ 'head-loss': head.value }) : head;
  },
});
