/** The second copy: only ever added to, whole again after damage, and never the worse for what the database says. */
import { type StoredOperation, writeOperationLines } from '@firstfire/job';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstOperations } from '../../src/session/first-operations.ts';
import { SecondCopy } from '../../src/store/second-copy.ts';
import { ids, MemoryFiles, pressure } from './device.ts';

/** `count` operations of one job, in order. */
function log(count: number): readonly StoredOperation[] {
  const edits = Array.from({ length: count - 1 }, (_, i) => pressure(5 + i / 100));
  return firstOperations([{ type: 'create' }, ...edits], {
    doc: 'job1',
    replica: 'r1',
    author: 'me',
    now: 1e12,
  });
}

const ALL = log(12);

describe('the second copy', () => {
  it('holds what was added, each once', async () => {
    const files = new MemoryFiles();
    const copy = new SecondCopy(files);
    expect(await copy.add('job1', ALL.slice(0, 3))).toBe(true);
    await copy.add('job1', ALL.slice(0, 5));
    expect(await copy.documents()).toEqual(['job1']);
    expect(await copy.read('job1')).toEqual({ operations: ALL.slice(0, 5), damaged: 0 });
    expect(files.texts.get('job1.1.log')).toBe(writeOperationLines(ALL.slice(0, 5)));
  });

  it('tells documents apart whose names begin alike', async () => {
    const copy = new SecondCopy(new MemoryFiles());
    await copy.add('job1', ALL.slice(0, 1));
    await copy.add('job1.2', ALL.slice(1, 2));
    await copy.remove('job1');
    expect(await copy.documents()).toEqual(['job1.2']);
  });

  it('takes in what the database has more, and gives what it has less', async () => {
    const copy = new SecondCopy(new MemoryFiles());
    await copy.add('job1', ALL.slice(0, 4));
    expect(await copy.bringInStep('job1', ALL.slice(2, 8))).toEqual(ALL.slice(0, 2));
    expect((await copy.read('job1')).operations).toEqual(ALL.slice(0, 8));
  });

  it('is not made less by an empty database', async () => {
    const copy = new SecondCopy(new MemoryFiles());
    await copy.add('job1', ALL);
    expect(await copy.bringInStep('job1', [])).toEqual(ALL);
    expect((await copy.read('job1')).operations).toEqual(ALL);
  });

  it('begins a new file after damage, and keeps no more than two', async () => {
    const files = new MemoryFiles();
    const copy = new SecondCopy(files);
    await copy.add('job1', ALL);
    await copy.bringInStep('job1', ALL);
    files.texts.set('job1.2.log', (files.texts.get('job1.2.log') ?? '').slice(0, -9));
    await new SecondCopy(files).bringInStep('job1', ALL);
    expect([...files.texts.keys()].sort()).toEqual(['job1.2.log', 'job1.3.log']);
    expect(files.texts.get('job1.3.log')).toBe(writeOperationLines(ALL));
  });

  it('keeps the old files where a new one cannot be written whole', async () => {
    const files = new MemoryFiles();
    const copy = new SecondCopy(files);
    await copy.add('job1', ALL);
    await copy.bringInStep('job1', ALL);
    files.texts.set('job1.2.log', `rubbish\n${files.texts.get('job1.2.log')}`);
    files.room = 300;
    await new SecondCopy(files).bringInStep('job1', ALL);
    const whole = new SecondCopy(files);
    expect((await whole.read('job1')).operations).toEqual(ALL);
    expect([...files.texts.keys()].sort()).toEqual(['job1.1.log', 'job1.2.log', 'job1.3.log']);
    files.room = Number.POSITIVE_INFINITY;
    await whole.bringInStep('job1', ALL);
    expect([...files.texts.keys()].sort()).toEqual(['job1.3.log', 'job1.4.log']);
  });

  it('says when there is no such place', async () => {
    const files = new MemoryFiles();
    files.names = () => Promise.reject(new DOMException('', 'NotSupportedError'));
    const copy = new SecondCopy(files);
    expect(await copy.add('job1', ALL)).toBe(false);
    expect(await copy.documents()).toEqual([]);
    expect(copy.ill.get()).toBe('missing');
  });

  it('loses nothing it has confirmed, whatever is torn, filled or started again meanwhile', async () => {
    const act = fc.oneof(
      fc.record({
        act: fc.constant('add' as const),
        from: fc.nat(11),
        count: fc.integer({ min: 1, max: 6 }),
      }),
      fc.record({ act: fc.constant('step' as const), from: fc.nat(11), count: fc.nat(12) }),
      fc.record({ act: fc.constant('restart' as const) }),
      fc.record({ act: fc.constant('room' as const), room: fc.integer({ min: 0, max: 2000 }) }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 25, size: 'max' }), async (acts) => {
        const files = new MemoryFiles();
        let copy = new SecondCopy(files);
        const confirmed = new Set<string>();
        for (const one of acts) {
          if (one.act === 'restart') copy = new SecondCopy(files);
          if (one.act === 'room') files.room = one.room;
          if (one.act === 'step') await copy.bringInStep('job1', ALL.slice(one.from, one.from + one.count));
          if (one.act === 'add') {
            const some = ALL.slice(one.from, one.from + one.count);
            if (await copy.add('job1', some)) for (const { id } of some) confirmed.add(id);
          }
        }
        const held = new Set(ids((await new SecondCopy(files).read('job1')).operations));
        expect([...confirmed].filter((id) => !held.has(id))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});
