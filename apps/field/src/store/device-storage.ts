/**
 * Logs kept in the browser's database. What is acknowledged has been written with strict durability; a connection the
 * browser has closed is opened again and the write repeated, which is safe because an operation has its id.
 */
import { type LogStorage, type PenState, penIn, type StoredOperation, unite } from '@firstfire/job';
import { deleteDB } from 'idb';
import { DATABASE, type Database, openDatabase } from './database.ts';
import { type Ill, illOf } from './health.ts';
import { judged, putBeside, rowOf, rowsOf } from './rows.ts';
import { Signal } from './signal.ts';

const TRIES = 3;
const STRICT = { durability: 'strict' } as const;
/** Behind every key of a document: lists come after texts. */
const LAST: readonly [] = [];

export class DeviceStorage implements LogStorage {
  /** Why the device does not keep what it is given; undefined while it does. */
  readonly ill = new Signal<Ill | undefined>(undefined);
  /** Rows that could not be read, by document. */
  readonly bad = new Signal<ReadonlyMap<string, number>>(new Map());
  readonly #name: string;
  #database: Promise<Database> | undefined;

  constructor(name = DATABASE) {
    this.#name = name;
  }

  /** The database, opened if it is not. */
  open(): Promise<Database> {
    if (this.#database !== undefined) return this.#database;
    const forget = (): void => {
      if (this.#database === opened) this.#database = undefined;
    };
    const opened: Promise<Database> = openDatabase(this.#name, forget);
    opened.catch(forget);
    this.#database = opened;
    return opened;
  }

  close(): void {
    const open = this.#database;
    this.#database = undefined;
    open?.then((database) => database.close()).catch(() => {});
  }

  /** Runs `work`, again on a fresh connection when the browser has closed the old one. */
  async retry<T>(work: (database: Database) => Promise<T>): Promise<T> {
    for (let left = TRIES; ; left -= 1) {
      try {
        return await work(await this.open());
      } catch (error) {
        if (left <= 1 || !isClosed(error)) throw error;
        this.close();
      }
    }
  }

  async read(doc: string): Promise<readonly StoredOperation[]> {
    const rows = await this.#noting((database) => rowsOf(database, doc));
    const { operations, bad } = judged(rows);
    if (bad !== (this.bad.get().get(doc) ?? 0)) this.bad.set(new Map(this.bad.get()).set(doc, bad));
    return operations;
  }

  async append(
    { doc, replica }: { readonly doc: string; readonly replica: string },
    write: (pen: PenState) => readonly StoredOperation[],
  ): Promise<readonly StoredOperation[]> {
    return this.#writing(async (database) => {
      const transaction = database.transaction('operations', 'readwrite', STRICT);
      return whole(transaction, async () => {
        const rows = await transaction.store.index('doc').getAll(doc);
        const written = write(penIn(judged(rows).operations, replica));
        for (const operation of written) await putBeside(transaction.store, rowOf(doc, operation));
        return written;
      });
    });
  }

  async take(doc: string, operations: readonly StoredOperation[]): Promise<void> {
    await this.#writing(async (database) => {
      const transaction = database.transaction('operations', 'readwrite', STRICT);
      await whole(transaction, async () => {
        const rows = unite(operations).map((operation) => rowOf(doc, operation));
        await Promise.all(rows.map((row) => putBeside(transaction.store, row)));
      });
    });
  }

  async documents(): Promise<readonly string[]> {
    return this.#noting(async (database) => {
      const found: string[] = [];
      const index = database.transaction('operations').store.index('doc');
      let cursor = await index.openKeyCursor(null, 'nextunique');
      while (cursor) {
        found.push(cursor.key);
        cursor = await cursor.continue();
      }
      return found;
    });
  }

  /** How many rows a document has: whether what is kept beside the log is in step with it. */
  async count(doc: string): Promise<number> {
    return this.#noting((database) => database.countFromIndex('operations', 'doc', doc));
  }

  async erase(doc: string): Promise<void> {
    await this.#writing(async (database) => {
      const transaction = database.transaction(
        ['operations', 'summaries', 'snapshots', 'photos'],
        'readwrite',
        STRICT,
      );
      await whole(transaction, async () => {
        await transaction.objectStore('operations').delete(IDBKeyRange.bound([doc], [doc, LAST]));
        await transaction.objectStore('summaries').delete(doc);
        await transaction.objectStore('snapshots').delete(doc);
        await transaction.objectStore('photos').delete(IDBKeyRange.bound(`${doc}/`, `${doc}/\uffff`));
      });
    });
  }

  /** Deletes the whole database: for one that cannot be opened any more, once everything in it is elsewhere. */
  async destroy(): Promise<void> {
    this.close();
    await deleteDB(this.#name);
    this.bad.set(new Map());
    this.ill.set(undefined);
  }

  /** Of a read: a full device still reads well. */
  async #noting<T>(work: (database: Database) => Promise<T>): Promise<T> {
    try {
      const done = await this.retry(work);
      if (this.ill.get() !== 'full') this.ill.set(undefined);
      return done;
    } catch (error) {
      this.ill.set(illOf(error));
      throw error;
    }
  }

  async #writing<T>(work: (database: Database) => Promise<T>): Promise<T> {
    const done = await this.#noting(work);
    this.ill.set(undefined);
    return done;
  }
}

interface Undone {
  abort(): void;
  readonly done: Promise<unknown>;
}

/** All that `work` writes, or nothing of it. What the transaction itself failed of is the better reason. */
async function whole<T>(transaction: Undone, work: () => Promise<T>): Promise<T> {
  try {
    const done = await work();
    await transaction.done;
    return done;
  } catch (error) {
    const reason = transaction.done.then(
      () => error,
      (why: unknown) => (isAbort(why) ? error : why),
    );
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    throw await reason;
  }
}

function isAbort(error: unknown): boolean {
  return error === null || (error instanceof DOMException && error.name === 'AbortError');
}

function isClosed(error: unknown): boolean {
  return error instanceof DOMException && ['InvalidStateError', 'AbortError'].includes(error.name);
}
