/** The database on the device: its version, its parts, and how it is opened again when the browser closes it. */
import type { Snapshot, StoredOperation } from '@firstfire/job';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

export interface Worst {
  readonly rule: string;
  readonly verdict: 'meets' | 'tight' | 'fails' | 'unknown' | 'does not apply';
  readonly margin?: number;
}

/** What the list of jobs shows of a job, so that it needs no study. A cache: made anew from the log when in doubt. */
export interface Summary {
  readonly doc: string;
  readonly name: string;
  readonly stage: string;
  readonly place: string;
  readonly archived: boolean;
  /** Whether a study has said the worst finding and the next reading. */
  readonly studied?: boolean;
  /** The worst finding of all lines. */
  readonly worst?: Worst;
  /** The reading to take next. */
  readonly next?: string;
  /** Of the last operation, ms since 1970. */
  readonly changed: number;
  readonly operations: number;
  /** Deleted, ms since 1970: out of sight, and kept until it is cleared away. A mark of the device, not of the log. */
  readonly deleted?: number;
  /** Operations that an export has. A mark of the device, not of the log. */
  readonly exported?: number;
}

export interface OperationRow {
  readonly doc: string;
  readonly id: string;
  /** Tells two contents of one id apart. */
  readonly content: string;
  readonly operation: StoredOperation;
}

export interface Parts extends DBSchema {
  operations: { key: [string, string, string]; value: OperationRow; indexes: { doc: string } };
  summaries: { key: string; value: Summary };
  device: { key: string; value: unknown };
  photos: { key: string; value: Blob };
  /** Since version 2. */
  snapshots: { key: string; value: Snapshot };
}

export type Database = IDBPDatabase<Parts>;

export const DATABASE = 'firstfire';
export const DATABASE_VERSION = 2;
/** A browser that says nothing for so long is taken not to answer at all, ms. */
const PATIENCE_MS = 10_000;

/** Opens the database; rejects when it is refused, of a newer version, or when the browser does not answer. */
export async function openDatabase(name: string, closed: () => void): Promise<Database> {
  if (globalThis.indexedDB === undefined) throw new DOMException('no database here', 'NotSupportedError');
  const opening = openDB<Parts>(name, DATABASE_VERSION, {
    upgrade: (database, from) => upgrade(database, from),
    // A newer version of the app waits in another tab: give way, and open again when asked.
    blocking: (_current, _blocked, event) => {
      (event.target as IDBDatabase).close();
      closed();
    },
    terminated: closed,
  });
  return inTime(opening, () => opening.then((late) => late.close()));
}

function upgrade(database: Database, from: number): void {
  if (from < 1) {
    const operations = database.createObjectStore('operations', { keyPath: ['doc', 'id', 'content'] });
    operations.createIndex('doc', 'doc');
    database.createObjectStore('summaries', { keyPath: 'doc' });
    database.createObjectStore('device');
    database.createObjectStore('photos');
  }
  if (from < 2) database.createObjectStore('snapshots');
}

/** What `work` gives, or a rejection when it takes too long; `late` then clears up after it. */
async function inTime<T>(work: Promise<T>, late: () => Promise<unknown>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tooLate = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      late().catch(() => {});
      reject(new DOMException('the database does not answer', 'TimeoutError'));
    }, PATIENCE_MS);
  });
  try {
    return await Promise.race([work, tooLate]);
  } finally {
    clearTimeout(timer);
  }
}
