/**
 * Mass of flue gas that a unit of heat input makes, from the carbon dioxide in it.
 *
 *     M = u + v/CO₂        lb a thousand Btu: natural gas u = 0.112, v = 7.56 (CO₂ in per cent); propane 0.102, 8.90
 *
 * The usual states of the two burners of the trade’s vent tables: a natural-draught burner behind its draught hood
 * (5.3 % CO₂ after dilution, 300 °F above the room), and one with a fan and no hood (7.5 % CO₂, the same rise).
 *
 * Source: ASHRAE Handbook – HVAC Systems and Equipment, chimneys: mass flow of combustion products and typical
 * conditions of gas vents, from memory; the fan-assisted state is common practice, no source.
 * Range: 1 to 15 % CO₂. Errors: range issues of `evaluate`.
 * Worked example: natural gas at 5.3 % → 1.54 lb a thousand Btu (0.66 kg/MJ).
 */
import { BTU, FAHRENHEIT_STEP, POUND } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const POUND_PER_THOUSAND_BTU = POUND / (1000 * BTU);

export const FLUE_GAS_SOURCE: Source = {
  document: 'ASHRAE Handbook – HVAC Systems and Equipment',
  at: 'chimneys, mass flow of combustion products',
  known: 'from memory',
};

/** u and v by fuel, for CO₂ as a ratio. */
export const FLUE_GAS = {
  natural: { hydrogenTerm: 0.705 * 0.159, carbonTerm: 0.705 * 0.1072 },
  propane: { hydrogenTerm: 0.706 * 0.144, carbonTerm: 0.706 * 0.1261 },
} as const;

/** State in which a burner’s gas enters the vent. */
export const BURNERS = {
  natural: { carbonDioxide: 0.053, rise: 300 * FAHRENHEIT_STEP, inletLoss: 1.5 },
  fan: { carbonDioxide: 0.075, rise: 300 * FAHRENHEIT_STEP, inletLoss: 0 },
} as const;

export type VentedBurner = keyof typeof BURNERS;

export interface FlueGas {
  /** CO₂, share of the dry flue gas. */
  readonly carbonDioxide: number;
  /** u of the fuel; see `FLUE_GAS`. */
  readonly hydrogenTerm: number;
  /** v of the fuel. */
  readonly carbonTerm: number;
}

/** Flue gas for each joule of heat input, kg/J. */
export const flueGasMass: Formula<FlueGas> = {
  id: 'air.flue-gas-mass',
  equation: 'M = u + v/CO₂',
  inputs: {
    carbonDioxide: { symbol: 'CO2', kind: 'ratio', min: 0.01, max: 0.15 },
    hydrogenTerm: { symbol: 'u', kind: 'ratio', min: 0, max: 1 },
    carbonTerm: { symbol: 'v', kind: 'ratio', min: 0, max: 1 },
  },
  result: { symbol: 'M', kind: 'emission-factor' },
  source: FLUE_GAS_SOURCE,
  kernel: (x) => (x.hydrogenTerm + x.carbonTerm / x.carbonDioxide) * POUND_PER_THOUSAND_BTU,
};
