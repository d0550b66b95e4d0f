/** The folded document of a job, as the study reads it. */
import { type Element, elementsOf, type FoldedDocument } from '../log/index.ts';
import { HOW_KNOWN, type Reading } from '../schema/index.ts';
import type { JobView, RecordView } from './view.ts';

/** Stands for a value that is no reading at all: whatever its field expects, this is not it. */
const MALFORMED: Reading = { value: '', how: 'assumed' };

export function jobViewOf(document: FoldedDocument): JobView {
  const lists = new Map<string, readonly RecordView[]>();
  const records = new Map<string, ReadonlyMap<string, RecordView>>();
  for (const collection of document.collections.keys()) {
    const list = elementsOf(document, collection).map(recordView);
    lists.set(collection, list);
    records.set(collection, new Map(list.map((record) => [record.id, record])));
  }
  return {
    all: (collection) => lists.get(collection) ?? [],
    record: (collection, id) => records.get(collection)?.get(id) ?? nothing(id),
  };
}

function recordView(element: Element): RecordView {
  return {
    id: element.id,
    reading: (name) => {
      const value = element.fields.get(name)?.value;
      return value === undefined || value === null ? undefined : asReading(value);
    },
  };
}

function nothing(id: string): RecordView {
  return { id, reading: () => undefined };
}

/** A field's value as a reading; anything may stand in a file. */
function asReading(value: unknown): Reading {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return MALFORMED;
  const { value: inner, how } = value as { value?: unknown; how?: unknown };
  const known = (HOW_KNOWN as readonly unknown[]).includes(how);
  return known && inner !== undefined && inner !== null ? (value as Reading) : MALFORMED;
}
