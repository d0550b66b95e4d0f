/**
 * A fuel gas as the sizing equations and the burner see it.
 *
 * Heating value and flows refer to the standard volume of the engine: 15 °C, 101.325 kPa.
 */
import type { Source } from '../trace/index.ts';

export type FuelName = 'natural' | 'propane';

export interface Fuel {
  readonly name: FuelName;
  /** Density over that of air at the same state; 0.60 and 1.50 where the code assumes it. */
  readonly specificGravity: number;
  /** Gross heat of combustion of a standard volume, J/m3. */
  readonly heatingValue: number;
}

/** The factors of the fuel-gas code's sizing equations. */
export interface SizingFactors {
  /** Cr, viscosity, density and temperature in one, dimensionless in the equation's own units. */
  readonly cr: number;
  /** Y, superexpansibility. */
  readonly y: number;
}

/**
 * Cr and Y by fuel. Cr follows from 0.00354·S·T·(Z/S)^0.152 with T = 520 °R and viscosities Z of 0.012 and
 * 0.008 cP; the capacity tables bear both factors out to 1 %.
 */
export const SIZING_FACTORS: Readonly<Record<FuelName, SizingFactors>> = {
  natural: { cr: 0.6094, y: 0.9992 },
  propane: { cr: 1.2462, y: 0.991 },
};

export const SIZING_FACTORS_SOURCE: Source = {
  document: 'International Fuel Gas Code 2018',
  at: 'Section 402.4, Equations 4-1 and 4-2; Appendix A.4',
  known: 'from memory',
};
