/** The database on the device: its version, its parts, and how it is opened again when the browser closes it. */
import type { StoredOperation } from '@firstfire/job';
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
  /** The worst finding of all lines. */
  readonly worst?: Worst;
  /** The reading to take next. */
  readonly next?: string;
  /** Deleted, ms since 1970: out of sight, and kept until it is cleared away. */
  readonly deleted?: number;
  /** Of the last operation, ms since 1970. */
  readonly changed: number;
  readonly operations: number;
  /** Operations that an export has. */
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
}

export type Database = IDBPDatabase<Parts>;

const NAME = 'firstfire';
const VERSION = 1;

export function openDatabase(closed: () => void): Promise<Database> {
  return openDB<Parts>(NAME, VERSION, {
    upgrade(database, from) {
      if (from < 1) {
        const operations = database.createObjectStore('operations', { keyPath: ['doc', 'id', 'content'] });
        operations.createIndex('doc', 'doc');
        database.createObjectStore('summaries', { keyPath: 'doc' });
        database.createObjectStore('device');
        database.createObjectStore('photos');
      }
    },
    // A newer version of the app waits in another tab: give way, and open again when asked.
    blocking: (_current, _blocked, event) => {
      (event.target as IDBDatabase).close();
      closed();
    },
    terminated: closed,
  });
}
