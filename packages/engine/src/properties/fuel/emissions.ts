/**
 * Greenhouse gases given off by burning a fuel, by gross heat.
 *
 *     CO2e = CO2 + GWP(CH4)·CH4 + GWP(N2O)·N2O
 *
 * How sources disagree: warming potentials of methane and nitrous oxide were 25 and 298 before 2025 and are 28 and
 * 265 since; the difference is 0.01 % of a heater's total. The factor of a composition (`gasMixture`) lies 0.2 to
 * 0.5 % under the tabled one of propane and butane, which allow for heavier gases in the bottle.
 *
 * Source: 40 CFR 98, Tables C-1 and C-2; warming potentials of Table A-1 from memory.
 * Range: the fuels named. Only what leaves the burner: not the leaks of the supply.
 *
 * Worked example: natural gas, 1 therm → 5.306 kg CO2, 5.311 kg CO2e.
 */
import { BTU } from '../../quantity/index.ts';
import type { Source } from '../../trace/index.ts';

export const EMISSIONS_SOURCE: Source = {
  document: '40 CFR 98',
  at: 'Subpart C, Tables C-1 and C-2 (81 FR 89188)',
  known: 'read in a public copy',
};

const PER_MILLION_BTU = 1 / (1e6 * BTU);

/** Warming of a kilogram over a hundred years, over that of carbon dioxide. */
export const WARMING_POTENTIAL = { methane: 28, nitrousOxide: 265 } as const;

export interface EmissionFactor {
  /** kg CO2 a joule of gross heat. */
  readonly carbonDioxide: number;
  /** kg CH4 a joule. */
  readonly methane: number;
  /** kg N2O a joule. */
  readonly nitrousOxide: number;
  /** kg CO2 that warms as much as all three, a joule. */
  readonly carbonDioxideEquivalent: number;
}

export type EmissionFuel = 'natural' | 'propane' | 'lpg' | 'propane-gas' | 'butane';

/** Factors by fuel; `propane` is the liquid of the tank, `propane-gas` the table's own row for the gas. */
export const EMISSION_FACTORS: Readonly<Record<EmissionFuel, EmissionFactor>> = {
  natural: perMillionBtu(53.06, 0.001, 0.0001),
  propane: perMillionBtu(62.87, 0.003, 0.0006),
  lpg: perMillionBtu(61.71, 0.003, 0.0006),
  'propane-gas': perMillionBtu(61.46, 0.003, 0.0006),
  butane: perMillionBtu(64.77, 0.003, 0.0006),
};

function perMillionBtu(carbonDioxide: number, methane: number, nitrousOxide: number): EmissionFactor {
  const equivalent =
    carbonDioxide + WARMING_POTENTIAL.methane * methane + WARMING_POTENTIAL.nitrousOxide * nitrousOxide;
  return {
    carbonDioxide: carbonDioxide * PER_MILLION_BTU,
    methane: methane * PER_MILLION_BTU,
    nitrousOxide: nitrousOxide * PER_MILLION_BTU,
    carbonDioxideEquivalent: equivalent * PER_MILLION_BTU,
  };
}
