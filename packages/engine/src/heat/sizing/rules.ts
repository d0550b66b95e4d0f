/**
 * The trade's rules of thumb for a pool heater, to stand beside a computed size and never instead of it.
 *
 *     surface area rule, output   P = 12·A·ΔT·r        Btu/h, ft2, °F        r = 1 for 1 to 1.25 °F/h of rise,
 *                                                                             1.5 for 1.5 °F/h, 2 for 2 °F/h
 *     trade handbook, input       P = 15·A·ΔT
 *
 * ΔT is the wanted water over the mean air of the coldest month of use.
 *
 * How sources disagree: at 80 % efficiency 15 of input is 12 of output: one rule. It is for an open pool with 3.5 mph
 * of wind at the water and knows no cover, no sun, no depth. The rise it promises is that of shallow water: the
 * handbook's own pool of 17,000 gal would rise by 0.76 °F/h at the rule's output even if it lost nothing.
 *
 * Source: US DOE Energy Saver, Gas Swimming Pool Heaters (rate multipliers and wind from memory); the input form from a
 * trade handbook's surface-area method.
 * Range: area 0 to 10,000 m2, difference 0 to 60 K, multiplier 1 to 2.
 * Errors: values outside are issues of `evaluate`.
 *
 * Worked example: 450 ft2, 70 °F water, 50 °F air → 108,000 Btu/h output, 135,000 Btu/h input.
 */
import { BTU, FAHRENHEIT_STEP, HOUR, SQUARE_FOOT } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const DOE: Source = {
  document: 'US DOE Energy Saver, Gas Swimming Pool Heaters',
  at: 'surface area method',
  known: 'read in a public copy',
};
const HANDBOOK: Source = {
  document: 'HVAC trade handbook, pool heater surface-area method',
  at: 'area·15·ΔT, beside Table 5-1',
  known: 'read in a public copy',
};

/** W/(m2 K) of one Btu/(h ft2 °F). */
const BTU_HOUR_FOOT_FAHRENHEIT = BTU / HOUR / SQUARE_FOOT / FAHRENHEIT_STEP;

export interface SurfaceRule {
  /** A, m2. */
  readonly area: number;
  /** ΔT, K. */
  readonly difference: number;
  /** r. */
  readonly rate: number;
}

const area = { symbol: 'A', kind: 'area', min: 0, max: 10_000 } as const;
const difference = { symbol: 'ΔT', kind: 'temperature-difference', min: 0, max: 60 } as const;

/** Output a pool heater should have by the surface-area rule, W. */
export const surfaceRuleOutput: Formula<SurfaceRule> = {
  id: 'heat.surface-rule-output',
  equation: 'P = 12·A·ΔT·r',
  inputs: { area, difference, rate: { symbol: 'r', kind: 'ratio', min: 1, max: 2 } },
  result: { symbol: 'P', kind: 'heat-rate' },
  source: DOE,
  kernel: (x) => 12 * BTU_HOUR_FOOT_FAHRENHEIT * x.area * x.difference * x.rate,
};

/** Input a gas pool heater should have by the trade handbook's shortcut, W. */
export const surfaceRuleInput: Formula<Omit<SurfaceRule, 'rate'>> = {
  id: 'heat.surface-rule-input',
  equation: 'P = 15·A·ΔT',
  inputs: { area, difference },
  result: { symbol: 'P', kind: 'heat-rate' },
  source: HANDBOOK,
  kernel: (x) => 15 * BTU_HOUR_FOOT_FAHRENHEIT * x.area * x.difference,
};

/** Multiplier of the rule by the rise wanted, °F an hour: steps as the source has them. */
export const RISE_RATES = [
  { rise: 1.25, rate: 1 },
  { rise: 1.5, rate: 1.5 },
  { rise: 2, rate: 2 },
] as const;
