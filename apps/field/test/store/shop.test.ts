/** One device over time: refused writes, lost databases, deletions, two tabs, clones. */
import { contentText, type StoredOperation, writeJobFile } from '@firstfire/job';
import { afterEach, describe, expect, it } from 'vitest';
import { secondValues } from '../../src/session/field-history.ts';
import type { DeviceShop } from '../../src/store/device-shop.ts';
import { NO_MARKS } from '../../src/store/marks.ts';
import { isExportDue } from '../../src/store/remind.ts';
import { bringIn, everything } from '../../src/store/take-out.ts';
import {
  deleteDatabase,
  freshDevice,
  ids,
  type Made,
  named,
  openTab,
  pressure,
  refusing,
  until,
} from './device.ts';

const SET = { collection: 'gasSupply', id: '-', field: 'setPressure' };
const open: DeviceShop[] = [];

function tab(device: Made, cookie = ''): DeviceShop {
  const shop = openTab(device, cookie);
  open.push(shop);
  return shop;
}

afterEach(() => {
  for (const shop of open.splice(0)) shop.close();
});

/** A job on a device, with a reading; stored, copied and listed. */
async function begun(device = freshDevice()): Promise<{ device: Made; shop: DeviceShop; doc: string }> {
  const shop = tab(device);
  await shop.ready;
  const doc = await shop.begin([named('Elm Street')]);
  const session = await shop.session(doc);
  session.edit([pressure(7)]);
  await until(() => session.saved.get().state === 'saved');
  await until(() => Boolean(shop.listed.get()?.[0]?.studied));
  return { device, shop, doc };
}

/** Whether the reading is in the second copy, too. */
function isCopied({ files }: Made): boolean {
  return [...files.texts.values()].some((text) => text.includes('gasSupply'));
}

function pressureIn(operations: readonly StoredOperation[]): unknown {
  return operations.filter((one) => String(one['target']).startsWith('gasSupply')).at(-1)?.['value'];
}

describe('a job on a device', () => {
  it('is there at the next start, with what the list says of it', async () => {
    const { device, doc } = await begun();
    const shop = tab(device);
    await shop.ready;
    const [job] = shop.listed.get() ?? [];
    expect(job).toMatchObject({ doc, name: 'Elm Street', stage: 'survey', operations: 3, studied: true });
    expect(job?.next).toMatch(/^\w+\/[\w-]+\/\w+$/);
  });

  it('is in the second copy as it is in the database', async () => {
    const { device, shop, doc } = await begun();
    await until(() => isCopied(device));
    expect((await shop.copy.read(doc)).operations).toEqual(await shop.storage.read(doc));
  });

  it('is said anew when the list is behind the log', async () => {
    const { device, shop, doc } = await begun();
    const session = await shop.session(doc);
    const before = await session.operations();
    session.edit([named('Oak Street')]);
    const fresh = (await session.operations()).slice(before.length);
    const other = freshDevice();
    const there = tab(other);
    await there.ready;
    await there.take(doc, before);
    await until(() => Boolean(there.listed.get()?.[0]?.studied));
    // Past the shop: as when the tab was killed between the log and the list.
    await there.storage.take(doc, fresh);
    await there.refresh();
    expect(there.listed.get()?.[0]).toMatchObject({ name: 'Oak Street', operations: 4 });
    await until(() => Boolean(there.listed.get()?.[0]?.studied));
    expect(device.name).not.toBe(other.name);
  });
});

