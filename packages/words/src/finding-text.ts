/** A finding as text: its margin, what is asked against what was found, and why. */
import { quantity } from '@firstfire/engine';
import type { Because, Finding, Outcome } from '@firstfire/reference';
import { asPrint, figureText, perCent, type Reader, type Units, unitFor } from './figures.ts';
import { fill } from './fill.ts';
import type { Speech } from './speech.ts';
import { subjectText } from './subject-text.ts';

/** The units of a finding: its line says what flows. */
export function unitsOf({ line }: Pick<Finding, 'line'>, reader: Reader): Units {
  return { ...reader, medium: line === 'gas' || line === 'air' ? 'gas' : 'water' };
}

/** Signed per cent, rounded towards the worse side; empty where there is no margin. */
export function marginText({ margin, verdict }: Pick<Finding, 'margin' | 'verdict'>, speech: Speech): string {
  if (margin === undefined || !Number.isFinite(margin) || verdict === 'does not apply') return '';
  const percent = Math.floor(margin * 100 + 1e-9);
  return `${percent < 0 ? '−' : '+'}${perCent(Math.abs(percent), speech)}`;
}

/** Required and found, the ± of the margin where it was looked for, and the reason; of yes or no the reason alone. */
export function outcomeText(finding: Finding, units: Units): string {
  const { outcome } = finding;
  if (outcome === undefined) return '';
  const figures = outcomeFigures(outcome, units);
  const spread = withSpread(figures, finding, units.speech);
  const because = becauseText(finding, units);
  if (because === '') return spread;
  const { phrases } = units.speech.words;
  const says = outcome.sense === 'holds' || figures === '';
  return says ? because : fill(phrases['outcome-because'] ?? '', { figures: spread, because });
}

/** Of the margin, in its own per cents: beside a figure it would read as a share of that. */
function withSpread(figures: string, { plusMinus, margin }: Finding, speech: Speech): string {
  if (!plusMinus || margin === undefined) return figures;
  const percent = perCent(Math.ceil(plusMinus * 100 - 1e-9), speech);
  return fill(speech.words.phrases['margin-spread'] ?? '', { figures, percent });
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
  return { found: figureText(found, kind, units), limit: figureText(limit, kind, units) };
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
      return fill(phrases[outcome.sense] ?? '', {
        required: withoutBase(asPrint(pair.limit)),
        found: asPrint(pair.value),
      });
    }
    case 'within': {
      const { low, high, found, kind } = outcome;
      return fill(phrases['within'] ?? '', {
        low: withoutBase(figureText(low, kind, units)),
        high: withoutBase(figureText(high, kind, units)),
        found: figureText(found, kind, units),
      });
    }
    case 'holds':
      return phrases[outcome.holds ? 'holds' : 'does-not-hold'] ?? '';
    default:
      return '';
  }
}

/** The base of a standard volume stands behind what was found, once in a sentence. */
function withoutBase(text: string): string {
  return text.replace(/ \(\d+ °[CF], [^)]*\)/, '');
}
