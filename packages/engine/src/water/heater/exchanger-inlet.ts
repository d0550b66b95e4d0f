/**
 * Temperature of the water that enters the heat exchanger, where an inner bypass or a mixing valve sends part of the
 * heated water round again.
 *
 *     T,in = T,pool + r/(1 + r)·ΔT        r = water sent round again / water through the heater
 *
 * The outlet of the heater stays at T,pool + ΔT whatever goes round, by its heat balance; going round only lifts the
 * inlet and narrows the rise inside. Too cold an inlet lets the flue gas condense on a exchanger that was not made
 * for it: held against the plate's least inlet temperature.
 *
 * Source: mixing balance. Range: r from 0 to 20.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: pool 27 °C, rise 10 K, as much round again as passes (r = 1) → 32 °C.
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';

const SOURCE: Source = { document: 'Mixing balance at the exchanger inlet', known: 'physics' };
const TEMPERATURE: Variable = { symbol: 'T', kind: 'temperature', min: 273.15, max: 373.15 };
const RISE: Variable = { symbol: 'ΔT', kind: 'temperature-difference', min: 0, max: 100 };
const ROUND: Variable = { symbol: 'r', kind: 'ratio', min: 0, max: 20 };

export interface MixedInlet {
  /** Water arriving at the heater, K. */
  readonly waterTemperature: number;
  /** ΔT across the heater as a whole, K. */
  readonly rise: number;
  /** r. */
  readonly recirculation: number;
}

/** Temperature into the exchanger, K. */
export const exchangerInlet: Formula<MixedInlet> = {
  id: 'water.exchanger-inlet',
  equation: 'Tin = T + r/(1+r)·ΔT',
  inputs: { waterTemperature: TEMPERATURE, rise: RISE, recirculation: ROUND },
  result: TEMPERATURE,
  source: SOURCE,
  kernel: (x) => x.waterTemperature + (x.recirculation / (1 + x.recirculation)) * x.rise,
};

export interface InletWanted {
  readonly waterTemperature: number;
  readonly rise: number;
  /** Least temperature into the exchanger, K. */
  readonly leastInlet: number;
}

/**
 * Share sent round again that brings the inlet to a limit: the inverse of `exchangerInlet`. No solution (an issue
 * of `evaluate`) when even the outlet stays under the limit, zero when the water is warm enough as it comes.
 */
export const recirculationFor: Formula<InletWanted> = {
  id: 'water.recirculation-for-inlet',
  equation: 'r = (Tin − T)/(T + ΔT − Tin)',
  inputs: { waterTemperature: TEMPERATURE, rise: RISE, leastInlet: TEMPERATURE },
  result: ROUND,
  source: SOURCE,
  kernel: (x) => {
    const short = x.leastInlet - x.waterTemperature;
    if (short <= 0) return 0;
    return short < x.rise ? short / (x.rise - short) : Number.NaN;
  },
};