describe('a device that refuses to write', () => {
  it('keeps the work in memory, says so, exports it, and stores it once it can', async () => {
    const { shop, doc } = await begun();
    const session = await shop.session(doc);
    const refusal = refusing(shop.storage);
    refusal.why = 'QuotaExceededError';
    session.edit([pressure(8)]);
    await until(() => session.saved.get().state === 'refused');
    expect(session.saved.get()).toEqual({ state: 'refused', waiting: 1, reason: 'full' });
    expect(shop.storage.ill.get()).toBe('full');
    expect(pressureIn(await shop.operations(doc))).toMatchObject({ value: 8 });
    expect((await everything(shop)).text).toContain('"value":8');
    refusal.why = undefined;
    await shop.outbox(doc).retry();
    expect(session.saved.get().state).toBe('saved');
    expect(pressureIn(await shop.storage.read(doc))).toMatchObject({ value: 8 });
  });

  it('from the start still begins jobs, lists and exports them', async () => {
    const shop = tab(freshDevice());
    const refusal = refusing(shop.storage);
    refusal.why = 'SecurityError';
    await shop.ready;
    const doc = await shop.begin([named('In memory')]);
    const session = await shop.session(doc);
    session.edit([pressure(9)]);
    expect(shop.listed.get()?.map(({ name }) => name)).toEqual(['In memory']);
    expect((await everything(shop)).text).toContain('"value":9');
    expect(shop.storage.ill.get()).toBe('denied');
    expect(shop.lost.get()).toBeUndefined();
    refusal.why = undefined;
    await shop.lookAgain();
    await until(() => session.saved.get().state === 'saved');
    expect(ids(await shop.storage.read(doc))).toEqual(ids(await session.operations()));
  });
});

describe('a database that is lost', () => {
  it('is rebuilt from the second copy, with a notice and a replica id of its own', async () => {
    const { device, shop, doc } = await begun();
    const before = await shop.storage.read(doc);
    const { replica } = await shop.session(doc);
    await until(() => isCopied(device));
    shop.close();
    await deleteDatabase(device.name);
    const again = tab(device, 'firstfire-jobs=1.1700000000000');
    await again.ready;
    expect(again.cameBack.get()).toBe(1);
    expect(again.lost.get()).toBeUndefined();
    expect(await again.storage.read(doc)).toEqual(before);
    expect((await again.session(doc)).replica).not.toBe(replica);
  });

  it('in part is filled from the second copy when the job is opened', async () => {
    const { device, shop, doc } = await begun();
    const before = await shop.storage.read(doc);
    await until(() => isCopied(device));
    const database = await shop.storage.open();
    const keys = await database.getAllKeys('operations');
    await database.delete('operations', keys.at(-1) ?? ['', '', '']);
    shop.close();
    const again = tab(device);
    const session = await again.session(doc);
    await until(() => again.cameBack.get() === 1);
    expect(ids(await session.operations())).toEqual(ids(before));
    await until(() => session.saved.get().state === 'saved');
    expect(await again.storage.read(doc)).toEqual(before);
  });

  it('that cannot be opened is worked around, and made anew when a person says so', async () => {
    const { device, shop, doc } = await begun();
    await until(() => isCopied(device));
    const before = await shop.storage.read(doc);
    shop.close();
    const later = tab(device);
    const refusal = refusing(later.storage);
    refusal.why = 'UnknownError';
    await later.ready;
    expect(later.storage.ill.get()).toBe('damaged');
    expect(later.listed.get()?.map(({ name }) => name)).toEqual(['Elm Street']);
    const session = await later.session(doc);
    session.edit([pressure(9)]);
    await until(() => session.saved.get().state === 'refused');
    refusal.why = undefined;
    expect(await later.rebuild()).toBe(true);
    const stored = await later.storage.read(doc);
    expect(ids(stored)).toEqual(ids(await session.operations()));
    expect(stored).toHaveLength(before.length + 1);
  });

  it('is not given up while the second copy cannot be read', async () => {
    const { device, shop, doc } = await begun();
    const read = device.files.names.bind(device.files);
    device.files.names = () => Promise.reject(new DOMException('', 'UnknownError'));
    expect(await shop.rebuild()).toBe(false);
    expect(await shop.storage.read(doc)).toHaveLength(3);
    device.files.names = read;
  });

  it('without a second copy is noticed by the cookie', async () => {
    const shop = tab(freshDevice(), 'firstfire-jobs=4.1700000000000');
    await shop.ready;
    expect(shop.lost.get()).toEqual({ jobs: 4, changed: 1_700_000_000_000 });
    await shop.forgetLost();
    expect(shop.lost.get()).toBeUndefined();
  });

  it('is not missed where nothing was, nor where the jobs were deleted', async () => {
    const fresh = tab(freshDevice());
    await fresh.ready;
    expect(fresh.lost.get()).toBeUndefined();
    const { device, shop, doc } = await begun();
    await shop.remove(doc);
    await shop.marks.get();
    shop.close();
    const later = tab(device, 'firstfire-jobs=1.5');
    await later.ready;
    expect(later.lost.get()).toBeUndefined();
  });
});

