/** A job given as plain records of readings: for tests, and for whatever builds a job without a log. */
import { asReading } from './as-reading.ts';
import type { JobView, RecordView } from './view.ts';

type PlainFields = Readonly<Record<string, unknown>>;

/** Collections as `surveyRecords` gives them: an object for what a job has once, a list for the rest. */
export type PlainJob = Readonly<Record<string, PlainFields | readonly PlainFields[]>>;

export function plainView(job: PlainJob): JobView {
  const lists = new Map<string, readonly RecordView[]>();
  for (const [collection, part] of Object.entries(job)) {
    const items: readonly PlainFields[] = Array.isArray(part) ? part : [{ ...part, id: '-' }];
    lists.set(collection, items.map(recordView));
  }
  return {
    all: (collection) => lists.get(collection) ?? [],
    record: (collection, id) =>
      lists.get(collection)?.find((one) => one.id === id) ?? { id, reading: () => undefined },
  };
}

function recordView(fields: PlainFields): RecordView {
  return {
    id: String(fields['id']),
    reading: (field) => (Object.hasOwn(fields, field) ? asReading(fields[field]) : undefined),
  };
}
