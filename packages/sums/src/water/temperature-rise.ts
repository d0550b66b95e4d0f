import { evaluate, ok, water } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** 80 °F, a heated pool. */
const POOL_TEMPERATURE = (80 + 459.67) / 1.8;

/** How much a flow of water warms by a heat. */
export const temperatureRise = defineSum({
  name: 'temperature-rise',
  inputs: {
    heat: number('heat-rate', 'kBtu/h'),
    flow: number('volume-flow', 'gpm'),
    temperature: number('temperature', 'degF', { optional: true, fallback: POOL_TEMPERATURE }),
  },
  outputs: { 'temperature-rise': { kind: 'temperature-difference', unit: 'degF' } },
  source: water.temperatureRise.source,
  example: {
    given: { heat: '80000 Btu/h', flow: '8 gpm' },
    gives: { 'temperature-rise': '20 degF' },
    within: 0.005,
    source: {
      document: 'ACHR News, Heat transfer: nature versus math',
      at: 'Btu/h = 500·gpm·ΔT',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const at = water.waterAt(x.temperature ?? POOL_TEMPERATURE);
    if (!at.ok) return at;
    const { density, specificHeat } = at.value;
    const rise = evaluate(water.temperatureRise, { heat: x.heat, flow: x.flow, density, specificHeat });
    return rise.ok ? ok({ 'temperature-rise': rise.value }) : rise;
  },
});
