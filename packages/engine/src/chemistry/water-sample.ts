/** What a saturation index is computed from, with the names and symbols that all its variants share. */
import type { Variable } from '../trace/index.ts';

/** 1 mg/L in kg/m3. */
export const MILLIGRAM_PER_LITRE = 0.001;

export interface WaterSample {
  /** pH at the temperature. */
  readonly ph: number;
  /** T, K. */
  readonly temperature: number;
  /** Ca, calcium hardness as CaCO3, kg/m3. */
  readonly calcium: number;
  /** Alk, carbonate alkalinity as CaCO3, kg/m3. */
  readonly alkalinity: number;
  /** TDS, kg/m3. */
  readonly dissolvedSolids: number;
}

/** The pH that test kits and the approximation of bicarbonate by alkalinity are good for. */
export const PH: Variable = { symbol: 'pH', kind: 'ph', min: 6, max: 9 };

/** Rows of the printed factor tables, 5 to 1000 mg/L. */
export const HARDNESS: Variable = { symbol: 'Ca', kind: 'mass-concentration', min: 0.005, max: 1 };
export const ALKALINITY: Variable = { symbol: 'Alk', kind: 'mass-concentration', min: 0.005, max: 1 };

/** The result of every variant. */
export const INDEX: Variable = { symbol: 'SI', kind: 'ph' };
