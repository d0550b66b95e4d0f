/**
 * The transformer that makes a heater's control voltage, and the tap its selector should stand at.
 *
 *     V2 = V2n·V1/Vt
 *
 * The selector wires the primary for 120, 208 or 240 V. Left at 240 V on a 120 V supply it halves the control voltage
 * and slows the fan until air is never proved; at 120 V on a 240 V supply it doubles it and burns the transformer
 * out (common practice, no source). A 208 V building on a 240 V tap gets 87 % of it.
 *
 * Source: ratio of turns of an ideal transformer; what load and make take off it (some 5 %) is left out.
 * Range: 1 to 700 V, secondary 1 to 120 V. Errors: range issues of `evaluate`; a supply that suits no tap is
 * `no-solution`.
 * Worked example: 24 V nominal, 208 V on the 240 V tap → 20.8 V.
 */
import { type Formula, fail, ok, type Result } from '../trace/index.ts';

export interface TappedSupply {
  /** V. */
  readonly supplyVolts: number;
  /** Where the selector stands, V. */
  readonly tapVolts: number;
  /** Of the secondary when supply and tap agree, V. */
  readonly secondaryVolts: number;
}

/** Control voltage, V. */
export const controlVoltage: Formula<TappedSupply> = {
  id: 'power.control-voltage',
  equation: 'V2 = V2n·V1/Vt',
  inputs: {
    supplyVolts: { symbol: 'V1', kind: 'voltage', min: 1, max: 700 },
    tapVolts: { symbol: 'Vt', kind: 'voltage', min: 1, max: 700 },
    secondaryVolts: { symbol: 'V2n', kind: 'voltage', min: 1, max: 120 },
  },
  result: { symbol: 'V2', kind: 'voltage' },
  source: { document: 'ratio of turns of an ideal transformer', known: 'physics' },
  kernel: (x) => (x.secondaryVolts * x.supplyVolts) / x.tapVolts,
};

export interface Taps {
  /** V. */
  readonly supplyVolts: number;
  /** Voltages there is a tap for, V. */
  readonly taps: readonly number[];
  /** Share of the tap's voltage by which the supply may differ. */
  readonly tolerance: number;
}

/**
 * The tap (V) whose voltage the supply comes closest to, as a share of it.
 * Errors: a supply that differs from every tap by more than the tolerance is `no-solution`.
 */
export function bestTap({ supplyVolts, taps, tolerance }: Taps): Result<number> {
  const off = (tap: number): number => Math.abs(supplyVolts / tap - 1);
  const best = taps.reduce<number | undefined>(
    (a, b) => (a === undefined || off(b) < off(a) ? b : a),
    undefined,
  );
  if (best !== undefined && off(best) <= tolerance) return ok(best);
  return fail({ code: 'no-solution', where: 'supplyVolts', reason: 'no-tap-fits' });
}
