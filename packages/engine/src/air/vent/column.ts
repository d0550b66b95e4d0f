/**
 * Mean temperature of the gas in the upright part of a vent, cooled on its way through a lateral and up.
 *
 *     x  = U·π·d·L/(w·cp)
 *     Tg = Ta + ΔT·e^(−xl)·(1 − e^(−xv))/xv
 *
 * Steady state; the vent stands in air of the outdoor temperature all along, which a vent in a warm shaft beats.
 *
 * Source: plug flow with loss through the wall. Transmittances: ASHRAE Handbook – HVAC Systems and Equipment,
 * chimneys, from memory (double-wall gas vent of 1/4 in 0.6, single-wall steel 1.2 Btu/(h ft2 °F)).
 * Range: as declared. Errors: range issues of `evaluate`.
 * Worked example: xl = 0, xv = 0.123, ΔT = 166.7 K over 288.7 K → 445.5 K.
 */
import { BTU, FAHRENHEIT_STEP, HOUR, SQUARE_FOOT } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

/** Of flue gas, J/(kg K); 0.25 Btu/(lb °F), from memory. */
export const FLUE_GAS_HEAT = 1046.7;

const BTU_PER_SQUARE_FOOT = BTU / HOUR / SQUARE_FOOT / FAHRENHEIT_STEP;

/** U of a vent’s wall, W/(m2 K). */
export const WALL_TRANSMITTANCE = {
  'type-b': 0.6 * BTU_PER_SQUARE_FOOT,
  'single-wall': 1.2 * BTU_PER_SQUARE_FOOT,
} as const;

const COLUMN_SOURCE: Source = { document: 'Plug flow with loss through the wall', known: 'physics' };

export interface CoolingRun {
  /** U, W/(m2 K). */
  readonly transmittance: number;
  /** d, m. */
  readonly diameter: number;
  /** L, m. */
  readonly length: number;
  /** w, kg/s. */
  readonly massFlow: number;
}

/** How far a run of vent cools its gas: transfer units, a pure number. */
export const ventCooling: Formula<CoolingRun> = {
  id: 'air.vent-cooling',
  equation: 'x = U·π·d·L/(w·cp)',
  inputs: {
    transmittance: { symbol: 'U', kind: 'transmittance', min: 0, max: 20 },
    diameter: { symbol: 'd', kind: 'diameter', min: 0.02, max: 3 },
    length: { symbol: 'L', kind: 'length', min: 0, max: 100 },
    massFlow: { symbol: 'w', kind: 'mass-flow', min: 1e-9, max: 100 },
  },
  result: { symbol: 'x', kind: 'ratio' },
  source: COLUMN_SOURCE,
  kernel: (x) => (x.transmittance * Math.PI * x.diameter * x.length) / (x.massFlow * FLUE_GAS_HEAT),
};

export interface CooledColumn {
  /** Ta, K. */
  readonly airTemperature: number;
  /** ΔT of the gas over the air where it enters, K. */
  readonly rise: number;
  /** xl, transfer units of the lateral. */
  readonly lateralCooling: number;
  /** xv, of the upright part. */
  readonly uprightCooling: number;
}

/** Mean temperature of the upright part, K. */
export const columnTemperature: Formula<CooledColumn> = {
  id: 'air.column-temperature',
  equation: 'Tg = Ta + ΔT·e^(−xl)·(1 − e^(−xv))/xv',
  inputs: {
    airTemperature: { symbol: 'Ta', kind: 'temperature', min: 213.15, max: 333.15 },
    rise: { symbol: 'ΔT', kind: 'temperature-difference', min: 0, max: 800 },
    lateralCooling: { symbol: 'xl', kind: 'ratio', min: 0 },
    uprightCooling: { symbol: 'xv', kind: 'ratio', min: 0 },
  },
  result: { symbol: 'Tg', kind: 'temperature' },
  source: COLUMN_SOURCE,
  kernel: (x) => {
    const mean = x.uprightCooling === 0 ? 1 : -Math.expm1(-x.uprightCooling) / x.uprightCooling;
    return x.airTemperature + x.rise * Math.exp(-x.lateralCooling) * mean;
  },
};
