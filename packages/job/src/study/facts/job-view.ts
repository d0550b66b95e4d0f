/** The folded document of a job, as the study reads it. */
import { compareElements, type Element, type FoldedDocument } from '../../log/index.ts';
import { asReading } from './as-reading.ts';
import type { JobView, RecordView } from './view.ts';

export function jobViewOf(document: FoldedDocument): JobView {
  const collections = new Map<string, CollectionView>();
  for (const [name, elements] of document.collections) collections.set(name, collectionView(elements));
  return {
    all: (collection) => collections.get(collection)?.list ?? NO_RECORDS,
    record: (collection, id) => collections.get(collection)?.byId.get(id) ?? nothing(id),
  };
}

const NO_RECORDS: readonly RecordView[] = [];

interface CollectionView {
  /** The living, in their order. */
  readonly list: readonly RecordView[];
  readonly byId: ReadonlyMap<string, RecordView>;
}

type Elements = ReadonlyMap<string, Element>;

/** What is folded never changes, and an edit folds the one element it touches anew: all others keep their views. */
const keptCollections = new WeakMap<Elements, CollectionView>();
const keptRecords = new WeakMap<Element, RecordView>();

function collectionView(elements: Elements): CollectionView {
  const known = keptCollections.get(elements);
  if (known !== undefined) return known;
  const living = [...elements.values()].filter((element) => element.alive).sort(compareElements);
  const list = living.map(recordView);
  const made = { list, byId: new Map(list.map((record) => [record.id, record])) };
  keptCollections.set(elements, made);
  return made;
}

function recordView(element: Element): RecordView {
  const known = keptRecords.get(element);
  if (known !== undefined) return known;
  const made: RecordView = {
    id: element.id,
    reading: (name) => {
      const value = element.fields.get(name)?.value;
      return value === undefined || value === null ? undefined : asReading(value);
    },
  };
  keptRecords.set(element, made);
  return made;
}

function nothing(id: string): RecordView {
  return { id, reading: () => undefined };
}
