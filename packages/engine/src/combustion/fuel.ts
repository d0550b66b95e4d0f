/**
 * A fuel as the balance of its flame sees it: by one mole of gas.
 *
 * Natural gas is reckoned as methane: what else is in it moves the carbon dioxide by 1 % and the dew point by 0.3 K.
 * Commercial propane is reckoned as propane.
 */
import { type Composition, GAS_COMPONENTS, type GasName } from '../properties/index.ts';
import { fail, ok, type Result } from '../trace/index.ts';

/** Per mole of fuel: atoms that burn, gas that does not, heat. */
export interface CombustionFuel {
  /** Moles of carbon dioxide it gives, its own included. */
  readonly carbon: number;
  /** Moles of hydrogen atoms in what burns. */
  readonly hydrogen: number;
  /** Moles of oxygen that carbon and hydrogen take. */
  readonly oxygen: number;
  readonly nitrogen: number;
  /** Gross heat of combustion, J a mole. */
  readonly grossHeat: number;
}

/** Share of oxygen in dry air; the rest counts as nitrogen. */
export const OXYGEN_IN_AIR = 0.2095;

/** The fuel of a composition, mole fractions; `ill-formed` where nothing burns. Worked example: methane takes 2 O2. */
export function combustionFuel(composition: Composition): Result<CombustionFuel> {
  const fuel = { carbon: 0, hydrogen: 0, oxygen: 0, nitrogen: 0, grossHeat: 0 };
  for (const [name, share] of Object.entries(composition) as [GasName, number][]) {
    if (!(share >= 0 && share <= 1))
      return fail({ code: 'ill-formed', where: 'composition', found: share, reason: 'fraction-outside-0-1' });
    const gas = GAS_COMPONENTS[name];
    fuel.carbon += share * gas.carbon;
    fuel.hydrogen += share * gas.hydrogen;
    fuel.grossHeat += share * gas.grossHeat;
    if (gas.grossHeat > 0) fuel.oxygen += share * (gas.carbon + gas.hydrogen / 4);
    if (name === 'nitrogen') fuel.nitrogen += share;
  }
  if (!(fuel.grossHeat > 0))
    return fail({ code: 'ill-formed', where: 'composition', reason: 'nothing-burns' });
  return ok(fuel);
}

function pure(name: GasName): CombustionFuel {
  const { carbon, hydrogen, grossHeat } = GAS_COMPONENTS[name];
  return { carbon, hydrogen, oxygen: carbon + hydrogen / 4, nitrogen: 0, grossHeat };
}

export type CombustionFuelName = 'natural' | 'propane';

/** The fuels of the trade. */
export const COMBUSTION_FUELS: Readonly<Record<CombustionFuelName, CombustionFuel>> = {
  natural: pure('methane'),
  propane: pure('propane'),
};

/** Gases of the balance that the formulas take, a mole of fuel. */
export interface FlameBalance {
  /** A0: dry air it takes, moles. */
  readonly airDemand: number;
  /** D0: dry flue gas without excess air, moles. */
  readonly dryFlue: number;
  /** C: carbon dioxide, moles. */
  readonly carbon: number;
  /** W: water vapour, moles. */
  readonly vapour: number;
}

/** What a mole of fuel takes and gives. Worked example: methane → 9.547 air, 8.547 dry flue, 1 CO2, 2 H2O. */
export function flameBalance(fuel: CombustionFuel): FlameBalance {
  const airDemand = fuel.oxygen / OXYGEN_IN_AIR;
  return {
    airDemand,
    dryFlue: fuel.carbon + airDemand - fuel.oxygen + fuel.nitrogen,
    carbon: fuel.carbon,
    vapour: fuel.hydrogen / 2,
  };
}
