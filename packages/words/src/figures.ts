/** Values as text for one reader: the unit of the trade for what flows, the digits a reading bears, the marks of a place. */
import { quantity } from '@firstfire/engine';
import type { Speech } from './speech.ts';

/** Who reads: in which units, language and marks. */
export interface Reader {
  readonly system: quantity.UnitSystem;
  readonly speech: Speech;
}

/** How a reader wants figures: the system, and what flows, for gas pressures are read in inches of water. */
export interface Units extends Reader {
  readonly medium: 'gas' | 'water';
}

/** Gas pressures are read in inches of water below this and in psi above, whatever the system calls usual. */
const LOW_PRESSURE = 7000;

/** Draughts and the pull of a room are a few pascals. */
const DRAUGHT = 250;

/** Lengths a hand can span, below 2 ft, are read in inches or centimetres. */
const SHORT = 2 * 0.3048;

/** Shares of a gas are read in parts of a million below one in a hundred, such as carbon monoxide, and in % above. */
const TRACE = 0.01;

/** The unit for a value: low gas pressures in inches of water, small times in minutes. */
export function unitFor(
  value: number,
  kind: quantity.Kind,
  { system, medium }: Omit<Units, 'speech'>,
): string {
  const isPressure = kind === 'pressure' || kind === 'pressure-difference';
  if (medium === 'gas' && isPressure && system !== 'si' && Math.abs(value) < LOW_PRESSURE) return 'in w.c.';
  if (medium === 'gas' && isPressure && system === 'si' && Math.abs(value) < DRAUGHT) return 'Pa';
  if (kind === 'time' && Math.abs(value) < 2 * 3600) return 'min';
  if (kind === 'volume-fraction' && Math.abs(value) >= TRACE) return '%';
  if (kind === 'length' && Math.abs(value) < SHORT)
    return quantity.preferredUnit(kind, system) === 'ft' ? 'in' : 'cm';
  return quantity.preferredUnit(kind, system);
}

/** A value in the unit for it; a bare number where it has no kind. */
export function figureText(value: number, kind: quantity.Kind | undefined, units: Units): string {
  if (!Number.isFinite(value)) return String(value);
  if (kind === undefined) return quantity.formatNumber(value, { ...units.speech.figures, digits: 15 });
  return figureIn(value, { unit: unitFor(value, kind, units), kind }, units.speech);
}

export interface FigureIn {
  readonly unit: string;
  readonly kind: quantity.Kind;
  readonly digits?: number;
}

/** A value in a unit that was chosen. */
export function figureIn(value: number, { unit, kind, digits = 3 }: FigureIn, speech: Speech): string {
  return asPrint(quantity.formatQuantity(value, unit, { kind, digits, style: 'trade', ...speech.figures }));
}

/** A reading in a working is shown as it was read; what is computed from it bears a digit more. */
export function givenText(value: number, kind: quantity.Kind | undefined, units: Units): string {
  return kind === undefined || kind === 'ratio' || kind === 'absolute-pressure'
    ? workedText(value, kind, units)
    : figureText(value, kind, units);
}

/** In a working a pure number stays one, and absolute pressures show the small differences that drive the flow. */
export function workedText(value: number, kind: quantity.Kind | undefined, units: Units): string {
  if (!Number.isFinite(value)) return String(value);
  if (kind === undefined || kind === 'ratio')
    return quantity.formatNumber(value, { digits: 4, group: true, ...units.speech.figures });
  const digits = kind === 'absolute-pressure' ? 6 : 4;
  return figureIn(value, { unit: unitFor(value, kind, units), kind, digits }, units.speech);
}

/** As print has it: a true minus, a degree sign, and no base behind each cubic foot, for the trade has but one. */
export function asPrint(text: string): string {
  return text
    .replace(/ \(60 °F, 14[.,]73 psia\)/g, '')
    .replace(/(?<![\w.,])-(?=\d)/g, '−')
    .replace(/ deg$/, '°');
}

/** A whole number of per cents, with the mark of the place: `22%`, `22 %`. */
export function perCent(number: number, { figures }: Speech): string {
  return `${quantity.formatNumber(number, figures)}${figures.marks?.percent ?? ''}%`;
}