describe('a deleted job', () => {
  it('is out of sight, and comes back', async () => {
    const { device, shop, doc } = await begun();
    await shop.remove(doc);
    expect(shop.listed.get()?.[0]?.deleted).toBeGreaterThan(0);
    shop.close();
    const later = tab(device);
    await later.ready;
    expect(later.listed.get()?.[0]?.deleted).toBeGreaterThan(0);
    await later.bringBack(doc);
    expect(later.listed.get()?.[0]?.deleted).toBeUndefined();
    expect(await later.storage.read(doc)).toHaveLength(3);
  });

  it('is cleared away after a month, with its copy', async () => {
    const { device, shop, doc } = await begun();
    await shop.remove(doc);
    const database = await shop.storage.open();
    const month = 31 * 24 * 3_600_000;
    await database.put('device', { ...shop.marks.get(), deleted: { [doc]: Date.now() - month } }, 'marks');
    shop.close();
    const later = tab(device, 'firstfire-jobs=1.5');
    await later.ready;
    await later.refresh();
    expect(later.listed.get()).toEqual([]);
    expect(await later.storage.documents()).toEqual([]);
    expect([...device.files.texts.keys()]).toEqual([]);
    later.close();
    const last = tab(device, 'firstfire-jobs=1.5');
    await last.ready;
    expect(last.lost.get()).toBeUndefined();
    expect(last.listed.get()).toEqual([]);
  });

  it('comes back when a file brings it', async () => {
    const { shop, doc } = await begun();
    const operations = await shop.operations(doc);
    await shop.remove(doc);
    expect(await shop.take(doc, operations)).toBe(0);
    expect(shop.listed.get()?.[0]?.deleted).toBeUndefined();
  });
});

describe('files', () => {
  it('carry everything to another device, and unite there', async () => {
    const { shop, doc } = await begun();
    const { text, counts } = await everything(shop);
    const there = tab(freshDevice());
    await there.ready;
    const file = new File([text], 'all.json');
    expect(await bringIn(file, there)).toEqual({ ok: true, jobs: 1, added: 3, leftOut: 0 });
    expect(await bringIn(file, there)).toEqual({ ok: true, jobs: 1, added: 0, leftOut: 0 });
    expect(await there.storage.read(doc)).toEqual(await shop.storage.read(doc));
    await shop.exported(counts);
    expect(shop.listed.get()?.[0]).toMatchObject({ exported: 3, operations: 3 });
  });

  it('that are damaged say where, and change nothing', async () => {
    const { shop, doc } = await begun();
    const text = writeJobFile(await shop.operations(doc));
    const there = tab(freshDevice());
    await there.ready;
    const brought = await bringIn(new File([text.slice(0, 700)], 'half.json'), there);
    expect(brought).toMatchObject({ ok: false, issue: { code: 'truncated' } });
    expect(await there.storage.documents()).toEqual([]);
    const other = await bringIn(new File(['{"a":1}'], 'other.json'), there);
    expect(other).toMatchObject({ ok: false, issue: { code: 'foreign-json' } });
  });

  it('are asked for after a day, never twice in a week, and not where a file has it all', () => {
    const job = {
      doc: 'a',
      name: '',
      stage: 'survey',
      place: '',
      archived: false,
      changed: 0,
      operations: 5,
    };
    const hour = 3_600_000;
    const marks = { ...NO_MARKS, begunAt: 1000 };
    expect(isExportDue([job], marks, 1000 + 23 * hour)).toBe(false);
    expect(isExportDue([job], marks, 1000 + 25 * hour)).toBe(true);
    expect(isExportDue([job], { ...marks, quietUntil: 1000 + 90 * hour }, 1000 + 25 * hour)).toBe(false);
    expect(isExportDue([{ ...job, exported: 5 }], marks, 1000 + 25 * hour)).toBe(false);
    expect(isExportDue([{ ...job, exported: 4 }], marks, 1000 + 25 * hour)).toBe(true);
    expect(isExportDue([{ ...job, deleted: 3 }], marks, 1000 + 25 * hour)).toBe(false);
  });
});

