/** The readings of a line by record: what is missing and needed, what is known, and what no finding asks for. */
import { type JobView, RECORD_BY_COLLECTION, type Reading } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { COLLECTIONS_OF } from '../next/collections.ts';

export interface ListedReading {
  readonly path: string;
  readonly collection: string;
  readonly id: string;
  readonly field: string;
  readonly reading: Reading | undefined;
}

export interface RecordList {
  readonly collection: string;
  readonly id: string;
  /** What people call it; empty where nobody named it. */
  readonly name: string;
  /** Which of its kind it is, from 1, where nobody named it and there are several. */
  readonly number?: number;
  readonly missing: readonly ListedReading[];
  readonly known: readonly ListedReading[];
  readonly unasked: readonly ListedReading[];
}

/** A record that stands elsewhere is listed too, with what is missing of it. */
export function recordLists(
  view: JobView,
  line: string,
  findings: readonly Finding[],
): readonly RecordList[] {
  const missing = [...new Set(findings.flatMap((finding) => finding.missing))];
  const own = (COLLECTIONS_OF[line] ?? []).flatMap((collection) => recordsOf(view, collection));
  const listed = own.map(([collection, id]) => `${collection}/${id}/`);
  const others = missing
    .filter((path) => !listed.some((head) => path.startsWith(head)))
    .map((path): readonly [string, string] => {
      const [collection = '', id = ''] = path.split('/');
      return [collection, id];
    });
  const keys = [...new Set(others.map((one) => one.join('/')))];
  return [
    ...own.map((one) => listOf(view, one, missing)),
    ...keys.map((key) => {
      const [collection = '', id = ''] = key.split('/');
      return { ...listOf(view, [collection, id], missing), known: [], unasked: [] };
    }),
  ];
}

function recordsOf(view: JobView, collection: string): readonly (readonly [string, string])[] {
  const spec = RECORD_BY_COLLECTION.get(collection);
  if (spec === undefined) return [];
  return spec.single ? [[collection, '-']] : view.all(collection).map(({ id }) => [collection, id]);
}

function listOf(
  view: JobView,
  [collection, id]: readonly [string, string],
  missing: readonly string[],
): RecordList {
  const record = view.record(collection, id);
  const name = record.reading('name')?.value;
  const alike = view.all(collection);
  const rows = Object.keys(RECORD_BY_COLLECTION.get(collection)?.fields ?? {}).map((field) => ({
    path: `${collection}/${id}/${field}`,
    collection,
    id,
    field,
    reading: record.reading(field),
  }));
  const isMissing = (row: ListedReading): boolean => missing.includes(row.path);
  const isNamed = typeof name === 'string' && name !== '';
  return {
    collection,
    id,
    name: isNamed ? name : '',
    ...(!isNamed && alike.length > 1 ? { number: alike.findIndex((one) => one.id === id) + 1 } : {}),
    // What the worst finding lacks stands first.
    missing: rows.filter(isMissing).sort((a, b) => missing.indexOf(a.path) - missing.indexOf(b.path)),
    known: rows.filter((row) => !isMissing(row) && row.reading !== undefined),
    unasked: rows.filter((row) => !isMissing(row) && row.reading === undefined),
  };
}
