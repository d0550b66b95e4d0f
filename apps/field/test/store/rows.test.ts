/** What the disk has hurt is left alone and told; a database of another version is brought up or refused. */
import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, describe, expect, it } from 'vitest';
import { firstOperations } from '../../src/session/first-operations.ts';
import { DATABASE_VERSION } from '../../src/store/database.ts';
import { DeviceStorage } from '../../src/store/device-storage.ts';
import { illOf } from '../../src/store/health.ts';
import { named, refusing } from './device.ts';

const BEGUN = firstOperations([{ type: 'create' }, named('Elm Street')], {
  doc: 'job1',
  replica: 'r1',
  author: 'me',
  now: 1_700_000_000_000,
});

let count = 0;
let name = '';
beforeEach(() => {
  count += 1;
  name = `rows-${count}`;
});

async function stored(): Promise<DeviceStorage> {
  const storage = new DeviceStorage(name);
  await storage.take('job1', BEGUN);
  return storage;
}

describe('a row that was hurt', () => {
  it.each([
    ['holds nothing', undefined],
    ['holds no operation', { rubbish: true }],
    ['holds a changed value', { ...BEGUN[1], value: { value: 'Oak Street', how: 'told' } }],
    ['holds another operation', { ...BEGUN[0] }],
  ])('that %s is skipped, told, and not written over', async (_, operation) => {
    const storage = await stored();
    const database = await storage.open();
    const [row] = (await database.getAll('operations')).filter(({ id }) => id === 'r1:2');
    const hurt = { ...row, operation } as NonNullable<typeof row>;
    await database.put('operations', hurt);
    expect(await storage.read('job1')).toEqual([BEGUN[0]]);
    expect(storage.bad.get()).toEqual(new Map([['job1', 1]]));

    await storage.take('job1', BEGUN);
    expect(await storage.read('job1')).toEqual(BEGUN);
    expect(storage.bad.get().get('job1')).toBe(1);
    const rows = await database.getAll('operations');
    expect(rows).toHaveLength(3);
    expect(rows).toContainEqual(hurt);
    await storage.take('job1', BEGUN);
    expect(await database.count('operations')).toBe(3);
    storage.close();
  });
});

describe('a database of another version', () => {
  it('that is newer is refused with its reason, and left as it is', async () => {
    const newer = await openDB(name, DATABASE_VERSION + 1, {
      upgrade: (database) => void database.createObjectStore('operations'),
    });
    await newer.put('operations', 'kept', 'something');
    newer.close();
    const storage = new DeviceStorage(name);
    await expect(storage.take('job1', BEGUN)).rejects.toThrow();
    expect(storage.ill.get()).toBe('newer');
    const again = await openDB(name);
    expect(await again.get('operations', 'something')).toBe('kept');
    again.close();
  });

  it('that is the first one is brought up with all it has', async () => {
    const first = await openDB(name, 1, {
      upgrade(database) {
        const operations = database.createObjectStore('operations', { keyPath: ['doc', 'id', 'content'] });
        operations.createIndex('doc', 'doc');
        database.createObjectStore('summaries', { keyPath: 'doc' });
        database.createObjectStore('device');
        database.createObjectStore('photos');
      },
    });
    for (const operation of BEGUN) {
      const content = JSON.stringify(sorted(operation));
      await first.put('operations', { doc: 'job1', id: operation.id, content, operation });
    }
    await first.put('device', 'r1', 'replica-0');
    first.close();
    const storage = new DeviceStorage(name);
    expect(await storage.read('job1')).toEqual(BEGUN);
    expect(storage.bad.get().size).toBe(0);
    const database = await storage.open();
    expect(await database.get('device', 'replica-0')).toBe('r1');
    expect([...database.objectStoreNames]).toContain('snapshots');
    storage.close();
  });
});

/** JSON with its members in order, written without the app's own means. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, one]) => [key, sorted(one)]),
  );
}

describe('a device that refuses', () => {
  // Names of errors: W3C Indexed Database API 3.0, section 4 and Storage Standard, section 5 (from memory).
  it.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'denied'],
    ['VersionError', 'newer'],
    ['UnknownError', 'damaged'],
    ['TimeoutError', 'silent'],
    ['OddError', 'failed'],
  ])('with %s is %s', (error, ill) => {
    expect(illOf(new DOMException('', error))).toBe(ill);
  });

  it('says why, and forgets it once it keeps again', async () => {
    const storage = await stored();
    const refusal = refusing(storage);
    refusal.why = 'QuotaExceededError';
    await expect(storage.take('job1', BEGUN)).rejects.toThrow();
    expect(storage.ill.get()).toBe('full');
    refusal.why = undefined;
    await storage.read('job1');
    expect(storage.ill.get()).toBe('full');
    await storage.take('job1', BEGUN);
    expect(storage.ill.get()).toBeUndefined();
    storage.close();
  });

  it('without any database says so', async () => {
    const kept = globalThis.indexedDB;
    Object.assign(globalThis, { indexedDB: undefined });
    const storage = new DeviceStorage(name);
    await expect(storage.read('job1')).rejects.toThrow();
    expect(storage.ill.get()).toBe('missing');
    globalThis.indexedDB = kept;
  });
});

describe('strict durability', () => {
  it('is asked for by every write of operations', async () => {
    const storage = await stored();
    const database = await storage.open();
    const asked: unknown[] = [];
    const watched = new Proxy(database, {
      get(target, property) {
        if (property !== 'transaction') return Reflect.get(target, property, target) as unknown;
        return (...given: Parameters<typeof target.transaction>) => {
          if (given[1] === 'readwrite') asked.push(given[2]);
          return target.transaction(...given);
        };
      },
    });
    storage.open = async () => watched;
    await storage.take('job1', BEGUN);
    await storage.append({ doc: 'job1', replica: 'r2' }, () => []);
    await storage.erase('job1');
    expect(asked).toEqual([{ durability: 'strict' }, { durability: 'strict' }, { durability: 'strict' }]);
    storage.close();
  });
});
