/** A finding's figures as text: margin, required, found. */
import { quantity } from '@firstfire/engine';
import type { Because, Finding, Outcome } from '@firstfire/reference';
import { fill, subjectText, wordsOf } from '@firstfire/words';

export type System = quantity.UnitSystem;

/** How a reader wants figures: the system, and what flows, for gas pressures are read in inches of water. */
export interface Units {
  readonly system: System;
  readonly medium: 'gas' | 'water';
}

/** The units of a finding: its line says what flows. */
export function unitsOf({ line }: Pick<Finding, 'line'>, system: System): Units {
  return { system, medium: line === 'gas' || line === 'air' ? 'gas' : 'water' };
}

const words = wordsOf('en');
const { phrases } = words;

/** Gas pressures are read in inches of water below this and in psi above, whatever the system calls usual. */
const LOW_PRESSURE = 7000;

/** Draughts and the pull of a room are a few pascals. */
const DRAUGHT = 250;

/** The unit for a value: low gas pressures in inches of water, small times in minutes. */
export function unitFor(value: number, kind: quantity.Kind, { system, medium }: Units): string {
  const isPressure = kind === 'pressure' || kind === 'pressure-difference';
  if (medium === 'gas' && isPressure && system !== 'si' && Math.abs(value) < LOW_PRESSURE) return 'in w.c.';
  if (medium === 'gas' && isPressure && system === 'si' && Math.abs(value) < DRAUGHT) return 'Pa';
  if (kind === 'time' && Math.abs(value) < 2 * 3600) return 'min';
  return quantity.preferredUnit(kind, system);
}

export function show(value: number, kind: quantity.Kind | undefined, units: Units): string {
  if (kind === undefined || !Number.isFinite(value)) return String(value);
  const text = quantity.formatQuantity(value, unitFor(value, kind, units), {
    kind,
    digits: 3,
    style: 'trade',
  });
  return withoutUsualBase(text);
}

/** The head of a study says once what a standard cubic foot is. */
function withoutUsualBase(text: string): string {
  return text.replace(/ \(60 °F, 14\.73 psia\)/g, '');
}

/** Signed per cent, rounded towards the worse side. */
export function marginText({ margin, verdict }: Finding): string {
  if (margin === undefined || !Number.isFinite(margin) || verdict === 'does not apply') return '';
  const percent = Math.floor(margin * 100 + 1e-9);
  return `${percent < 0 ? '−' : '+'}${Math.abs(percent)} %`;
}

export function outcomeText(finding: Finding, units: Units): string {
  const { outcome, plusMinus, margin } = finding;
  if (outcome === undefined) return '';
  const figures = outcomeFigures(outcome, units);
  // Of the margin, in its own per cents: beside a figure it would read as a share of that.
  const spread =
    !plusMinus || margin === undefined ? '' : `, margin ± ${Math.ceil(plusMinus * 100 - 1e-9)} %`;
  const because = becauseText(finding, units);
  if (because === '') return `${figures}${spread}`;
  return figures === '' ? because : `${figures}${spread}: ${because}`;
}

/** Why it came out so, and whom that is about: `no one opening suits all (Heater, Spa speed; …)`. */
function becauseText({ outcome, between = [] }: Finding, units: Units): string {
  const because = outcome !== undefined && 'because' in outcome ? outcome.because : undefined;
  if (because === undefined) return '';
  const names = between.map((subject) => subjectText(subject, words)).join('; ');
  const reason = words.issues[`reason.${because.reason}`] ?? because.reason;
  return `${fill(reason, figuresOf(because, units))}${names === '' ? '' : ` (${names})`}`;
}

function figuresOf({ figures }: Because, units: Units): Record<string, string> {
  if (figures === undefined) return {};
  const { found, limit, kind } = figures;
  return { found: show(found, kind, units), limit: show(limit, kind, units) };
}

function outcomeFigures(outcome: Outcome, units: Units): string {
  switch (outcome.sense) {
    case 'at-least':
    case 'at-most': {
      const { required, found, kind } = outcome;
      const unit = unitFor(Math.max(Math.abs(required), Math.abs(found)), kind, units);
      const pair = quantity.formatAgainstLimit([found, required], unit, { kind, digits: 3, style: 'trade' });
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
