/** A job as the study reads it: records by collection, readings by field. */
import type { Reading } from '../../schema/index.ts';
import { type Key, keyOfParts } from './key.ts';

/** A record as it stands: an edit makes another one, so that what follows from this one can be kept with it. */
export interface RecordView {
  readonly id: string;
  /** The reading in use; concurrent second values are another matter. */
  reading(field: string): Reading | undefined;
}

export interface JobView {
  /** The living records of a collection, in their order. */
  all(collection: string): readonly RecordView[];
  /** One record; without a reading when there is no such record. */
  record(collection: string, id: string): RecordView;
}

/** Where a reading stands: `collection/id/field`. */
export type ReadingPath = Key;

export const readingPath: (collection: string, id: string, field: string) => ReadingPath = keyOfParts;
