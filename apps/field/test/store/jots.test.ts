/** What a tab that dies had written and not stored comes back; what is no jot changes nothing. */
import { describe, expect, it } from 'vitest';
import { firstOperations } from '../../src/session/first-operations.ts';
import { Jots } from '../../src/store/jots.ts';
import { freshDevice, MemoryJots, openTab, pressure } from './device.ts';

const LOG = firstOperations(
  Array.from({ length: 3 }, (_, i) => pressure(5 + i)),
  { doc: 'job1', replica: 'r1', author: 'me', now: 1e12 },
);

describe('jots', () => {
  it('give back what waited in a tab that is gone, and go once it is stored', async () => {
    const device = freshDevice();
    new Jots(device.jots, 'gone').put('job1', LOG);
    const tab = openTab(device);
    await tab.ready;
    expect((await tab.storage.read('job1')).map(({ id }) => id)).toEqual(LOG.map(({ id }) => id));
    expect(device.jots.texts.size).toBe(0);
    tab.close();
  });

  it('are there when a job is opened before anything else', async () => {
    const device = freshDevice();
    new Jots(device.jots, 'gone').put('job1', LOG);
    const tab = openTab(device);
    const session = await tab.session('job1');
    expect(await session.operations()).toHaveLength(LOG.length);
    tab.close();
  });

  it('stand in the same moment as the edit, and go when the device has it', async () => {
    const device = freshDevice();
    const tab = openTab(device);
    await tab.ready;
    const sent = tab.outbox('job1').send(LOG);
    expect([...device.jots.texts.values()].join()).toContain(LOG[0]?.id);
    await sent;
    expect(device.jots.texts.size).toBe(0);
    tab.close();
  });

  it.each([
    ['not JSON', '{'],
    ['another version', JSON.stringify({ v: 2, doc: 'job1', operations: LOG })],
    ['no operations', JSON.stringify({ v: 1, doc: 'job1', operations: [{ id: 'x' }, 7, null] })],
    ['of another job', JSON.stringify({ v: 1, doc: 'job2', operations: LOG })],
  ])('that are damaged stay aside and stop nothing: %s', async (_, text) => {
    const device = freshDevice();
    device.jots.texts.set('firstfire-jot/job1/t', text);
    const tab = openTab(device);
    await tab.ready;
    expect(await tab.storage.documents()).toEqual([]);
    expect(device.jots.texts.size).toBe(1);
    tab.close();
  });

  it('that do not fit stop no edit', async () => {
    const device = freshDevice();
    device.jots.isFull = true;
    const tab = openTab(device);
    await tab.outbox('job1').send(LOG);
    expect(await tab.storage.read('job1')).toHaveLength(LOG.length);
    tab.close();
  });

  it('of a tab that has written more since are left alone', () => {
    const storage = new MemoryJots();
    const live = new Jots(storage, 'live');
    live.put('job1', LOG.slice(0, 1));
    const [found] = live.found();
    live.put('job1', LOG);
    if (found !== undefined) live.drop(found);
    expect(live.found()[0]?.operations).toHaveLength(LOG.length);
  });
});
