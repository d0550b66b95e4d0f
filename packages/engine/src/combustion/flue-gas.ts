/**
 * Everything a flue reading tells of a burner: excess air, dew point, efficiency; from oxygen or from carbon dioxide.
 *
 * Source: the formulas it calls. Range: theirs. Errors: their range issues; `rich-flame` where carbon dioxide exceeds
 * what the fuel can give, which means too little air or a wrong reading.
 * Worked example: natural gas, 3 % oxygen, air 70 °F, stack 470 °F → 14.9 % excess air, dew point 56.5 °C, 80.8 % gross.
 */
import { dewPoint } from '../properties/index.ts';
import { evaluate, fail, ok, type Recorder, type Result } from '../trace/index.ts';
import { flueStateOf, grossEfficiency, netEfficiency } from './efficiency.ts';
import { excessAirOfCarbonDioxide, excessAirOfOxygen, flueVapour } from './excess-air.ts';
import { type CombustionFuel, flameBalance } from './fuel.ts';

/** Share of oxygen or of carbon dioxide in a dry sample. */
export type FlueSample = { readonly oxygen: number } | { readonly carbonDioxide: number };

export interface FlueTemperatures {
  /** K. */
  readonly stackTemperature: number;
  /** Of the air to the burner, K. */
  readonly airTemperature: number;
  /** Pa absolute. */
  readonly airPressure: number;
}

export interface FlueResult {
  readonly excessAir: number;
  /** K. */
  readonly dewPoint: number;
  /** Share of the gross heat that does not leave by the flue. */
  readonly grossEfficiency: number;
  readonly netEfficiency: number;
}

/** Less than no excess by more than the rounding of a reading is a flame short of air. */
const ROUNDING = -0.005;

/** Excess air of a sample. */
export function excessAirOf(fuel: CombustionFuel, sample: FlueSample, recorder?: Recorder): Result<number> {
  const { airDemand, dryFlue, carbon } = flameBalance(fuel);
  if ('oxygen' in sample)
    return evaluate(excessAirOfOxygen, { airDemand, dryFlue, oxygen: sample.oxygen }, recorder);
  const { carbonDioxide } = sample;
  const excess = evaluate(excessAirOfCarbonDioxide, { airDemand, dryFlue, carbon, carbonDioxide }, recorder);
  if (!excess.ok || excess.value >= 0) return excess;
  if (excess.value >= ROUNDING) return ok(0);
  const max = carbon / dryFlue;
  return fail({
    code: 'contradiction',
    where: 'carbonDioxide',
    found: carbonDioxide,
    max,
    kind: 'ratio',
    reason: 'rich-flame',
  });
}

/** Temperature under which the flue gas drops water, K. */
export function flueDewPoint(
  fuel: CombustionFuel,
  at: { readonly excessAir: number; readonly airPressure: number },
  recorder?: Recorder,
): Result<number> {
  const { airDemand, dryFlue, vapour } = flameBalance(fuel);
  const share = evaluate(flueVapour, { airDemand, dryFlue, vapour, excessAir: at.excessAir }, recorder);
  if (!share.ok) return share;
  return evaluate(dewPoint, { vapourPressure: share.value * at.airPressure }, recorder);
}

/** The whole reading; see the head of this file. */
export function flueGas(
  fuel: CombustionFuel,
  sample: FlueSample,
  temperatures: FlueTemperatures,
  recorder?: Recorder,
): Result<FlueResult> {
  const excess = excessAirOf(fuel, sample, recorder);
  if (!excess.ok) return excess;
  const excessAir = excess.value;
  const dew = flueDewPoint(fuel, { excessAir, airPressure: temperatures.airPressure }, recorder);
  if (!dew.ok) return dew;
  const gross = evaluate(grossEfficiency, flueStateOf(fuel, { excessAir, ...temperatures }), recorder);
  if (!gross.ok) return gross;
  const { hydrogen, grossHeat } = fuel;
  const net = evaluate(netEfficiency, { gross: gross.value, hydrogen, grossHeat }, recorder);
  if (!net.ok) return net;
  return ok({
    excessAir,
    dewPoint: dew.value,
    grossEfficiency: gross.value,
    netEfficiency: net.value,
  });
}
