/**
 * The gross heat in the unit fuel is sold by.
 *
 * How sources disagree: a gallon of propane is 91,000 Btu in the emission tables (followed, so that cost and carbon
 * rest on one figure), 91,500 in the trade; 0.5 % apart. Gas sold by volume takes the heating value on the bill.
 *
 * Source: definitions; propane: 40 CFR 98, Table C-1 (0.091 million Btu a US gallon).
 * Range: heating values 3 to 150 MJ/m3.
 * Errors: a volume without its heating value is an issue.
 *
 * Worked example: 1.20 a therm → 1.137e-8 a joule; 2.80 a gallon of propane → 2.916e-8 a joule, 3.08 a therm.
 */
import { BTU, CUBIC_FOOT, HOUR, THERM, US_GALLON } from '../../quantity/index.ts';
import { fail, ok, type Result, type Variable, variableIssue } from '../../trace/index.ts';

export const SALES_UNITS = [
  'therm',
  'kilowatt-hour',
  'gigajoule',
  'gallon-of-propane',
  'litre-of-propane',
  'hundred-cubic-feet',
  'cubic-metre',
] as const;
export type SalesUnit = (typeof SALES_UNITS)[number];

const PROPANE_GALLON = 91_000 * BTU;

const BY_ENERGY: Partial<Record<SalesUnit, number>> = {
  therm: THERM,
  'kilowatt-hour': 1000 * HOUR,
  gigajoule: 1e9,
  'gallon-of-propane': PROPANE_GALLON,
  'litre-of-propane': PROPANE_GALLON / (1000 * US_GALLON),
};

const BY_VOLUME: Partial<Record<SalesUnit, number>> = {
  'hundred-cubic-feet': 100 * CUBIC_FOOT,
  'cubic-metre': 1,
};

const HEATING_VALUE: Variable = { symbol: 'Hs', kind: 'heating-value', min: 3e6, max: 150e6 };

/** Heat (J) in one unit of sale; `heatingValue` (J/m3 as billed) for the units of volume. */
export function heatOfSalesUnit(unit: SalesUnit, heatingValue?: number): Result<number> {
  const energy = BY_ENERGY[unit];
  if (energy !== undefined) return ok(energy);
  const issue = variableIssue('heatingValue', heatingValue ?? Number.NaN, HEATING_VALUE);
  return issue ? fail(issue) : ok((BY_VOLUME[unit] ?? Number.NaN) * (heatingValue ?? Number.NaN));
}
