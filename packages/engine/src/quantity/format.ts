/** Prints an SI value in a unit, plain for machines or as the trade writes it. */
import { GAUGES, gaugeText } from './awg.ts';
import { inUnit, toSi, unitCalled } from './convert.ts';
import { BEYOND_TAPES, formatFeetAndInches, formatInches, type LengthNames } from './format-length.ts';
import { formatNumber, type NumberStyle } from './format-number.ts';
import type { Kind } from './kinds.ts';
import type { Unit } from './unit.ts';
import { type LabelWords, labelInWords, unitLabel } from './unit-label.ts';

export interface FormatOptions extends NumberStyle {
  /** Plain: `1234.5 degF`. Trade: `1,234.5 °F`, `3/4 in`, `20 ft 6 in`. */
  readonly style?: 'plain' | 'trade';
  /** The kind of the value, where the unit name alone serves several (`ft3/h`, `degF` of a difference). */
  readonly kind?: Kind;
  /** Trade lengths: the finest part of an inch; without it inches that are no plain fraction keep their decimals. */
  readonly inchParts?: number;
  /** Trade: a standard volume at its usual base is labelled `std ft³/h`, without the base itself. */
  readonly shortBase?: boolean;
  /** Trade: words of labels in the reader's language. */
  readonly labels?: LabelWords;
  /** The number alone. */
  readonly bare?: boolean;
}

/**
 * Text of `siValue` in `unit`.
 *
 * Four significant digits unless digits or decimals are asked for; digits before the decimal sign are never cut.
 * Errors: throws on an unknown unit and on a value that is not finite; both are bugs of the caller.
 * Worked example: formatQuantity(6.2484, 'ft', { style: 'trade' }) = `20 ft 6 in`.
 */
export function formatQuantity(siValue: number, unit: string, options: FormatOptions = {}): string {
  if (!Number.isFinite(siValue)) throw new Error(`no text for ${siValue} ${unit}`);
  const which = unitCalled(unit, options.kind);
  if (which.gauge) return formatGauge(siValue, which, options);
  const value = inUnit(siValue, which);
  if (options.style !== 'trade') return labelled(formatNumber(value, options), which.id, options);
  if (inFeetAndInches(which, options) && Math.abs(value) * 12 <= BEYOND_TAPES)
    return formatFeetAndInches(value, lengthNames(options), options.inchParts);
  return labelled(tradeNumber(value, which, options), unitLabel(which, options.shortBase), options);
}

function lengthNames({ labels }: FormatOptions): LengthNames {
  return [labels?.['ft'] ?? 'ft', labels?.['in'] ?? 'in'];
}

/** Lengths in feet are read off a tape, unless digits are asked for. */
function inFeetAndInches(unit: Unit, options: FormatOptions): boolean {
  const digits = options.digits !== undefined || options.decimals !== undefined || options.bare;
  return unit.id === 'ft' && !digits && (options.kind ?? 'length') === 'length';
}

function tradeNumber(value: number, unit: Unit, options: FormatOptions): string {
  const asked = options.digits !== undefined || options.decimals !== undefined;
  if (unit.id === 'in' && !asked) {
    const inches = formatInches(value, options.inchParts);
    if (inches !== undefined) return inches;
  }
  return formatNumber(value, { group: true, ...options });
}

function labelled(number: string, label: string, options: FormatOptions): string {
  if (options.bare || label === '1') return number;
  const { marks, style } = options;
  if (style !== 'trade') return `${number} ${label}`;
  return label === '%' ? `${number}${marks?.percent ?? ''}%` : `${number} ${tradeLabel(label, options)}`;
}

/** A gas base in a label has decimals too: `(60 °F, 14,73 psia)`. An exponent is no figure: `Pa^0.5` stays. */
function tradeLabel(label: string, { labels, marks }: FormatOptions): string {
  const words = labels === undefined ? label : labelInWords(label, labels);
  return marks === undefined ? words : words.replace(/(?<!\^)(\d)\.(?=\d)/g, `$1${marks.decimal}`);
}

/** A wire gauge where the area is one; square millimetres where it is none. */
function formatGauge(siValue: number, gauge: Unit, options: FormatOptions): string {
  const n = Math.round(inUnit(siValue, gauge));
  const near = Math.abs(toSi(n, gauge) / siValue - 1) < 0.005;
  if (!near || n < GAUGES.thickest || n > GAUGES.thinnest) return formatQuantity(siValue, 'mm2', options);
  return options.bare ? gaugeText(n) : `${gaugeText(n)} AWG`;
}
