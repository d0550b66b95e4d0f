/**
 * What fuel gases are made of: the data from which heating value, gravity, viscosity and carbon of any mixture follow.
 *
 * Molar heats are gross (water condensed), at 15 °C, of the ideal gas; the summation factor s gives the compression
 * factor at 15 °C and 101.325 kPa, Z = 1 − (Σ x·√(1 − Z))².
 *
 * Source: ISO 6976 (1995 values), Tables 2 and 3, and viscosities at 15 °C of the pure gases at low pressure, all from
 * memory; they are held against a printed fuel table and the US emission factors in the validation.
 */
import type { Source } from '../../trace/index.ts';

export const FUEL_GAS_SOURCE: Source = {
  document: 'ISO 6976:1995',
  at: 'Tables 2 and 3, Equations 3 and 5',
  known: 'from memory',
};

export interface GasComponent {
  /** kg/mol. */
  readonly molarMass: number;
  /** Gross heat of combustion at 15 °C, J/mol. */
  readonly grossHeat: number;
  readonly carbon: number;
  readonly hydrogen: number;
  /** √(1 − Z) at 15 °C and 101.325 kPa. */
  readonly summationFactor: number;
  /** Dynamic viscosity at 15 °C, Pa s. */
  readonly viscosity: number;
}

export type GasName = 'methane' | 'ethane' | 'propane' | 'butane' | 'nitrogen' | 'carbon-dioxide';

/** The gases of natural gas and of bottled gas; `butane` is n-butane. */
export const GAS_COMPONENTS: Readonly<Record<GasName, GasComponent>> = {
  methane: gas(0.016043, 891_560, [1, 4], [0.0447, 10.8e-6]),
  ethane: gas(0.03007, 1_562_140, [2, 6], [0.0922, 9.0e-6]),
  propane: gas(0.044097, 2_221_100, [3, 8], [0.1338, 7.95e-6]),
  butane: gas(0.058123, 2_879_760, [4, 10], [0.1871, 7.2e-6]),
  nitrogen: gas(0.0280135, 0, [0, 0], [0.0173, 17.3e-6]),
  'carbon-dioxide': gas(0.04401, 0, [1, 0], [0.0748, 14.5e-6]),
};

function gas(
  molarMass: number,
  grossHeat: number,
  [carbon, hydrogen]: readonly [number, number],
  [summationFactor, viscosity]: readonly [number, number],
): GasComponent {
  return { molarMass, grossHeat, carbon, hydrogen, summationFactor, viscosity };
}
