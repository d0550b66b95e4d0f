/** A finding's figures as text: margin, required, found. */
import { quantity } from '@firstfire/engine';
import type { Because, Finding, Outcome } from '@firstfire/reference';
import { fill, subjectText } from '@firstfire/words';
import type { Reader } from './app-text.ts';

export interface Units {
  readonly system: quantity.UnitSystem;
  readonly medium: 'gas' | 'water';
}

export function unitsOf({ line }: Pick<Finding, 'line'>, system: quantity.UnitSystem): Units {
  return { system, medium: line === 'gas' || line === 'air' ? 'gas' : 'water' };
}

const LOW_PRESSURE = 7000;
const DRAUGHT = 250;

/** Lengths a hand can span, below 2 ft, are read in inches or centimetres. */
const SHORT = 2 * 0.3048;

export function unitFor(value: number, kind: quantity.Kind, { system, medium }: Units): string {
  const isPressure = kind === 'pressure' || kind === 'pressure-difference';
  if (medium === 'gas' && isPressure && system !== 'si' && Math.abs(value) < LOW_PRESSURE) return 'in w.c.';
  if (medium === 'gas' && isPressure && system === 'si' && Math.abs(value) < DRAUGHT) return 'Pa';
  if (kind === 'time' && Math.abs(value) < 2 * 3600) return 'min';
  if (kind === 'length' && Math.abs(value) < SHORT)
    return quantity.preferredUnit(kind, system) === 'ft' ? 'in' : 'cm';
  return quantity.preferredUnit(kind, system);
}

export function marginText(
  { margin, verdict }: Pick<Finding, 'margin' | 'verdict'>,
  { speech }: Reader,
): string {
  if (margin === undefined || !Number.isFinite(margin) || verdict === 'does not apply') return '';
  const percent = Math.floor(margin * 100 + 1e-9);
  return `${percent < 0 ? '−' : '+'}${Math.abs(percent)}${speech.figures.marks?.percent ?? ''}%`;
}

interface Told {
  readonly reader: Reader;
  readonly units: Units;
}

export function outcomeText({ outcome, between = [] }: Finding, told: Told): string {
  if (outcome === undefined) return '';
  const { words } = told.reader.speech;
  const because = 'because' in outcome ? outcome.because : undefined;
  const names = between.map((subject) => subjectText(subject, words)).join('; ');
  const reason = because === undefined ? '' : reasonText(because, told);
  const why = reason === '' || names === '' ? reason : `${reason} (${names})`;
  return [outcomeFigures(outcome, told), why].filter((part) => part !== '').join(': ');
}

/** Why it came out so, with the figures that decided. */
function reasonText({ reason, figures }: Because, { reader, units }: Told): string {
  const text = reader.speech.words.issues[`reason.${reason}`] ?? reason;
  if (figures === undefined) return text;
  const { found, limit, kind } = figures;
  const style = { kind, digits: 3, style: 'trade', ...reader.speech.figures } as const;
  const show = (value: number): string => quantity.formatQuantity(value, unitFor(value, kind, units), style);
  return fill(text, { found: show(found), limit: show(limit) });
}

function outcomeFigures(outcome: Outcome, { reader, units }: Told): string {
  const { phrases } = reader.speech.words;
  const style = { digits: 3, style: 'trade', ...reader.speech.figures } as const;
  const bare = (text: string): string => text.replace(/ \(60 °F, 14\.73 psia\)/g, '');
  switch (outcome.sense) {
    case 'at-least':
    case 'at-most': {
      const { required, found, kind } = outcome;
      const unit = unitFor(Math.max(Math.abs(required), Math.abs(found)), kind, units);
      const pair = quantity.formatAgainstLimit([found, required], unit, { kind, ...style });
      return bare(fill(phrases[outcome.sense] ?? '', { required: pair.limit, found: pair.value }));
    }
    case 'within': {
      const { low, high, found, kind } = outcome;
      const text = (value: number): string =>
        bare(quantity.formatQuantity(value, unitFor(value, kind, units), { kind, ...style }));
      return fill(phrases['within'] ?? '', { low: text(low), high: text(high), found: text(found) });
    }
    case 'holds':
      return phrases[outcome.holds ? 'holds' : 'does-not-hold'] ?? '';
    default:
      return '';
  }
}
