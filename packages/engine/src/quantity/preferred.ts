/**
 * The unit in which a kind is shown in a system of units. The system is always an argument, never a setting.
 *
 * `mixed` is the Canadian habit: metric temperatures, lengths of pool and weather, but Btu/h, inches of water column,
 * psi and US gpm for the equipment. Common practice, no source.
 */
import { GAS_BASES } from './gas-base.ts';
import type { Kind } from './kinds.ts';

export type UnitSystem = 'us' | 'si' | 'mixed';

type Row = readonly [us: string, si: string, mixed: string];

const TRADE = GAS_BASES.trade.id;
const METRIC = GAS_BASES.metric.id;

const PREFERRED: Readonly<Record<Kind, Row>> = {
  length: ['ft', 'm', 'ft'],
  diameter: ['in', 'mm', 'in'],
  area: ['ft2', 'm2', 'm2'],
  volume: ['gal', 'm3', 'L'],
  mass: ['lb', 'kg', 'kg'],
  time: ['h', 'h', 'h'],
  angle: ['deg', 'deg', 'deg'],
  velocity: ['ft/s', 'm/s', 'ft/s'],
  acceleration: ['ft/s2', 'm/s2', 'm/s2'],
  frequency: ['rpm', 'rpm', 'rpm'],
  pressure: ['psi', 'kPa', 'psi'],
  'absolute-pressure': ['psia', 'kPa', 'kPa'],
  'pressure-difference': ['psi', 'kPa', 'psi'],
  head: ['ft of head', 'm of head', 'ft of head'],
  temperature: ['degF', 'degC', 'degC'],
  'temperature-difference': ['delta degF', 'delta degC', 'delta degC'],
  energy: ['therm', 'kWh', 'GJ'],
  'heat-rate': ['kBtu/h', 'kW', 'kBtu/h'],
  power: ['W', 'W', 'W'],
  'heat-flux': ['Btu/(h ft2)', 'W/m2', 'W/m2'],
  'volume-flow': ['gpm', 'L/min', 'gpm'],
  'mass-flow': ['lb/h', 'kg/h', 'kg/h'],
  'mass-flux': ['lb/(ft2 h)', 'kg/(m2 h)', 'kg/(m2 h)'],
  'standard-gas-volume': [`ft3(${TRADE})`, `m3(${METRIC})`, `ft3(${TRADE})`],
  'standard-gas-flow': [`ft3/h(${TRADE})`, `m3/h(${METRIC})`, `ft3/h(${TRADE})`],
  'metered-gas-volume': ['ft3', 'm3', 'ft3'],
  'metered-gas-flow': ['ft3/h', 'm3/h', 'ft3/h'],
  'heating-value': [`Btu/ft3(${TRADE})`, `MJ/m3(${METRIC})`, `MJ/m3(${METRIC})`],
  'heating-value-by-mass': ['Btu/lb', 'MJ/kg', 'MJ/kg'],
  density: ['lb/ft3', 'kg/m3', 'kg/m3'],
  'dynamic-viscosity': ['cP', 'mPa s', 'mPa s'],
  'kinematic-viscosity': ['cSt', 'mm2/s', 'mm2/s'],
  'specific-heat': ['Btu/(lb degF)', 'kJ/(kg K)', 'kJ/(kg K)'],
  'latent-heat': ['Btu/lb', 'kJ/kg', 'kJ/kg'],
  conductance: ['Btu/(h degF)', 'W/K', 'W/K'],
  transmittance: ['Btu/(h ft2 degF)', 'W/(m2 K)', 'W/(m2 K)'],
  'thermal-conductivity': ['Btu/(h ft degF)', 'W/(m K)', 'W/(m K)'],
  ratio: ['%', '%', '%'],
  ph: ['1', '1', '1'],
  'volume-fraction': ['ppm', 'ppm', 'ppm'],
  'flow-coefficient': ['Cv', 'Kv', 'Cv'],
  voltage: ['V', 'V', 'V'],
  current: ['A', 'A', 'A'],
  resistance: ['ohm', 'ohm', 'ohm'],
  'wire-size': ['AWG', 'mm2', 'AWG'],
  force: ['lbf', 'N', 'lbf'],
  'price-per-energy': ['per therm', 'per kWh', 'per GJ'],
  'emission-factor': ['lb/MMBtu', 'kg/kWh', 'kg/GJ'],
  'mass-concentration': ['mg/L', 'mg/L', 'mg/L'],
  'sound-level': ['dB', 'dB', 'dB'],
};

const COLUMN = { us: 0, si: 1, mixed: 2 } as const;

/** Pressures of fuel gas at the appliance are spoken of in inches of water column, not in psi. */
const GAS_PRESSURE: Row = ['in w.c.', 'kPa', 'in w.c.'];

/**
 * Name of the unit, for `formatQuantity(x, unit, { kind })`.
 *
 * Worked example: preferredUnit('pressure', 'us', 'gas') = `in w.c.`; preferredUnit('pressure', 'us') = `psi`.
 */
export function preferredUnit(kind: Kind, system: UnitSystem, medium?: 'gas' | 'water'): string {
  const gauge = kind === 'pressure' || kind === 'pressure-difference';
  return (medium === 'gas' && gauge ? GAS_PRESSURE : PREFERRED[kind])[COLUMN[system]];
}
