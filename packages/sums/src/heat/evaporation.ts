import { evaluate, heat, ok, properties } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { defineSum } from '../sum.ts';
import { SURFACE_INPUTS, surfaceState } from './water-and-air.ts';

/** Evaporation from a square metre of bare water, as mass and as heat; none of the methods is better than ±30 %. */
export const evaporation = defineSum({
  name: 'evaporation',
  inputs: SURFACE_INPUTS,
  outputs: {
    'mass-flux': { kind: 'mass-flux', unit: 'lb/(ft2 h)' },
    'heat-flux': { kind: 'heat-flux', unit: 'Btu/(h ft2)' },
  },
  source: heat.smithEvaporation.source,
  example: {
    given: {
      method: 'ashrae',
      'water-temperature': '80 degF',
      'air-temperature': '82 degF',
      'relative-humidity': '50 %',
      activity: '0.5',
    },
    gives: { 'mass-flux': '0.02407 lb/(ft2 h)', 'heat-flux': '25.2 Btu/(h ft2)' },
    within: 0.005,
    source: {
      document: 'ASHRAE Handbook-HVAC Applications, inch-pound form 0.1·(pw − pa)·Fa',
      at: '0.1·(1.0323 − 0.5508)·0.5 with steam-table pressures in inHg, and 1048 Btu/lb',
      known: 'from memory',
    },
  },
  run: (x) => {
    const state = surfaceState(x);
    if (!state.ok) return failTyped(state.issues);
    const flux = evaluate(heat.evaporationFlux(x.method), state.value);
    if (!flux.ok) return failTyped(flux.issues);
    const latent = properties.latentHeatOfWater(x['water-temperature']);
    return ok({ 'mass-flux': flux.value / latent, 'heat-flux': flux.value });
  },
});
