/** What waits to be stored: in order, once, tried again, and never stuck. */
import type { StoredOperation } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { firstOperations } from '../../src/session/first-operations.ts';
import { Outbox } from '../../src/session/outbox.ts';
import { pressure, until } from './device.ts';

const LOG = firstOperations(
  Array.from({ length: 6 }, (_, i) => pressure(5 + i)),
  { doc: 'job1', replica: 'r1', author: 'me', now: 1e12 },
);

interface Device {
  readonly stored: StoredOperation[];
  refuse: boolean;
  /** How many waited, each time they were written down. */
  readonly jotted: number[];
  readonly outbox: Outbox;
  whenStored: () => void;
}

function device(): Device {
  const made = {
    stored: [] as StoredOperation[],
    refuse: false,
    whenStored: (): void => {},
    jotted: [] as number[],
    outbox: new Outbox({
      jot: (waiting) => made.jotted.push(waiting.length),
      store: async (operations) => {
        await Promise.resolve();
        if (made.refuse) throw new DOMException('', 'QuotaExceededError');
        made.stored.push(...operations);
      },
      stored: () => made.whenStored(),
      refused: () => {},
    }),
  };
  return made;
}

describe('the outbox', () => {
  it('stores in order what is sent while it stores', async () => {
    const { outbox, stored } = device();
    const sent = LOG.map((one) => outbox.send([one]));
    expect(outbox.saved.get().state).toBe('saving');
    await Promise.all(sent);
    expect(stored).toEqual(LOG);
    expect(outbox.saved.get().state).toBe('saved');
  });

  it('is not stuck by what is sent at the moment it ends', async () => {
    const one = device();
    const [first, ...rest] = LOG as [StoredOperation, ...StoredOperation[]];
    let next = 0;
    one.whenStored = () => {
      const more = rest[next];
      next += 1;
      if (more !== undefined) void one.outbox.send([more]);
    };
    one.outbox.saved.subscribe(() => {});
    await one.outbox.send([first]);
    await until(() => one.stored.length === LOG.length);
    expect(one.outbox.saved.get().state).toBe('saved');
  });

  it('keeps what is refused, and stores it when it is tried again', async () => {
    const one = device();
    one.refuse = true;
    await one.outbox.send(LOG.slice(0, 2));
    await one.outbox.send(LOG.slice(2));
    expect(one.outbox.saved.get()).toEqual({ state: 'refused', waiting: 6, reason: 'full' });
    expect(one.outbox.waiting()).toEqual(LOG);
    one.refuse = false;
    await one.outbox.retry();
    expect(one.stored).toEqual(LOG);
    expect(one.outbox.waiting()).toEqual([]);
    one.outbox.close();
  });

  it('says nothing of nothing', async () => {
    const { outbox } = device();
    await outbox.send([]);
    expect(outbox.saved.get().state).toBe('saved');
  });
});
