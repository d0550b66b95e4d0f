/**
 * Two basins that trade water: a spa that spills into the pool and is fed from it, or one pump that turns over both.
 *
 *     Q = ṁ·(h(T1) − h(T2))        heat from the first basin to the second
 *
 * What flows over comes back by the pump, so the masses stay and the term enters both balances with opposite signs.
 * Left alone, the difference of the two temperatures dies away as exp(−t·V̇·(1/V1 + 1/V2)).
 *
 * Source: first law.
 * Range: 0 to 100 kg/s, water 0 to 50 °C.
 * Errors: values outside are issues of `evaluate`; `exchangeHeat` checks nothing.
 *
 * Worked example: 1 L/s between a spa at 38 °C and a pool at 27 °C → 46.0 kW into the pool.
 */
import type { Formula } from '../../trace/index.ts';
import { makeUpHeat } from './make-up.ts';
import { WATER_TEMPERATURE } from './variables.ts';

export interface BasinExchange {
  /** ṁ, kg/s each way. */
  readonly flow: number;
  /** T1, K. */
  readonly firstTemperature: number;
  /** T2, K. */
  readonly secondTemperature: number;
}

/** Heat (W) a flow (kg/s each way) brings from a basin at one temperature to a basin at another (K). */
export const exchangeHeat = makeUpHeat;

/** Heat from the first basin to the second, W; below zero where the second is the warmer. */
export const basinExchange: Formula<BasinExchange> = {
  id: 'heat.basin-exchange',
  equation: 'Q = ṁ·(h(T1) − h(T2))',
  inputs: {
    flow: { symbol: 'ṁ', kind: 'mass-flow', min: 0, max: 100 },
    firstTemperature: { ...WATER_TEMPERATURE, symbol: 'T1' },
    secondTemperature: { ...WATER_TEMPERATURE, symbol: 'T2' },
  },
  result: { symbol: 'Q', kind: 'heat-rate' },
  source: { document: 'First law', at: 'two basins, equal flows each way', known: 'physics' },
  kernel: (x) => exchangeHeat(x.flow, x.firstTemperature, x.secondTemperature),
};
