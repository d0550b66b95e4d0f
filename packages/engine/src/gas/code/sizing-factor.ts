/**
 * Cr of the code's sizing equations: viscosity, density and temperature of the gas in one number.
 *
 *     Cr = 0.00354 · S · T · (Z/S)^0.152
 *
 * with S the gravity (air = 1), T in °R and Z the viscosity in centipoise. The code prints S 0.60 and 1.50, Z 0.012
 * and 0.008 cP and T 520 °R, from which come its Cr of 0.6094 (natural gas) and 1.2462 (propane). A gas of another
 * gravity gets its own Cr here; the code itself offers only the multiplier of its gravity table, which this
 * expression bears out to 0.01 of a multiplier.
 *
 * Source: IFGC 2018 Appendix A.4 (S, Z, T read in a public copy; the expression in the 2013 California Residential
 * Code, A.4, from the 2012 edition).
 * Range: gravity 0.3 to 2.2, viscosity 5 to 25 µPa·s, temperature 220 to 340 K.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: S 0.60, 12 µPa·s, 520 °R (288.89 K) → 0.6094.
 */
import type { Formula, Source } from '../../trace/index.ts';

export const SIZING_FACTOR_SOURCE: Source = {
  document: 'International Fuel Gas Code 2018',
  at: 'Appendix A.4, variables of Equations 4-1 and 4-2',
  known: 'read in a public copy',
};

/** The temperature the code computes Cr at (520 °R), K. */
export const SIZING_TEMPERATURE = 520 / 1.8;

const CENTIPOISE = 1e-3;

export interface SizingGas {
  /** S, density over that of air at the same state. */
  readonly specificGravity: number;
  /** Z, Pa s. */
  readonly viscosity: number;
  /** T, K. */
  readonly temperature: number;
}

/** Cr of a gas, in the sizing equations' own units. */
export const sizingFactor: Formula<SizingGas> = {
  id: 'gas.sizing-factor',
  equation: 'Cr = 0.00354·S·T·(Z/S)^0.152',
  inputs: {
    specificGravity: { symbol: 'S', kind: 'ratio', min: 0.3, max: 2.2 },
    viscosity: { symbol: 'Z', kind: 'dynamic-viscosity', min: 5e-6, max: 25e-6 },
    temperature: { symbol: 'T', kind: 'temperature', min: 220, max: 340 },
  },
  result: { symbol: 'Cr', kind: 'ratio' },
  source: SIZING_FACTOR_SOURCE,
  kernel: ({ specificGravity: s, viscosity, temperature }) =>
    0.00354 * s * (temperature * 1.8) * (viscosity / CENTIPOISE / s) ** 0.152,
};
