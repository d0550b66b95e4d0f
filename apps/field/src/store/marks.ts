/** What the device itself remembers, beside the logs: deletions, exports, answers given. Never a part of a job. */
import type { DeviceStorage } from './device-storage.ts';
import { Signal } from './signal.ts';

export interface Marks {
  /** Jobs deleted, by document: ms since 1970. */
  readonly deleted: Readonly<Record<string, number>>;
  /** How many operations of a document an export has. */
  readonly exported: Readonly<Record<string, number>>;
  /** When the last export was made, ms since 1970. */
  readonly exportedAt: number;
  /** When the first work was kept here. */
  readonly begunAt: number;
  /** Until when nobody is reminded to export. */
  readonly quietUntil: number;
  /** The browser's answer when it was asked to keep the data. */
  readonly lasting: boolean | undefined;
  /** How many jobs there were. */
  readonly jobs: number | undefined;
}

export const NO_MARKS: Marks = {
  deleted: {},
  exported: {},
  exportedAt: 0,
  begunAt: 0,
  quietUntil: 0,
  lasting: undefined,
  jobs: undefined,
};

const KEY = 'marks';

/** The marks as they stand, shared with the other tabs. */
export class DeviceMarks {
  readonly now = new Signal<Marks>(NO_MARKS);
  readonly #storage: DeviceStorage;

  constructor(storage: DeviceStorage) {
    this.#storage = storage;
  }

  async read(): Promise<void> {
    const kept = this.#storage.retry((database) => database.get('device', KEY)).then(checked);
    this.now.set(await kept.catch(() => this.now.get()));
  }

  /** Changes the marks in one transaction; where the device refuses, for as long as the tab lives. */
  async change(change: (marks: Marks) => Partial<Marks>): Promise<void> {
    const inMemory = { ...this.now.get(), ...change(this.now.get()) };
    this.now.set(await this.#store(change).catch(() => inMemory));
  }

  #store(change: (marks: Marks) => Partial<Marks>): Promise<Marks> {
    return this.#storage.retry(async (database) => {
      const transaction = database.transaction('device', 'readwrite', { durability: 'strict' });
      const before = checked(await transaction.store.get(KEY));
      const after = { ...before, ...change(before) };
      await transaction.store.put(after, KEY);
      await transaction.done;
      return after;
    });
  }
}

function checked(kept: unknown): Marks {
  if (typeof kept !== 'object' || kept === null) return NO_MARKS;
  const one = kept as Readonly<Record<string, unknown>>;
  const count = (name: string): number => (typeof one[name] === 'number' ? one[name] : 0);
  return {
    deleted: counts(one['deleted']),
    exported: counts(one['exported']),
    exportedAt: count('exportedAt'),
    begunAt: count('begunAt'),
    quietUntil: count('quietUntil'),
    lasting: typeof one['lasting'] === 'boolean' ? one['lasting'] : undefined,
    jobs: typeof one['jobs'] === 'number' ? one['jobs'] : undefined,
  };
}

function counts(kept: unknown): Readonly<Record<string, number>> {
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(Object.entries(kept).filter(([, one]) => typeof one === 'number'));
}

/** A deleted job is kept for a month. */
const MONTH_MS = 30 * 24 * 3_600_000;

/** The deleted jobs whose time is over. */
export function overdue({ deleted }: Marks, now: number): readonly string[] {
  return Object.keys(deleted).filter((doc) => now - (deleted[doc] ?? now) > MONTH_MS);
}

/** A record without one of its entries. */
export function without(
  record: Readonly<Record<string, number>>,
  key: string,
): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(record).filter(([name]) => name !== key));
}
