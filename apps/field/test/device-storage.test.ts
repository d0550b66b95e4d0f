/** The device's storage keeps what every log storage promises, and survives what browsers do to databases. */
import 'fake-indexeddb/auto';
import { storageAcceptance } from '@firstfire/job';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { firstOperations } from '../src/session/first-operations.ts';
import { DeviceStorage } from '../src/store/device-storage.ts';
import { rememberedIn } from '../src/store/remembered.ts';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

const WRITER = { doc: 'job1', replica: 'r1', author: 'me', now: 1_700_000_000_000 };
const BEGUN = firstOperations([{ type: 'create' }], WRITER);

describe('storage on the device', () => {
  it.each(storageAcceptance.map((one) => [one.name, one] as const))('%s', async (_, one) => {
    await one.run(new DeviceStorage());
  });

  it('opens again what the browser has closed in the background, and repeats the write', async () => {
    const storage = new DeviceStorage();
    await storage.take('job1', BEGUN);
    const database = await storage.open();
    database.close();
    await storage.take('job1', BEGUN);
    expect(await storage.read('job1')).toEqual(BEGUN);
  });

  it('says so when the device keeps nothing, and works once it does', async () => {
    const storage = new DeviceStorage();
    const kept = globalThis.indexedDB;
    Object.assign(globalThis, {
      indexedDB: {
        open() {
          throw new DOMException('denied', 'SecurityError');
        },
      },
    });
    await expect(storage.take('job1', BEGUN)).rejects.toThrow('denied');
    globalThis.indexedDB = kept;
    await storage.take('job1', BEGUN);
    expect(await storage.read('job1')).toHaveLength(BEGUN.length);
  });

  it('has its jobs on another start', async () => {
    await new DeviceStorage().take('job1', BEGUN);
    expect(await new DeviceStorage().documents()).toEqual(['job1']);
  });
});

describe('what the cookie remembers', () => {
  it.each([
    ['firstfire-jobs=3.1700000000000', { jobs: 3, changed: 1_700_000_000_000 }],
    ['a=1; firstfire-jobs=12.5; b=2', { jobs: 12, changed: 5 }],
    ['firstfire-jobs=', undefined],
    ['firstfire-jobs=x.y', undefined],
    ['other-firstfire-jobs=3.5', undefined],
    ['', undefined],
  ])('%s', (cookie, expected) => {
    expect(rememberedIn(cookie)).toEqual(expected);
  });
});