describe('two tabs', () => {
  it('never write as one replica, and take in what the other has stored', async () => {
    const { device, shop, doc } = await begun();
    const other = tab(device);
    const [here, there] = await Promise.all([shop.session(doc), other.session(doc)]);
    expect(here.replica).not.toBe(there.replica);
    here.edit([pressure(8)]);
    await until(() => there.now.get().view.record('gasSupply', '-').reading('setPressure')?.value === 8);
    there.edit([pressure(9)]);
    await until(() => here.now.get().view.record('gasSupply', '-').reading('setPressure')?.value === 9);
    expect(ids(await here.operations())).toEqual(ids(await there.operations()));
  });

  it('that do not hear each other read it when they are looked at again', async () => {
    const { device, shop, doc } = await begun();
    const other = tab(device);
    const there = await other.session(doc);
    other.tabs.close();
    const here = await shop.session(doc);
    here.edit([pressure(8)]);
    await until(() => here.saved.get().state === 'saved');
    await other.lookAgain();
    expect(there.now.get().view.record('gasSupply', '-').reading('setPressure')?.value).toBe(8);
    const { version } = there.now.get();
    await other.lookAgain();
    expect(there.now.get().version).toBe(version);
  });
});

describe('a replica id that was cloned', () => {
  it('is given up for a new one, and both contents stay', async () => {
    const { shop, doc } = await begun();
    const session = await shop.session(doc);
    const { replica } = session;
    // A backup of this device, restored on another, wrote something else under the next number.
    const backup = (await session.operations()).find(({ id }) => id === `${replica}:3`);
    const [own] = [backup].filter((one) => one !== undefined);
    const clone = { ...own, value: { value: 6, unit: 'in_w.c.', how: 'told' } } as StoredOperation;
    await shop.take(doc, [clone]);
    expect(session.edit([pressure(8)])).toEqual([]);
    expect(session.replica).not.toBe(replica);
    await until(() => session.saved.get().state === 'saved');
    const stored = (await shop.storage.read(doc)).map(contentText);
    expect(stored).toContain(contentText(clone));
    expect(stored).toHaveLength(5);
    expect(session.now.get().view.record('gasSupply', '-').reading('setPressure')?.value).toBe(8);
  });
});

describe('undo', () => {
  it('is refused with its reason when another has moved on, and goes on to the step before', async () => {
    const { shop, doc } = await begun();
    const other = tab(freshDevice());
    await other.take(doc, await shop.operations(doc));
    const there = await other.session(doc);
    const here = await shop.session(doc);
    here.edit([named('Ash Street')]);
    here.edit([pressure(8)]);
    there.receive(await here.operations());
    there.edit([pressure(9)]);
    here.receive(await there.operations());
    expect(here.undo()).toEqual([{ code: 'moved-on', where: 'gasSupply/-' }]);
    expect(here.refused.get()?.code).toBe('moved-on');
    expect(here.undo()).toEqual([]);
    expect(here.refused.get()).toBeUndefined();
    expect(here.now.get().view.record('job', '-').reading('name')?.value).toBe('Elm Street');
    expect(here.now.get().view.record('gasSupply', '-').reading('setPressure')?.value).toBe(9);
    expect(here.redo()).toEqual([]);
    expect(here.now.get().view.record('job', '-').reading('name')?.value).toBe('Ash Street');
  });
});

describe('a reading entered on two devices', () => {
  it('shows both values with who and when, and takes the one that is chosen', async () => {
    const { shop, doc } = await begun();
    const other = tab(freshDevice());
    await other.take(doc, await shop.operations(doc));
    const [here, there] = await Promise.all([shop.session(doc), other.session(doc)]);
    here.edit([pressure(8)]);
    there.edit([pressure(9)]);
    here.receive(await there.operations());
    const both = secondValues(here.now.get().document, SET);
    expect(both.map(({ replica }) => replica).sort()).toEqual([here.replica, there.replica].sort());
    const loser = both[1];
    here.edit([{ type: 'set', ...SET, value: loser?.value ?? null }]);
    expect(secondValues(here.now.get().document, SET)).toEqual([]);
    there.receive(await here.operations());
    expect(secondValues(there.now.get().document, SET)).toEqual([]);
    const values = here.written(SET).map(({ value }) => (value as { value: number }).value);
    expect(values).toHaveLength(4);
    expect(values[0]).toBe((loser?.value as { value: number } | undefined)?.value);
    expect(values.at(-1)).toBe(7);
  });
});
