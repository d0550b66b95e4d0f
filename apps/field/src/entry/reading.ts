/** Readings made and shown. */
import { quantity } from '@firstfire/engine';
import type { HowKnown, Json, Reading } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';

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
  if (typed !== undefined) return typed;
  if (typeof value === 'number')
    return `${quantity.formatNumber(value, { digits: 6 })} ${unit === '1' ? '' : (unit ?? '')}`.trim();
  if (typeof value === 'string') return text.choice(value);
  return Array.isArray(value)
    ? text.phrase('points', { count: value.length })
    : Object.entries(value)
        .map(([name, count]) => `${count} × ${text.choice(name)}`)
        .join(', ');
}
