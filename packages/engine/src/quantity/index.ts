export { GAUGES, gaugeArea, gaugeOf, gaugeText } from './awg.ts';
export * from './constants.ts';
export { fromSi, si } from './convert.ts';
export { findUnit, unitsOf } from './find-unit.ts';
export { type FormatOptions, formatQuantity } from './format.ts';
export { type AgainstLimit, formatAgainstLimit } from './format-against-limit.ts';
export { formatNumber, type NumberStyle } from './format-number.ts';
export { GAS_BASES, type GasBase, standardCubicMetres } from './gas-base.ts';
export * from './kinds.ts';
export type { DecimalSign } from './parse-digits.ts';
export type { ParseIssue, ParseReason } from './parse-issue.ts';
export {
  LONGEST_TEXT,
  type Parsed,
  type ParseOptions,
  parseAny,
  parseQuantity,
  type Quantity,
} from './parse-quantity.ts';
export { preferredUnit, type UnitSystem } from './preferred.ts';
export type { ParseNote, Unit } from './unit.ts';
export type { Found } from './unit-index.ts';
export { unitLabel } from './unit-label.ts';
export { UNITS } from './units/index.ts';
export { valueInSi } from './value-in-si.ts';
