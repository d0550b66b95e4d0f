/**
 * A fuel gas as the sizing equations and the burner see it.
 *
 * Heating value and flows refer to the standard volume of the engine: 15 °C, 101.325 kPa.
 */
import { BTU, STANDARD_CUBIC_FOOT } from '../quantity/index.ts';
import type { Source } from '../trace/index.ts';

export type FuelName = 'natural' | 'propane';

export interface Fuel {
  readonly name: FuelName;
  /** Density over that of air at the same state; 0.60 and 1.50 where the code assumes it. */
  readonly specificGravity: number;
  /** Gross heat of combustion of a standard volume, J/m3. */
  readonly heatingValue: number;
}

/** Heat of combustion printed in Btu a standard cubic foot (60 °F, 14.73 psia, dry), J/m3. */
const BTU_PER_CUBIC_FOOT = BTU / STANDARD_CUBIC_FOOT;

/** Natural gas as the code's examples assume it: gravity 0.60, 1000 Btu/ft3. A bill says what is really delivered. */
export const NATURAL_GAS: Fuel = {
  name: 'natural',
  specificGravity: 0.6,
  heatingValue: 1000 * BTU_PER_CUBIC_FOOT,
};

/** Undiluted propane as the code's examples assume it: gravity 1.50, 2500 Btu/ft3 (other pages: 2488 to 2516). */
export const PROPANE: Fuel = {
  name: 'propane',
  specificGravity: 1.5,
  heatingValue: 2500 * BTU_PER_CUBIC_FOOT,
};

export const FUELS_SOURCE: Source = {
  document: 'International Fuel Gas Code 2018 and NFPA 54',
  at: 'IFGC Appendix A examples (natural gas, read in a public copy); propane from memory',
  known: 'from memory',
};

/** Flow (standard m3/s) that carries a heat input (W). */
export function flowOfHeat(fuel: Fuel, heatInput: number): number {
  return heatInput / fuel.heatingValue;
}

/** Heat input (W) that a flow (standard m3/s) carries. */
export function heatOfFlow(fuel: Fuel, flow: number): number {
  return flow * fuel.heatingValue;
}

/** The factors of the fuel-gas code's sizing equations. */
export interface SizingFactors {
  /** Cr, viscosity, density and temperature in one, dimensionless in the equation's own units. */
  readonly cr: number;
  /** Y, superexpansibility. */
  readonly y: number;
}

/**
 * Cr and Y by fuel, as NFPA 54-2012 Table 6.4.2 prints them in the 2013 California Plumbing Code. Cr follows from
 * 0.00354·S·T·(Z/S)^0.152 with T = 520 °R and viscosities Z of 0.012 and 0.008 cP; the capacity tables bear both
 * factors out to 1 %.
 */
export const SIZING_FACTORS: Readonly<Record<FuelName, SizingFactors>> = {
  natural: { cr: 0.6094, y: 0.9992 },
  propane: { cr: 1.2462, y: 0.991 },
};

export const SIZING_FACTORS_SOURCE: Source = {
  document: 'International Fuel Gas Code 2018',
  at: 'Section 402.4, Equations 4-1 and 4-2; Appendix A.4',
  known: 'read in a public copy',
};
