/** Readings made and shown. */
import { quantity } from '@firstfire/engine';
import type { HowKnown, Json, Reading } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { inReadersWords } from './unit-words.ts';

export interface Made {
  readonly value: Reading['value'];
  readonly how: HowKnown;
  readonly unit?: string;
  readonly pm?: number;
  readonly instrument?: string;
  readonly typed?: string;
  readonly note?: string;
}

/** A reading as the log holds it, taken now. */
export function readingOf(made: Made): Json {
  const reading = { ...made, at: new Date().toISOString() };
  return JSON.parse(JSON.stringify(reading)) as Json;
}

/** As it was given: what was typed, else value and unit; a converted value is never shown in its place. */
export function readingText({ value, unit, typed }: Reading, text: AppText): string {
  const { labels = {}, marks } = text.reader.speech.figures;
  if (typed !== undefined) return inReadersWords(typed, labels);
  if (typeof value === 'number') {
    const number = figureText(value, marks);
    return unit === undefined || unit === '1' ? number : `${number} ${unitName(unit, labels)}`;
  }
  if (typeof value === 'string') return text.choice(value);
  return Array.isArray(value) ? text.phrase('points', { count: value.length }) : countsText(value, text);
}

function countsText(counts: object, text: AppText): string {
  const some = Object.entries(counts).filter(([, count]) => count > 0);
  return some.map(([name, count]) => `${count} × ${text.choice(name)}`).join(', ') || '0';
}

/** All the digits a person would have typed, and no zeros behind them. */
export function figureText(value: number, marks?: quantity.NumberMarks): string {
  const plain = String(Number(value.toPrecision(6)));
  if (plain.includes('e')) return plain;
  const decimals = plain.split('.')[1]?.length ?? 0;
  return quantity.formatNumber(value, { decimals, group: true, ...(marks === undefined ? {} : { marks }) });
}

const LABELS: ReadonlyMap<string, string> = new Map(
  [...quantity.UNITS.values()].map((unit) => [unit.id, quantity.unitLabel(unit, true)]),
);

function unitName(unit: string, labels: Readonly<Record<string, string>>): string {
  return quantity.labelInWords(LABELS.get(unit) ?? unit, labels);
}
