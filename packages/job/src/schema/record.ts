/** A record: the fields of one kind of thing in a job, with the version of their meaning. */
import type { Field } from './field.ts';

export interface RecordSpec<F extends Readonly<Record<string, Field>> = Readonly<Record<string, Field>>> {
  /** Collection in the job document: plural, or the thing itself where a job has one. */
  readonly collection: string;
  /** A job has exactly one, under the id `-`. */
  readonly single: boolean;
  /** Version of the fields; raised by one with a step in `migrations` when a field changes its meaning. */
  readonly version: number;
  readonly fields: F;
}

export function record<const F extends Readonly<Record<string, Field>>>(spec: RecordSpec<F>): RecordSpec<F> {
  return spec;
}

/** The id of a record that a job has once. */
export const ONLY = '-';
