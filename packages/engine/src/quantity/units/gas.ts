/**
 * Units of standard gas volume: a geometric unit and the base at which it is counted, `ft3/h(60F,14.73psia)`.
 *
 * Where no base is written, feet and gallons are taken at the trade's 60 °F and 14.73 psia, metric units at 15 °C and
 * 101.325 kPa, and a normal cubic metre at 0 °C; the reading names the base it took.
 */
import { BTU, CUBIC_FOOT, HOUR, THERM } from '../constants.ts';
import { GAS_BASES, type GasBase, standardCubicMetres } from '../gas-base.ts';
import type { Kind } from '../kinds.ts';
import { type Unit, unit } from '../unit.ts';
import { SPACE_UNITS } from './space.ts';

export type StandardKind = 'standard-gas-volume' | 'standard-gas-flow' | 'heating-value';

const CALORIFIC: readonly Unit[] = [
  unit(['J/m3'], ['heating-value'], 1),
  unit(['kJ/m3'], ['heating-value'], 1e3),
  unit(['MJ/m3'], ['heating-value'], 1e6, { cased: true }),
  unit(['kWh/m3'], ['heating-value'], 1000 * HOUR),
  unit(['kcal/m3'], ['heating-value'], 4186.8),
  unit(['Btu/ft3', 'Btu/cf|Btu/cu ft|Btu/cuft|Btu/cubic foot'], ['heating-value'], BTU / CUBIC_FOOT),
  unit(['therm/ccf', 'therms/ccf|therm/100 ft3'], ['heating-value'], THERM / (100 * CUBIC_FOOT)),
  unit(['MMBtu/Mcf', 'MMBtu/1000 ft3'], ['heating-value'], (1000 * BTU) / CUBIC_FOOT),
];

/** The geometric units a standard kind is built on. */
export const GEOMETRIC: Readonly<Record<StandardKind, readonly Unit[]>> = {
  'standard-gas-volume': SPACE_UNITS.filter((u) => u.kinds.includes('metered-gas-volume')),
  'standard-gas-flow': SPACE_UNITS.filter((u) => u.kinds.includes('metered-gas-flow')),
  'heating-value': CALORIFIC,
};

/** Whether a kind counts gas at a reference state, so that its units need a base. */
export function isStandardKind(kind: Kind): kind is StandardKind {
  return kind in GEOMETRIC;
}

/** The base of a geometric unit when none is written. */
export function usualBase(geometric: Unit): GasBase {
  return /ft3|cf/.test(geometric.id) ? GAS_BASES.trade : GAS_BASES.metric;
}

/** The standard unit made of a geometric unit and a base. */
export function atBase(geometric: Unit, kind: StandardKind, base: GasBase): Unit {
  const scale = standardCubicMetres(base);
  const factor = kind === 'heating-value' ? geometric.factor / scale : geometric.factor * scale;
  return {
    id: `${geometric.id}(${base.id})`,
    kinds: [kind],
    factor,
    offset: 0,
    aliases: [],
    noted: {},
    base,
    ...(geometric.cased ? { cased: true } : {}),
  };
}

const STANDARD_NAMES: readonly (readonly [RegExp, readonly string[]])[] = [
  [/ft3/, ['scf', 'std ft3', 'standard ft3', 'sft3']],
  [/^([Mk]?)cf/, ['$1scf', 'std $1cf', 'standard $1cf']],
  [/cf/, ['scf', 'std cf']],
  [/cu(bic)? ?f(ee|oo)?t/, ['std cu ft', 'standard cubic feet', 'scf']],
  [/m3/, ['Sm3', 'std m3', 'standard m3']],
  [/^L/, ['SL', 'std L', 'standard L']],
];

/** The ways to write a geometric name as a standard one (`scfh`, `std ft3/h`, `Btu/scf`). */
export function standardNames(name: string): readonly string[] {
  const rule = STANDARD_NAMES.find(([pattern]) => pattern.test(name));
  return rule === undefined ? [] : rule[1].map((written) => name.replace(rule[0], written));
}

/** The ways to write a metric name as a normal one (`Nm3/h`). */
export function normalNames(name: string): readonly string[] {
  return name.includes('m3') ? [name.replace('m3', 'Nm3'), name.replace('m3', 'nm3')] : [];
}

const BASES = Object.values(GAS_BASES);

/** Every standard unit with a known base. */
export const STANDARD_UNITS: readonly Unit[] = (Object.keys(GEOMETRIC) as StandardKind[]).flatMap((kind) =>
  GEOMETRIC[kind].flatMap((geometric) => BASES.map((base) => atBase(geometric, kind, base))),
);
