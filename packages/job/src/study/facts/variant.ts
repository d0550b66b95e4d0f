/**
 * A named variant of the plan, as the study reads it: the job with the variant's readings in place of its own.
 * What the variant does not touch stays the job's, so that a reading corrected later is corrected in both.
 */
import type { Reading } from '../../schema/index.ts';
import { asReading } from './as-reading.ts';
import type { JobView, RecordView } from './view.ts';

export interface VariantName {
  readonly id: string;
  readonly name: string;
}

/** The variants of a job, in their order. */
export function variantsOf(view: JobView): readonly VariantName[] {
  return view.all('variants').map((record) => {
    const name = record.reading('name')?.value;
    return { id: record.id, name: typeof name === 'string' && name !== '' ? name : record.id };
  });
}

/** The job in a variant. An unknown variant changes nothing. */
export function variantView(view: JobView, variant: string): JobView {
  const changes = changesOf(view, variant);
  if (changes.size === 0) return view;
  const lists = new Map<string, readonly RecordView[]>();
  const all = (collection: string): readonly RecordView[] => {
    const made = lists.get(collection) ?? changed(view, collection, changes);
    lists.set(collection, made);
    return made;
  };
  return {
    all,
    record: (collection, id) => all(collection).find((one) => one.id === id) ?? view.record(collection, id),
  };
}

/** `collection/id` → field → reading. */
type Changes = ReadonlyMap<string, ReadonlyMap<string, Reading>>;

function changesOf(view: JobView, variant: string): Changes {
  const changes = new Map<string, Map<string, Reading>>();
  for (const record of view.all('variantChanges')) {
    if (record.reading('variant')?.value !== variant) continue;
    const reading = record.reading('reading');
    const target = record.reading('target')?.value;
    const [collection, id, field, ...more] = typeof target === 'string' ? target.split('/') : [];
    if (reading === undefined || !collection || !id || !field || more.length > 0) continue;
    const key = `${collection}/${id}`;
    const fields = changes.get(key) ?? new Map<string, Reading>();
    changes.set(key, fields.set(field, asReading(reading)));
  }
  return changes;
}

/** The records of a collection with their changes; what only the variant has comes last. */
function changed(view: JobView, collection: string, changes: Changes): readonly RecordView[] {
  const own = view.all(collection);
  const added = [...changes.keys()]
    .filter((key) => key.startsWith(`${collection}/`))
    .map((key) => key.slice(collection.length + 1))
    .filter((id) => !own.some((record) => record.id === id))
    .map((id): RecordView => ({ id, reading: () => undefined }));
  return [...own, ...added].map((record) => {
    const fields = changes.get(`${collection}/${record.id}`);
    if (fields === undefined) return record;
    return { id: record.id, reading: (field) => fields.get(field) ?? record.reading(field) };
  });
}
