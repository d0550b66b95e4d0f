/** Rows of the database: made from operations, and judged when they are read, for a disk can hurt what it holds. */
import { contentText, inspectOperation, type StoredOperation, unite } from '@firstfire/job';
import type { Database, OperationRow } from './database.ts';

export interface Rows {
  /** In canonical order. */
  readonly operations: readonly StoredOperation[];
  /** Rows that hold no operation, or another than was put there. */
  readonly bad: number;
}

export function rowOf(doc: string, operation: StoredOperation): OperationRow {
  return { doc, id: operation.id, content: contentText(operation), operation };
}

/** Whether a row still holds what was put there. */
export function isSound(row: unknown): row is OperationRow {
  if (typeof row !== 'object' || row === null) return false;
  const { id, content, operation } = row as Partial<OperationRow>;
  const found = inspectOperation(operation);
  if (found.state === 'bad' || typeof content !== 'string') return false;
  return found.stored.id === id && contentText(found.stored) === content.trimEnd();
}

export function judged(rows: readonly unknown[]): Rows {
  const sound = rows.filter(isSound);
  return { operations: unite(sound.map((row) => row.operation)), bad: rows.length - sound.length };
}

/** All rows of a document; one by one where the browser cannot read them together. */
export async function rowsOf(database: Database, doc: string): Promise<readonly unknown[]> {
  try {
    return await database.getAllFromIndex('operations', 'doc', doc);
  } catch (error) {
    const keys = await database.getAllKeysFromIndex('operations', 'doc', doc);
    if (keys.length === 0) throw error;
    return Promise.all(keys.map((key) => database.get('operations', key).catch(() => undefined)));
  }
}

interface Store {
  get(key: [string, string, string]): Promise<unknown>;
  add(row: OperationRow): Promise<unknown>;
}

/** Stores an operation unless it is there. A bad row in its place stays as it is, and the operation stands beside it. */
export async function putBeside(store: Store, row: OperationRow): Promise<void> {
  for (let { content } = row; ; content += ' ') {
    const there = await store.get([row.doc, row.id, content]);
    if (there === undefined) {
      await store.add({ ...row, content });
      return;
    }
    if (isSound(there)) return;
  }
}
