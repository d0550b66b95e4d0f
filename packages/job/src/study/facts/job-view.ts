/** The folded document of a job, as the study reads it. */
import { type Element, elementsOf, type FoldedDocument } from '../../log/index.ts';
import { asReading } from './as-reading.ts';
import type { JobView, RecordView } from './view.ts';

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
