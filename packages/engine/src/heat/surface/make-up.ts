/**
 * Heat that cold water takes which replaces what left: evaporated, splashed, backwashed, spilled.
 *
 *     Q = ṁ·(h(Tw) − h(Tmains))
 *
 * The vapour itself left with h_g, of which the evaporation flux counts the latent part; the rest, h(Tw), comes back
 * with the make-up, so nothing is counted twice.
 *
 * Source: first law.
 * Range: 0 to 100 kg/s, water 0 to 50 °C.
 * Errors: values outside are issues of `evaluate`; `makeUpHeat` checks nothing.
 *
 * Worked example: 1 kg/s heated from 10 °C to 27 °C → 71.2 kW.
 */
import { enthalpyOfWater } from '../../properties/index.ts';
import type { Formula } from '../../trace/index.ts';
import { WATER_TEMPERATURE } from './variables.ts';

export interface MakeUp {
  /** ṁ, kg/s. */
  readonly flow: number;
  /** Tw, K. */
  readonly waterTemperature: number;
  /** Tmains, K. */
  readonly mainsTemperature: number;
}

/** Heat (W) to bring a flow (kg/s) from the mains' temperature to the water's (K). */
export function makeUpHeat(flow: number, waterTemperature: number, mainsTemperature: number): number {
  return flow * (enthalpyOfWater(waterTemperature) - enthalpyOfWater(mainsTemperature));
}

/** Heat that make-up water takes, W. */
export const makeUp: Formula<MakeUp> = {
  id: 'heat.make-up',
  equation: 'Q = ṁ·(h(Tw) − h(Tmains))',
  inputs: {
    flow: { symbol: 'ṁ', kind: 'mass-flow', min: 0, max: 100 },
    waterTemperature: WATER_TEMPERATURE,
    mainsTemperature: { ...WATER_TEMPERATURE, symbol: 'Tmains' },
  },
  result: { symbol: 'Q', kind: 'heat-rate' },
  source: { document: 'First law', at: 'open system, constant pressure', known: 'physics' },
  kernel: (x) => makeUpHeat(x.flow, x.waterTemperature, x.mainsTemperature),
};
