/** For tests: devices with a database and private files of their own, and what can go wrong with them. */
import 'fake-indexeddb/auto';
import type { Edit, StoredOperation } from '@firstfire/job';
import type { CopyFiles } from '../../src/store/copy-files.ts';
import { DeviceShop } from '../../src/store/device-shop.ts';
import { DeviceStorage } from '../../src/store/device-storage.ts';
import { type JotStorage, Jots } from '../../src/store/jots.ts';
import { SecondCopy } from '../../src/store/second-copy.ts';
import { Tabs } from '../../src/store/tabs.ts';

/** Files in memory, as the browser keeps them: text at the end of a file, on a line of its own. */
export class MemoryFiles implements CopyFiles {
  readonly texts = new Map<string, string>();
  /** Characters that still fit; the rest of what is written is cut off, and the writer told. */
  room = Number.POSITIVE_INFINITY;

  async names(): Promise<readonly string[]> {
    return [...this.texts.keys()];
  }

  async read(name: string): Promise<string> {
    return this.texts.get(name) ?? '';
  }

  async append(name: string, text: string): Promise<void> {
    const before = this.texts.get(name) ?? '';
    const put = `${before === '' || before.endsWith('\n') ? '' : '\n'}${text}`;
    const fits = put.slice(0, Math.max(0, this.room));
    this.texts.set(name, before + fits);
    this.room -= fits.length;
    if (fits.length < put.length) throw new DOMException('full', 'QuotaExceededError');
  }

  async remove(name: string): Promise<void> {
    this.texts.delete(name);
  }
}

/** What a browser's `localStorage` is, in memory. */
export class MemoryJots implements JotStorage {
  readonly texts = new Map<string, string>();
  isFull = false;

  get length(): number {
    return this.texts.size;
  }

  key(index: number): string | null {
    return [...this.texts.keys()][index] ?? null;
  }

  getItem(key: string): string | null {
    return this.texts.get(key) ?? null;
  }

  setItem(key: string, text: string): void {
    if (this.isFull) throw new DOMException('full', 'QuotaExceededError');
    this.texts.set(key, text);
  }

  removeItem(key: string): void {
    this.texts.delete(key);
  }
}

export interface Made {
  readonly name: string;
  readonly files: MemoryFiles;
  readonly jots: MemoryJots;
}

let made = 0;

/** A device nobody has used. */
export function freshDevice(): Made {
  made += 1;
  return { name: `device-${made}`, files: new MemoryFiles(), jots: new MemoryJots() };
}

let tabs = 0;

/** A tab of the app on a device. */
export function openTab({ name, files, jots }: Made, cookie = ''): DeviceShop {
  tabs += 1;
  return new DeviceShop({
    storage: new DeviceStorage(name),
    copy: new SecondCopy(files),
    tabs: new Tabs(name),
    jots: new Jots(jots, `t${tabs}`),
    cookie: () => cookie,
  });
}

/** A storage that refuses to write while `why` is set. */
export function refusing(storage: DeviceStorage): { why: string | undefined } {
  const state: { why: string | undefined } = { why: undefined };
  const retry = storage.retry.bind(storage);
  storage.retry = async (work) => {
    if (state.why !== undefined) throw new DOMException('refused', state.why);
    return retry(work);
  };
  return state;
}

export function deleteDatabase(name: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(name);
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
  });
}

export function named(name: string): Edit {
  return { type: 'set', collection: 'job', field: 'name', value: { value: name, how: 'told' } };
}

/** Set pressure of the gas supply, as typed. */
export function pressure(value: number): Edit {
  return {
    type: 'set',
    collection: 'gasSupply',
    field: 'setPressure',
    value: { value, unit: 'in_w.c.', how: 'measured' },
  };
}

export function ids(operations: readonly StoredOperation[]): string[] {
  return operations.map(({ id }) => id).sort();
}

/** Until `isSo` holds; a test that waits in vain fails by its time limit. */
export async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 5));
}
