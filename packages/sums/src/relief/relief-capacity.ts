import { evaluate, ok, relief } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { defineSum, number } from '../sum.ts';

/** Steam a relief valve must be able to pass for a burner. */
export const reliefCapacity = defineSum({
  name: 'relief-capacity',
  inputs: { 'heat-input': number('heat-rate', 'kBtu/h') },
  outputs: { steam: { kind: 'mass-flow', unit: 'lb/h' } },
  source: relief.RELIEF_CAPACITY_SOURCE,
  example: {
    given: { 'heat-input': '400 kBtu/h' },
    gives: { steam: '400 lb/h' },
    within: 1e-9,
    source: relief.RELIEF_CAPACITY_SOURCE,
  },
  run: (x) => {
    const steam = evaluate(relief.reliefSteam, { heatInput: x['heat-input'] });
    return steam.ok ? ok({ steam: steam.value }) : failTyped(steam.issues);
  },
});
