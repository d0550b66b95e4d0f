/**
 * Logs kept in the browser's database. What is acknowledged has been written with strict durability; a connection the
 * browser has closed is opened again and the write repeated, which is safe because an operation has its id.
 */
import {
  contentText,
  type LogStorage,
  type PenState,
  penIn,
  type StoredOperation,
  unite,
} from '@firstfire/job';
import { type Database, type OperationRow, openDatabase } from './database.ts';

const TRIES = 3;

export class DeviceStorage implements LogStorage {
  #database: Promise<Database> | undefined;

  /** The database, opened if it is not. */
  open(): Promise<Database> {
    this.#database ??= openDatabase(() => {
      this.#database = undefined;
    });
    this.#database.catch(() => {
      this.#database = undefined;
    });
    return this.#database;
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
    const rows = await this.retry((database) => database.getAllFromIndex('operations', 'doc', doc));
    return unite(rows.map((row) => row.operation));
  }

  append(
    { doc, replica }: { readonly doc: string; readonly replica: string },
    write: (pen: PenState) => readonly StoredOperation[],
  ): Promise<readonly StoredOperation[]> {
    return this.retry(async (database) => {
      const transaction = database.transaction('operations', 'readwrite', { durability: 'strict' });
      try {
        const rows = await transaction.store.index('doc').getAll(doc);
        const written = write(
          penIn(
            rows.map((row) => row.operation),
            replica,
          ),
        );
        for (const operation of written) await transaction.store.put(rowOf(doc, operation));
        await transaction.done;
        return written;
      } catch (error) {
        abort(transaction);
        throw error;
      }
    });
  }

  async take(doc: string, operations: readonly StoredOperation[]): Promise<void> {
    await this.retry(async (database) => {
      const transaction = database.transaction('operations', 'readwrite', { durability: 'strict' });
      for (const operation of operations) await transaction.store.put(rowOf(doc, operation));
      await transaction.done;
    });
  }

  async documents(): Promise<readonly string[]> {
    return this.retry(async (database) => {
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

  async erase(doc: string): Promise<void> {
    await this.retry(async (database) => {
      const transaction = database.transaction(['operations', 'summaries'], 'readwrite', {
        durability: 'strict',
      });
      const operations = transaction.objectStore('operations');
      for (const key of await operations.index('doc').getAllKeys(doc)) await operations.delete(key);
      await transaction.objectStore('summaries').delete(doc);
      await transaction.done;
    });
  }
}

function rowOf(doc: string, operation: StoredOperation): OperationRow {
  return { doc, id: String(operation['id']), content: contentText(operation), operation };
}

function isClosed(error: unknown): boolean {
  return error instanceof DOMException && ['InvalidStateError', 'AbortError'].includes(error.name);
}

function abort(transaction: { abort(): void; done: Promise<unknown> }): void {
  transaction.done.catch(() => {});
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}
