/**
 * Heat in the water between two temperatures, and the time a heater would take if nothing were lost.
 *
 *     Q = V·ρ·cp·(T2 − T1)        t = Q/P
 *
 * ρ and cp at the mean of the two temperatures; the trade's 8.33 lb a gallon is water at 60 °F and gives 0.5 % more in
 * a warm pool, 0.8 % in a hot spa.
 *
 * Source: first law; properties of `properties/water`.
 * Range: 0.01 to 50,000 m3, water 0 to 50 °C, output 1 W to 20 MW.
 * Errors: values outside are issues of `evaluate`; a target under the start gives a heat and a time below zero.
 *
 * Worked example: 1,100 gal from 94 °F to 102 °F → 76.8 MJ (72,826 Btu; the trade's 8.33·gal·ΔT gives 73,304).
 */
import { densityOfWater, specificHeatOfWater } from '../../properties/index.ts';
import { type Formula, type Source, traced, type Variable } from '../../trace/index.ts';

const FIRST_LAW: Source = { document: 'First law', at: 'Q = m·cp·ΔT', known: 'physics' };

const WATER: Omit<Variable, 'symbol'> = { kind: 'temperature', min: 273.15, max: 323.15 };

export interface WaterToWarm {
  /** V, m3. */
  readonly volume: number;
  /** T1, K. */
  readonly start: number;
  /** T2, K. */
  readonly target: number;
}

/** C (J/K) of a volume between two temperatures: `warmUpHeat` over their difference, without its checks. */
export function heatCapacityOf({ volume, start, target }: WaterToWarm): number {
  const mean = (start + target) / 2;
  return volume * densityOfWater(mean) * specificHeatOfWater(mean);
}

const inputs = {
  volume: { symbol: 'V', kind: 'volume', min: 0.01, max: 50_000 },
  start: { symbol: 'T1', ...WATER },
  target: { symbol: 'T2', ...WATER },
} as const;

/** Heat that warms a volume of water, J. */
export const warmUpHeat: Formula<WaterToWarm> = {
  id: 'heat.warm-up-heat',
  equation: 'Q = V·ρ·cp·(T2 − T1)',
  inputs,
  result: { symbol: 'Q', kind: 'energy' },
  source: FIRST_LAW,
  kernel: (x) => heatCapacityOf(x) * (x.target - x.start),
};

export interface WaterAndHeater extends WaterToWarm {
  /** P into the water, W. */
  readonly output: number;
}

/** Time to warm a volume of water with nothing lost, s. */
export const naiveWarmUp: Formula<WaterAndHeater> = {
  id: 'heat.naive-warm-up',
  equation: 't = Q/P',
  inputs: { ...inputs, output: { symbol: 'P', kind: 'heat-rate', min: 1, max: 2e7 } },
  result: { symbol: 't', kind: 'time' },
  source: FIRST_LAW,
  kernel: (x, recorder) => traced(warmUpHeat, x, recorder) / x.output,
};
