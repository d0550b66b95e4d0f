/**
 * Quantities at the edge of the engine: the unit table, the reader of what people write, and the printer.
 *
 * Text goes through `parseQuantity(text, kind)`, code through `si(value, unit)`; the unit system, the decimal sign and
 * the gas base are arguments, never settings. A unit of standard gas carries its base: `ft3/h(60F,14.73psia)`.
 */
export { GAUGES, gaugeArea, gaugeOf, gaugeText } from './awg.ts';
export * from './constants.ts';
export { fromSi, si } from './convert.ts';
export { findUnit, unitsOf } from './find-unit.ts';
export { type FormatOptions, formatQuantity } from './format.ts';
export { type AgainstLimit, formatAgainstLimit } from './format-against-limit.ts';
export { formatNumber, type NumberMarks, type NumberStyle } from './format-number.ts';
export { GAS_BASES, type GasBase, standardCubicMetres } from './gas-base.ts';
export * from './kinds.ts';
export type { DecimalSign } from './parse-digits.ts';
export { PARSE_REASONS, type ParseIssue, type ParseReason } from './parse-issue.ts';
export {
  LONGEST_TEXT,
  type Parsed,
  type ParseOptions,
  parseAny,
  parseQuantity,
  type Quantity,
} from './parse-quantity.ts';
export { preferredUnit, type UnitSystem } from './preferred.ts';
export { PARSE_NOTES, type ParseNote, type Unit } from './unit.ts';
export type { Found } from './unit-index.ts';
export { type LabelWords, labelInWords, unitLabel } from './unit-label.ts';
export { UNITS } from './units/index.ts';
export { valueInSi } from './value-in-si.ts';
