/** What has been written to a reading, by whom and when; and values written without sight of each other. */
import {
  type Field,
  type FoldedDocument,
  fieldOf,
  hlcMillis,
  inspectOperation,
  type Json,
  type StoredOperation,
} from '@firstfire/job';

export interface FieldAt {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
}

export interface Written {
  /** Id of the operation. */
  readonly id: string;
  /** Null: taken back to not known. */
  readonly value: Json;
  readonly author: string;
  /** The installation that wrote it. */
  readonly replica: string;
  /** ms since 1970. */
  readonly at: number;
}

type Stamped = Pick<Written, 'id' | 'value' | 'author'> & { readonly hlc: string };

/** Everything ever written to a reading, the latest first. */
export function writtenTo(operations: Iterable<StoredOperation>, at: FieldAt): readonly Written[] {
  const found: Stamped[] = [];
  for (const stored of operations) {
    const one = inspectOperation(stored);
    if (one.state !== 'known' || one.operation.kind !== 'field.set') continue;
    const { collection, element, field } = one.target;
    if (collection === at.collection && element === at.id && field === at.field) found.push(one.operation);
  }
  return found.sort(byLatest).map(written);
}

export interface WrittenAt extends Written {
  readonly path: string;
}

/** Everything ever written to any reading of the job, the latest first. */
export function writtenAnywhere(operations: Iterable<StoredOperation>): readonly WrittenAt[] {
  const found: (Stamped & { readonly path: string })[] = [];
  for (const stored of operations) {
    const one = inspectOperation(stored);
    if (one.state !== 'known' || one.operation.kind !== 'field.set') continue;
    const { collection, element, field } = one.target;
    found.push({ ...one.operation, path: `${collection}/${element}/${field}` });
  }
  return found.sort(byLatest).map((one) => ({ ...written(one), path: one.path }));
}

function byLatest(a: Stamped, b: Stamped): number {
  return a.hlc < b.hlc ? 1 : a.hlc > b.hlc ? -1 : a.id < b.id ? 1 : -1;
}

/** The values of a reading when there is more than one, the one that stands first; else none. */
export function secondValues(document: FoldedDocument, at: FieldAt): readonly Written[] {
  const found = heldBy(document, at);
  return found === undefined || found.others.length === 0 ? [] : [found, ...found.others].map(written);
}

export function heldBy(document: FoldedDocument, { collection, id, field }: FieldAt): Field | undefined {
  return fieldOf(document, { collection, element: id, field });
}

function written({ id, value, author, hlc }: Stamped): Written {
  return { id, value, author, replica: id.slice(0, id.indexOf(':')), at: hlcMillis(hlc) };
}
