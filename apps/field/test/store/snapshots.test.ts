/** A snapshot is a cache: it fits the log exactly or is not used, and one that is wrong does no harm. */
import {
  canonicalJson,
  fold,
  packDocument,
  type Snapshot,
  type StoredOperation,
  sha256,
} from '@firstfire/job';
import { afterEach, describe, expect, it } from 'vitest';
import { firstOperations } from '../../src/session/first-operations.ts';
import { JobLog } from '../../src/session/job-log.ts';
import { DeviceStorage } from '../../src/store/device-storage.ts';
import { dropSnapshot, fromSnapshot, putSnapshot, SHORTEST } from '../../src/store/snapshots.ts';
import { freshDevice, named, openTab, pressure, until } from './device.ts';

const WRITER = { doc: 'job1', replica: 'r1', author: 'me', now: 1e12 };

/** A history of `count` operations on a few readings. */
function history(count: number): readonly StoredOperation[] {
  const edits = Array.from({ length: count - 2 }, (_, i) => pressure(5 + i / 1e6));
  return firstOperations([{ type: 'create' }, named('Elm Street'), ...edits], WRITER);
}

const LOG = history(SHORTEST + 5);
const FOLDED = fold(LOG, 'job1');

let count = 0;
const open: DeviceStorage[] = [];
async function storage(): Promise<DeviceStorage> {
  count += 1;
  const made = new DeviceStorage(`snapshots-${count}`);
  open.push(made);
  await putSnapshot(made, FOLDED, LOG.length);
  return made;
}

afterEach(() => {
  for (const one of open.splice(0)) one.close();
});

function textOf(document: ReturnType<typeof fold>): string {
  return canonicalJson(packDocument(document));
}

describe('a snapshot of a long log', () => {
  it('gives the document that folding gives', async () => {
    const found = await fromSnapshot(await storage(), 'job1', LOG);
    expect(found && textOf(found)).toBe(textOf(FOLDED));
  });

  it('is not used for any other log', async () => {
    const kept = await storage();
    const more = firstOperations([named('Oak')], { ...WRITER, replica: 'r2' });
    const [first] = LOG;
    const clone = { ...first, author: 'another' } as StoredOperation;
    for (const log of [LOG.slice(0, -1), [...LOG, ...more], [...LOG, clone], LOG.slice(1), []])
      expect(await fromSnapshot(kept, 'job1', log)).toBeUndefined();
  });

  it('is not used once it is damaged, and not made of a short log', async () => {
    const kept = await storage();
    const database = await kept.open();
    const snapshot = (await database.get('snapshots', 'job1')) as Snapshot;
    for (const body of [snapshot.body.replace('Elm', 'Oak'), '{', snapshot.body.slice(0, -2)]) {
      await database.put('snapshots', { ...snapshot, body }, 'job1');
      expect(await fromSnapshot(kept, 'job1', LOG)).toBeUndefined();
    }
    await dropSnapshot(kept, 'job1');
    await putSnapshot(kept, fold(history(20), 'job1'), 20);
    expect(await database.count('snapshots')).toBe(0);
  });

  it('that is sound and yet wrong is found out, and the log holds', () => {
    const wrong = fold(LOG.slice(0, 2), 'job1');
    const log = new JobLog('job1', LOG, wrong);
    expect(textOf(log.document())).toBe(textOf(wrong));
    expect(log.check()).toBe(false);
    expect(textOf(log.document())).toBe(textOf(FOLDED));
    expect(new JobLog('job1', LOG, FOLDED).check()).toBe(true);
  });

  it('is shown at once when a job is opened, and edits go on from it', async () => {
    const device = freshDevice();
    const shop = openTab(device);
    await shop.take('job1', LOG);
    await shop.session('job1');
    const database = await shop.storage.open();
    let snapshot: Snapshot | undefined;
    const look = setInterval(
      () => void database.get('snapshots', 'job1').then((one) => (snapshot = one)),
      20,
    );
    await until(() => snapshot !== undefined);
    clearInterval(look);
    expect(snapshot?.fingerprint).toBe(sha256.fingerprint(`${snapshot?.key}\n${snapshot?.body}`));
    shop.close();
    const again = openTab(device);
    const session = await again.session('job1');
    session.edit([pressure(8)]);
    await until(() => session.saved.get().state === 'saved');
    const stored = await again.storage.read('job1');
    expect(stored).toHaveLength(LOG.length + 1);
    expect(textOf(session.now.get().document)).toBe(textOf(fold(stored, 'job1')));
    again.close();
  });
});
