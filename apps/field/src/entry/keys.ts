/** The keys of the pad for a kind of quantity: its units, and fractions where a tape has them. */
import { quantity } from '@firstfire/engine';

export interface Keys {
  readonly units: readonly string[];
  readonly fractions: readonly string[];
}

const FRACTIONS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8', '1/16'];
const MOST_UNITS = 6;

/** Those the trade uses first; anything else can be typed. */
const USUAL: Partial<Record<quantity.Kind, readonly string[]>> = {
  length: ['ft', 'in', 'm', 'cm', 'mm'],
  diameter: ['in', 'mm'],
  pressure: ['in w.c.', 'psi', 'kPa', 'mbar'],
  'pressure-difference': ['in w.c.', 'psi', 'kPa', 'Pa'],
  'heat-rate': ['kBtu/h', 'Btu/h', 'kW'],
  'volume-flow': ['gpm', 'L/min', 'm3/h'],
  temperature: ['degF', 'degC'],
  area: ['ft2', 'in2', 'm2'],
  volume: ['gal', 'ft3', 'm3', 'L'],
  time: ['min', 'h', 's'],
};

export function keysOf(kind: quantity.Kind, preferred: string): Keys {
  const all = quantity.unitsOf(kind).map((one) => one.id);
  const usual = (USUAL[kind] ?? all).filter((one) => all.includes(one));
  const units = [...new Set([preferred, ...usual])].filter((one) => one !== '1').slice(0, MOST_UNITS);
  return { units, fractions: kind === 'length' || kind === 'diameter' ? FRACTIONS : [] };
}
