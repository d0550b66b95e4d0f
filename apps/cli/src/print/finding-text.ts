/** A finding's figures as text: margin, required, found. */
import { quantity } from '@firstfire/engine';
import type { Because, Finding, Outcome } from '@firstfire/reference';
import { fill, type Speech, subjectText } from '@firstfire/words';

export type System = quantity.UnitSystem;

/** Who reads: in which units, language and marks. */
export interface Reader {
  readonly system: System;
  readonly speech: Speech;
}

/** How a reader wants figures: the system, and what flows, for gas pressures are read in inches of water. */
export interface Units extends Reader {
  readonly medium: 'gas' | 'water';
}

/** The units of a finding: its line says what flows. */
export function unitsOf({ line }: Pick<Finding, 'line'>, reader: Reader): Units {
  return { ...reader, medium: line === 'gas' || line === 'air' ? 'gas' : 'water' };
}

/** Gas pressures are read in inches of water below this and in psi above, whatever the system calls usual. */
const LOW_PRESSURE = 7000;

/** Draughts and the pull of a room are a few pascals. */
const DRAUGHT = 250;

/** Lengths a hand can span, below 2 ft, are read in inches or centimetres. */
const SHORT = 2 * 0.3048;

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
  if (kind === 'length' && Math.abs(value) < SHORT)
    return quantity.preferredUnit(kind, system) === 'ft' ? 'in' : 'cm';
  return quantity.preferredUnit(kind, system);
}

export function show(value: number, kind: quantity.Kind | undefined, units: Units): string {
  if (!Number.isFinite(value)) return String(value);
  if (kind === undefined) return quantity.formatNumber(value, { ...units.speech.figures, digits: 15 });
  const text = quantity.formatQuantity(value, unitFor(value, kind, units), {
    kind,
    digits: 3,
    style: 'trade',
    ...units.speech.figures,
  });
  return withoutUsualBase(text);
}

/** The head of a study says once what a standard cubic foot is. */
function withoutUsualBase(text: string): string {
  return text.replace(/ \(60 °F, 14[.,]73 psia\)/g, '');
}

/** Signed per cent, rounded towards the worse side. */
export function marginText({ margin, verdict }: Finding, speech: Speech): string {
  if (margin === undefined || !Number.isFinite(margin) || verdict === 'does not apply') return '';
  const percent = Math.floor(margin * 100 + 1e-9);
  return `${percent < 0 ? '−' : '+'}${perCent(Math.abs(percent), speech)}`;
}

/** A whole number of per cents. */
function perCent(number: number, { figures }: Speech): string {
  return `${quantity.formatNumber(number, figures)}${figures.marks?.percent || ' '}%`;
}

export function outcomeText(finding: Finding, units: Units): string {
  const { outcome, plusMinus, margin } = finding;
  if (outcome === undefined) return '';
  const figures = outcomeFigures(outcome, units);
  const { phrases } = units.speech.words;
  // Of the margin, in its own per cents: beside a figure it would read as a share of that.
  const percent = perCent(Math.ceil((plusMinus ?? 0) * 100 - 1e-9), units.speech);
  const spread =
    !plusMinus || margin === undefined
      ? figures
      : fill(phrases['cli.margin-spread'] ?? '', { figures, percent });
  const because = becauseText(finding, units);
  if (because === '') return spread;
  return figures === '' ? because : fill(phrases['cli.because'] ?? '', { figures: spread, because });
}

/** Why it came out so, and whom that is about: `no one opening suits all (Heater, Spa speed; …)`. */
function becauseText({ outcome, between = [] }: Finding, units: Units): string {
  const because = outcome !== undefined && 'because' in outcome ? outcome.because : undefined;
  if (because === undefined) return '';
  const { words } = units.speech;
  const names = between.map((subject) => subjectText(subject, words)).join(`${words.sources[';'] ?? ';'} `);
  const reason = words.issues[`reason.${because.reason}`] ?? because.reason;
  return `${fill(reason, figuresOf(because, units))}${names === '' ? '' : ` (${names})`}`;
}

function figuresOf({ figures }: Because, units: Units): Record<string, string> {
  if (figures === undefined) return {};
  const { found, limit, kind } = figures;
  return { found: show(found, kind, units), limit: show(limit, kind, units) };
}

function outcomeFigures(outcome: Outcome, units: Units): string {
  const { phrases } = units.speech.words;
  switch (outcome.sense) {
    case 'at-least':
    case 'at-most': {
      const { required, found, kind } = outcome;
      const unit = unitFor(Math.max(Math.abs(required), Math.abs(found)), kind, units);
      const pair = quantity.formatAgainstLimit([found, required], unit, {
        kind,
        digits: 3,
        style: 'trade',
        ...units.speech.figures,
      });
      const text = fill(phrases[outcome.sense] ?? '', { required: pair.limit, found: pair.value });
      return withoutUsualBase(text);
    }
    case 'within': {
      const { low, high, found, kind } = outcome;
      return fill(phrases['within'] ?? '', {
        low: show(low, kind, units),
        high: show(high, kind, units),
        found: show(found, kind, units),
      });
    }
    case 'holds':
      return phrases[outcome.holds ? 'holds' : 'does-not-hold'] ?? '';
    default:
      return '';
  }
}
