/** The keys of the pad for a kind of quantity: its units, and fractions where a tape has them. */
import { quantity } from '@firstfire/engine';

export interface Keys {
  readonly units: readonly string[];
  readonly fractions: readonly string[];
}

export const FRACTIONS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8', '1/16'];
const MOST_UNITS = 5;

/** Those the trade uses first; anything else can be typed. */
const USUAL: Partial<Record<quantity.Kind, readonly string[]>> = {
  length: ['ft', 'in', 'yd', 'm', 'cm', 'mm'],
  diameter: ['in', 'mm', 'cm'],
  pressure: ['in w.c.', 'psi', 'kPa', 'mbar', 'Pa'],
  'pressure-difference': ['in w.c.', 'psi', 'kPa', 'mbar', 'Pa'],
  'heat-rate': ['kBtu/h', 'Btu/h', 'kW'],
  'volume-flow': ['gpm', 'L/min', 'm3/h', 'ft3/min'],
  temperature: ['degF', 'degC'],
  'temperature-difference': ['delta degF', 'delta degC'],
  area: ['ft2', 'in2', 'm2', 'cm2'],
  volume: ['gal', 'ft3', 'm3', 'L'],
  time: ['s', 'min', 'h', 'd'],
  mass: ['lb', 'kg'],
  'mass-flow': ['lb/h', 'kg/h'],
  velocity: ['ft/s', 'mph', 'm/s', 'km/h', 'gpm/ft2'],
  frequency: ['rpm'],
  head: ['ft of head', 'm of head'],
  ratio: ['%'],
  'volume-fraction': ['ppm', '%'],
  'standard-gas-flow': ['ft3/h', 'm3/h'],
  'heating-value': ['Btu/ft3', 'MJ/m3'],
  'price-per-energy': ['per therm', 'per kWh', 'per GJ'],
  'wire-size': ['AWG', 'mm2'],
  'flow-coefficient': ['Cv', 'Kv'],
  'mass-concentration': ['mg/L', 'ppm'],
  angle: ['deg'],
};

/** Units that go with the one in use stand first: feet bring inches, metres bring centimetres. */
export function keysOf(kind: quantity.Kind, preferred: string): Keys {
  const usual = USUAL[kind] ?? quantity.unitsOf(kind).map((one) => one.id);
  const known = usual.filter((one) => quantity.parseQuantity(`1 ${one}`, kind).ok);
  const near = isMetric(preferred)
    ? [...known].sort((a, b) => Number(isMetric(b)) - Number(isMetric(a)))
    : known;
  const units = [...new Set(near)].filter((one) => one !== '1').slice(0, MOST_UNITS);
  const bare = preferred.replace(/\(.*\)$/, '');
  if (bare !== '1' && !units.includes(bare)) units.splice(0, units.length === MOST_UNITS ? 1 : 0, bare);
  return { units, fractions: kind === 'length' || kind === 'diameter' ? FRACTIONS : [] };
}

function isMetric(unit: string): boolean {
  return /^(m|cm|mm|kPa|Pa|mbar|degC|L|m2|m3|cm2|kg)$/.test(unit);
}

/** The unit as it stands in the typed text: its label reads back, and is what a person would write. */
export function unitText(unit: string, kind: quantity.Kind): string {
  const found = quantity.unitsOf(kind).find((one) => one.id === unit);
  return found === undefined ? unit : quantity.unitLabel(found, true);
}
