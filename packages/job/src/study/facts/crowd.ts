/**
 * How many records of one kind a job may have. Parts of the plant look at records two by two: a file with thousands
 * of heaters, which no job has, would keep a study busy for hours.
 */
import type { FoldedDocument } from '../../log/index.ts';

/** Several times what the largest public pool has of anything. */
export const MOST_RECORDS = 500;

export interface Crowd {
  readonly collection: string;
  /** Living records. */
  readonly count: number;
}

/** The first collection that holds more than any job has; undefined for a job that can be studied. */
export function crowdOf({ collections }: FoldedDocument): Crowd | undefined {
  for (const [collection, elements] of collections) {
    let count = 0;
    for (const element of elements.values()) if (element.alive) count += 1;
    if (count > MOST_RECORDS) return { collection, count };
  }
  return undefined;
}
