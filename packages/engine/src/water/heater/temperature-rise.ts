/**
 * Temperature rise of the water across a heater, and its inverses.
 *
 *     ΔT = P/(ρ·c·Q)
 *
 * The trade's ΔT = Btu/h ÷ (500·gpm) is this with 60 °F water; at pool temperature the true factor is 498.
 * P is the heat that reaches the water: input times efficiency.
 *
 * Source: energy balance. Range: see the variables.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 80,000 Btu/h into 8 gpm → 20 °F.
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';
import { DENSITY } from '../variables.ts';

const SOURCE: Source = { document: 'Energy balance of the water through a heater', known: 'physics' };
const HEAT: Variable = { symbol: 'P', kind: 'heat-rate', min: 0, max: 1e9 };
const THROUGH: Variable = { symbol: 'Q', kind: 'volume-flow', min: 1e-9, max: 100 };
const RISE: Variable = { symbol: 'ΔT', kind: 'temperature-difference', min: 1e-6, max: 1000 };
const SPECIFIC_HEAT: Variable = { symbol: 'c', kind: 'specific-heat', min: 1000, max: 6000 };

export interface HeatedFlow {
  /** P, W, into the water. */
  readonly heat: number;
  /** Q, m3/s. */
  readonly flow: number;
  /** ρ, kg/m3. */
  readonly density: number;
  /** c, J/(kg K). */
  readonly specificHeat: number;
}

/** Temperature rise, K. */
export const temperatureRise: Formula<HeatedFlow> = {
  id: 'water.temperature-rise',
  equation: 'ΔT = P/(ρ·c·Q)',
  inputs: { heat: HEAT, flow: THROUGH, density: DENSITY, specificHeat: SPECIFIC_HEAT },
  result: RISE,
  source: SOURCE,
  kernel: (x) => x.heat / (x.density * x.specificHeat * x.flow),
};

export interface WarmedFlow {
  /** ΔT, K. */
  readonly rise: number;
  /** Q, m3/s. */
  readonly flow: number;
  readonly density: number;
  readonly specificHeat: number;
}

/** Heat the water carries off, W: the inverse of `temperatureRise` for heat. */
export const heatCarried: Formula<WarmedFlow> = {
  id: 'water.heat-carried',
  equation: 'P = ρ·c·Q·ΔT',
  inputs: {
    rise: { symbol: 'ΔT', kind: 'temperature-difference', min: -1000, max: 1000 },
    flow: THROUGH,
    density: DENSITY,
    specificHeat: SPECIFIC_HEAT,
  },
  result: { symbol: 'P', kind: 'heat-rate' },
  source: SOURCE,
  kernel: (x) => x.density * x.specificHeat * x.flow * x.rise,
};

export interface RiseWanted {
  readonly heat: number;
  readonly rise: number;
  readonly density: number;
  readonly specificHeat: number;
}

/** Flow at which a heat makes a given rise, m3/s: the inverse of `temperatureRise` for flow. */
export const flowForRise: Formula<RiseWanted> = {
  id: 'water.flow-for-rise',
  equation: 'Q = P/(ρ·c·ΔT)',
  inputs: { heat: HEAT, rise: RISE, density: DENSITY, specificHeat: SPECIFIC_HEAT },
  result: THROUGH,
  source: SOURCE,
  kernel: (x) => x.heat / (x.density * x.specificHeat * x.rise),
};
