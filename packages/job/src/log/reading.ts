/** A reading: a fact that knows where it came from. In a log it is one JSON value of a field. */
import { isJsonObject } from './json.ts';

export const HOW_KNOWN = ['measured', 'nameplate', 'drawing', 'told', 'assumed'] as const;
export type HowKnown = (typeof HOW_KNOWN)[number];

export type Reading = {
  readonly value: number | string;
  /** As the trade writes it; absent for a bare number or a word. */
  readonly unit?: string;
  readonly how: HowKnown;
  /** Who took it. */
  readonly by?: string;
  /** When, ISO 8601. */
  readonly at?: string;
  /** Id of the instrument it was read from. */
  readonly instrument?: string;
  /** ±, in the reading's own unit: half the width that holds the true value 95 times in 100. */
  readonly pm?: number;
  /** The very characters that were typed. */
  readonly typed?: string;
  readonly note?: string;
};

/** Whether a field's value has the form of a reading; its quantity is judged by the study. */
export function isReading(value: unknown): value is Reading {
  if (!isJsonObject(value)) return false;
  const { value: read, how } = value;
  const known = typeof how === 'string' && (HOW_KNOWN as readonly string[]).includes(how);
  return known && (typeof read === 'number' || typeof read === 'string');
}
