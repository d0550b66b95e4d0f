/** The record that belongs to another: a test to a heater, a sample to a basin. */
import type { JobView } from '../facts/view.ts';

export interface Belonging {
  readonly collection: string;
  /** Field that names the owner. */
  readonly field: string;
  readonly id: string;
}

/**
 * Id of the last record that names the owner, the newest as tests are added; else of the last that names nobody; else
 * of one that has yet to be taken.
 */
export function recordOf(view: JobView, { collection, field, id }: Belonging): string {
  const records = view.all(collection);
  const named = records.findLast((one) => one.reading(field)?.value === id);
  const unnamed = records.findLast((one) => one.reading(field) === undefined);
  return (named ?? unnamed)?.id ?? `of-${id}`;
}
