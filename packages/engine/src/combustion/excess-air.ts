/**
 * Excess air and the composition of the flue gas, each from the other, for complete combustion in dry air.
 *
 *     O2 = 0.2095·E·A0/(D0 + E·A0)        CO2 = C/(D0 + E·A0)        (dry)
 *     H2O = W/(D0 + E·A0 + W)             (wet)
 *
 * A0, D0, C and W are moles of dry air, dry flue gas, carbon dioxide and water for a mole of fuel (`flameBalance`).
 * Moist combustion air adds to the water: in summer about 2 K of dew point.
 *
 * Source: the balance of the reactions; it meets the oxygen column of US DOE Steam Tip Sheet 4.
 * Range: oxygen up to 20 %, excess air up to 20 times what is needed.
 * Errors: range issues of `evaluate`; carbon dioxide above what the fuel can give makes a negative excess, which means
 * too little air or a wrong reading: the result is below zero, and the sum refuses it.
 * Worked example: methane, 3.01 % oxygen → 15 % excess air, 10.05 % carbon dioxide, 16.7 % water vapour.
 */
import type { Formula, Source, Variable } from '../trace/index.ts';
import { OXYGEN_IN_AIR } from './fuel.ts';

export const FLAME_SOURCE: Source = {
  document: 'balance of the reactions in dry air',
  at: 'CH4 + 2 O2, C3H8 + 5 O2',
  known: 'physics',
};

const airDemand: Variable = { symbol: 'A0', kind: 'ratio', min: 0.1, max: 100 };
const dryFlue: Variable = { symbol: 'D0', kind: 'ratio', min: 0.1, max: 100 };
const carbon: Variable = { symbol: 'C', kind: 'ratio', min: 0, max: 10 };
const vapour: Variable = { symbol: 'W', kind: 'ratio', min: 0, max: 10 };
const excessAir: Variable = { symbol: 'E', kind: 'ratio', min: 0, max: 20 };
const oxygen: Variable = { symbol: 'O2', kind: 'ratio', min: 0, max: 0.2 };
const carbonDioxide: Variable = { symbol: 'CO2', kind: 'ratio', min: 0.003, max: 0.25 };

export interface DryFlame {
  readonly airDemand: number;
  readonly dryFlue: number;
}

/** E from the oxygen of a dry sample. */
export const excessAirOfOxygen: Formula<DryFlame & { readonly oxygen: number }> = {
  id: 'combustion.excess-air-of-oxygen',
  equation: 'E = O2·D0/(A0·(0.2095 − O2))',
  inputs: { airDemand, dryFlue, oxygen },
  result: excessAir,
  source: FLAME_SOURCE,
  kernel: (x) => (x.oxygen * x.dryFlue) / (x.airDemand * (OXYGEN_IN_AIR - x.oxygen)),
};

/** E from the carbon dioxide of a dry sample; below zero where there is more than the fuel can give. */
export const excessAirOfCarbonDioxide: Formula<
  DryFlame & { readonly carbon: number; readonly carbonDioxide: number }
> = {
  id: 'combustion.excess-air-of-carbon-dioxide',
  equation: 'E = (C/CO2 − D0)/A0',
  inputs: { airDemand, dryFlue, carbon, carbonDioxide },
  result: { symbol: 'E', kind: 'ratio' },
  source: FLAME_SOURCE,
  kernel: (x) => (x.carbon / x.carbonDioxide - x.dryFlue) / x.airDemand,
};

export interface LeanFlame extends DryFlame {
  readonly excessAir: number;
}

/** Oxygen of the dry flue gas: the inverse of `excessAirOfOxygen`. */
export const flueOxygen: Formula<LeanFlame> = {
  id: 'combustion.flue-oxygen',
  equation: 'O2 = 0.2095·E·A0/(D0 + E·A0)',
  inputs: { airDemand, dryFlue, excessAir },
  result: oxygen,
  source: FLAME_SOURCE,
  kernel: (x) => (OXYGEN_IN_AIR * x.excessAir * x.airDemand) / (x.dryFlue + x.excessAir * x.airDemand),
};

/** Carbon dioxide of the dry flue gas: the inverse of `excessAirOfCarbonDioxide`. */
export const flueCarbonDioxide: Formula<LeanFlame & { readonly carbon: number }> = {
  id: 'combustion.flue-carbon-dioxide',
  equation: 'CO2 = C/(D0 + E·A0)',
  inputs: { airDemand, dryFlue, excessAir, carbon },
  result: carbonDioxide,
  source: FLAME_SOURCE,
  kernel: (x) => x.carbon / (x.dryFlue + x.excessAir * x.airDemand),
};

/** Water vapour of the wet flue gas, before any of it condenses. */
export const flueVapour: Formula<LeanFlame & { readonly vapour: number }> = {
  id: 'combustion.flue-vapour',
  equation: 'H2O = W/(D0 + E·A0 + W)',
  inputs: { airDemand, dryFlue, excessAir, vapour },
  result: { symbol: 'H2O', kind: 'ratio', min: 0, max: 1 },
  source: FLAME_SOURCE,
  kernel: (x) => x.vapour / (x.dryFlue + x.excessAir * x.airDemand + x.vapour),
};
