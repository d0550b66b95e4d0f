/**
 * One entry of a record that only grows: start-up readings, a service visit, a cleared stop.
 *
 * Each entry names the fingerprint of the one before, the program version and the code edition it was made under, so
 * that an entry altered or left out afterwards shows. `previous` holds two fingerprints only where two devices had
 * each gone on without seeing the other: the entry that names both joins the branches again.
 */
import { isJsonObject, type Json } from './json.ts';

export interface RecordValue {
  /** Fingerprints of the entries before; empty for the first. */
  readonly previous: readonly string[];
  /** Fingerprint of this entry: see `chain.ts`. */
  readonly fingerprint: string;
  /** Version of the program that wrote it. */
  readonly program: string;
  /** Code edition in force for it. */
  readonly edition: string;
  readonly entry: Json;
}

const MEMBERS = ['previous', 'fingerprint', 'program', 'edition', 'entry'];

export function isRecordValue(value: unknown): boolean {
  if (!isJsonObject(value) || Object.keys(value).length !== MEMBERS.length) return false;
  if (!MEMBERS.every((name) => value[name] !== undefined)) return false;
  const { previous, fingerprint, program, edition } = value;
  const texts = [fingerprint, program, edition];
  if (!texts.every((text) => typeof text === 'string' && text.length > 0)) return false;
  return Array.isArray(previous) && previous.every((text) => typeof text === 'string' && text.length > 0);
}
