/**
 * Combustion efficiency: the share of the fuel's heat that does not leave with the flue gas.
 *
 *     η = 1 − (Σ n·Δh(Ta → Tf) + nv·L + nc·cw·(Tf − Ta))/H
 *
 * n are the moles of CO2, N2, O2 and water vapour for a mole of fuel, nv those of water that leave as vapour, nc those
 * that condensed. Flue gas under its dew point leaves saturated: what exceeds saturation has given back its latent heat.
 * That is the most that can condense; where the gas is cooled faster than it settles, less does. Heat through the jacket
 * of the heater is no part of it: the water gets less.
 *
 * Gross efficiency divides by the gross heat H (water condensed), net efficiency by the net heat: the same useful heat
 * over a smaller number, so that a condensing heater may pass 100 % net.
 *
 * How sources disagree: US DOE Steam Tip Sheet 4 lies 0.3 to 0.7 points under this balance, growing with the stack's
 * temperature; BS 845's constants meet that table within 0.15 (`flue-loss.ts`). The balance is followed, because it holds
 * for any fuel, any altitude and under the dew point too.
 *
 * Source: first law; `gas-enthalpy.ts`; latent heat of water by IAPWS SR1-86.
 * Range: air −40 to 60 °C, flue gas from the air's temperature to 700 °C, 50 to 110 kPa, excess air to 20 times.
 * Errors: range issues of `evaluate`; a stack colder than its combustion air is `no-solution`.
 * Worked example: methane, 15 % excess air, 70 °F air, stack 400 °F above it → 80.8 % gross, 89.7 % net.
 */
import { latentHeatOfWater, saturationPressureAt } from '../properties/index.ts';
import type { Formula, Source, Variable } from '../trace/index.ts';
import { type CombustionFuel, OXYGEN_IN_AIR } from './fuel.ts';
import { enthalpyRise } from './gas-enthalpy.ts';

export const EFFICIENCY_SOURCE: Source = {
  document: 'heat balance of the flue gas',
  at: 'NASA polynomials of the gases, from memory; IAPWS SR1-86 for the latent heat',
  known: 'physics',
};

/** kg/mol. */
export const WATER_MOLAR_MASS = 0.018015;
/** Liquid water, J/(mol K). */
const WATER_HEAT = 75.3;
/** Where the saturation equation ends; above it nothing condenses at any pressure here. */
const NO_LIQUID = 400;

const ratio = (symbol: string, max: number): Variable => ({ symbol, kind: 'ratio', min: 0, max });
const excessAir: Variable = { symbol: 'E', kind: 'ratio', min: 0, max: 20 };
const grossHeat: Variable = { symbol: 'H', kind: 'energy', min: 1e5, max: 1e7 };

export interface FlueState {
  /** Moles of CO2, and of hydrogen atoms, oxygen taken and nitrogen held, for a mole of fuel. */
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygenDemand: number;
  readonly nitrogen: number;
  /** H, J for a mole of fuel. */
  readonly grossHeat: number;
  readonly excessAir: number;
  /** Tf, K. */
  readonly stackTemperature: number;
  /** Ta, of the air to the burner, K. */
  readonly airTemperature: number;
  /** p, Pa. */
  readonly airPressure: number;
}

/** Moles of water that leave as vapour, for a mole of fuel. */
function vapourLeft(x: FlueState, dry: number): number {
  const all = x.hydrogen / 2;
  if (x.stackTemperature > NO_LIQUID) return all;
  const saturation = saturationPressureAt(x.stackTemperature) / x.airPressure;
  return saturation >= 1 ? all : Math.min(all, (dry * saturation) / (1 - saturation));
}

/** Moles of the dry gases of the flue, for a mole of fuel. */
function dryGases(x: FlueState): { readonly nitrogen: number; readonly oxygen: number } {
  const air = (x.oxygenDemand / OXYGEN_IN_AIR) * (1 + x.excessAir);
  return { nitrogen: air * (1 - OXYGEN_IN_AIR) + x.nitrogen, oxygen: x.oxygenDemand * x.excessAir };
}

/** Moles of water that leave as vapour at the state of the flue, for a mole of fuel. */
export function vapourLeaving(x: FlueState): number {
  const { nitrogen, oxygen } = dryGases(x);
  return vapourLeft(x, x.carbon + nitrogen + oxygen);
}

/** Heat that leaves with the flue gas, J for a mole of fuel. */
function flueHeat(x: FlueState): number {
  const { airTemperature: Ta, stackTemperature: Tf } = x;
  const { nitrogen, oxygen } = dryGases(x);
  const vapour = vapourLeft(x, x.carbon + nitrogen + oxygen);
  const dry =
    x.carbon * enthalpyRise('carbon-dioxide', Ta, Tf) +
    nitrogen * enthalpyRise('nitrogen', Ta, Tf) +
    oxygen * enthalpyRise('oxygen', Ta, Tf);
  const latent = latentHeatOfWater(Math.max(Ta, 273.15)) * WATER_MOLAR_MASS;
  const wet = vapour * (latent + enthalpyRise('water', Ta, Tf));
  return dry + wet + (x.hydrogen / 2 - vapour) * WATER_HEAT * (Tf - Ta);
}

/** Gross combustion efficiency, 0 to 1. */
export const grossEfficiency: Formula<FlueState> = {
  id: 'combustion.gross-efficiency',
  equation: 'η = 1 − (Σ n·Δh + nv·L + nc·cw·(Tf − Ta))/H',
  inputs: {
    carbon: ratio('C', 10),
    hydrogen: ratio('h', 20),
    oxygenDemand: ratio('o', 20),
    nitrogen: ratio('n', 1),
    grossHeat,
    excessAir,
    stackTemperature: { symbol: 'Tf', kind: 'temperature', min: 273.16, max: 973.15 },
    airTemperature: { symbol: 'Ta', kind: 'temperature', min: 233.15, max: 333.15 },
    airPressure: { symbol: 'p', kind: 'absolute-pressure', min: 50_000, max: 110_000 },
  },
  result: { symbol: 'η', kind: 'ratio' },
  source: EFFICIENCY_SOURCE,
  kernel: (x) => (x.stackTemperature < x.airTemperature ? Number.NaN : 1 - flueHeat(x) / x.grossHeat),
};

/** Latent heat of the water of combustion at 15 °C, J/mol. */
const FORMED_WATER_HEAT = 44_431;

/** Efficiency on the net heat of the same flame. */
export const netEfficiency: Formula<{
  readonly gross: number;
  readonly hydrogen: number;
  readonly grossHeat: number;
}> = {
  id: 'combustion.net-efficiency',
  equation: 'ηnet = η·H/(H − 44.43 kJ·h/2)',
  inputs: {
    gross: { symbol: 'η', kind: 'ratio', min: -5, max: 1.2 },
    hydrogen: ratio('h', 20),
    grossHeat,
  },
  result: { symbol: 'ηnet', kind: 'ratio' },
  source: EFFICIENCY_SOURCE,
  kernel: (x) => (x.gross * x.grossHeat) / (x.grossHeat - (FORMED_WATER_HEAT * x.hydrogen) / 2),
};

/** The state of a flue by its fuel, as `grossEfficiency` takes it. */
export function flueStateOf(
  fuel: CombustionFuel,
  measured: Pick<FlueState, 'excessAir' | 'stackTemperature' | 'airTemperature' | 'airPressure'>,
): FlueState {
  const { carbon, hydrogen, oxygen, nitrogen, grossHeat: heat } = fuel;
  return { carbon, hydrogen, oxygenDemand: oxygen, nitrogen, grossHeat: heat, ...measured };
}
