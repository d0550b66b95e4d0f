/**
 * Saturation index of pool water by a named variant: above zero it drops scale, below it dissolves what it touches.
 *
 * Cyanurate is taken off the alkalinity first (`carbonateAlkalinity`). An index compares with a limit only in the
 * variant that the limit was made for: the pool trade's bands belong to `table`.
 *
 * Source: of each variant, in its own file. Range: of the variant.
 * Errors: range issues, and a contradiction `cyanurate-above-alkalinity` where nothing is left to the carbonates.
 * Worked example: `table`, pH 7.6, 84 °F, calcium 300, alkalinity 75 mg/L, no cyanuric acid → 0.2.
 */
import { evaluate, type Formula, fail, type Recorder, type Result } from '../trace/index.ts';
import { carrierIndex } from './carrier-index.ts';
import { carbonateAlkalinity } from './cyanurate.ts';
import { standardMethodsIndex } from './standard-methods-index.ts';
import { tableIndex } from './table-index.ts';
import type { WaterSample } from './water-sample.ts';

export const INDEX_VARIANTS = ['table', 'standard-methods', 'carrier'] as const;
export type IndexVariant = (typeof INDEX_VARIANTS)[number];

const FORMULAS: Readonly<Record<IndexVariant, Formula<WaterSample>>> = {
  table: tableIndex,
  'standard-methods': standardMethodsIndex,
  carrier: carrierIndex,
};

export interface PoolWater extends Omit<WaterSample, 'alkalinity'> {
  /** As titrated, as CaCO3, kg/m3. */
  readonly totalAlkalinity: number;
  /** kg/m3. */
  readonly cyanuricAcid: number;
}

/** The index of a variant; see the head of this file. */
export function saturationIndex(
  variant: IndexVariant,
  water: PoolWater,
  recorder?: Recorder,
): Result<number> {
  const { totalAlkalinity, cyanuricAcid, ...sample } = water;
  const carbonate = evaluate(carbonateAlkalinity, { ph: water.ph, totalAlkalinity, cyanuricAcid }, recorder);
  if (!carbonate.ok) return carbonate;
  if (carbonate.value <= 0)
    return fail({
      code: 'contradiction',
      where: 'totalAlkalinity',
      found: totalAlkalinity,
      kind: 'mass-concentration',
      reason: 'cyanurate-above-alkalinity',
    });
  return evaluate(FORMULAS[variant], { ...sample, alkalinity: carbonate.value }, recorder);
}
