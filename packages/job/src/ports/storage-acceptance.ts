/** What every log storage has to pass; an adapter's test runs each case on a fresh, empty store. */

import type { Operation, StoredOperation } from '../log/envelope.ts';
import { FRESH_PEN, inkGroup, type PenState, type Writer } from '../log/pen.ts';
import { unite } from '../log/union.ts';
import { type AcceptanceCase, expectHeld } from './acceptance.ts';
import type { LogStorage } from './storage.ts';

const WRITER: Writer = { doc: 'doc-1', replica: 'van-1', author: 'ann', now: 1_700_000_000_000 };
const AT = { doc: WRITER.doc, replica: WRITER.replica };

function written(pen: PenState, value: number, writer = WRITER): Operation[] {
  const target = 'site/-/altitude';
  return inkGroup([{ kind: 'field.set', target, value, replaces: [] }], pen, writer).operations;
}

function sameLog(found: readonly StoredOperation[], expected: readonly StoredOperation[]): boolean {
  return (
    JSON.stringify(unite(found)) === JSON.stringify(unite(expected)) && found.length === unite(found).length
  );
}

export const storageAcceptance: readonly AcceptanceCase<LogStorage>[] = [
  {
    name: 'knows nothing at first',
    async run(storage) {
      expectHeld((await storage.documents()).length === 0, 'documents in an empty store');
      expectHeld((await storage.read('doc-1')).length === 0, 'operations of an unknown document');
    },
  },
  {
    name: 'gives back what was appended, in canonical order',
    async run(storage) {
      const first = await storage.append(AT, (pen) => written(pen, 1));
      const second = await storage.append(AT, (pen) => written(pen, 2));
      const found = await storage.read('doc-1');
      expectHeld(JSON.stringify(found) === JSON.stringify([...first, ...second]), 'not what was appended');
      expectHeld((await storage.documents()).join() === 'doc-1', 'document not listed');
    },
  },
  {
    name: 'never lets two appends see the same pen',
    async run(storage) {
      const appends = Array.from({ length: 20 }, (_, i) => storage.append(AT, (pen) => written(pen, i)));
      await Promise.all(appends);
      const ids = new Set((await storage.read('doc-1')).map((operation) => operation.id));
      expectHeld(ids.size === 20, `${ids.size} different ids for 20 operations`);
    },
  },
  {
    name: 'counts each replica and each document for itself',
    async run(storage) {
      await storage.append(AT, (pen) => written(pen, 1));
      const pens: PenState[] = [];
      for (const at of [
        { ...AT, replica: 'van-2' },
        { ...AT, doc: 'doc-2' },
      ]) {
        await storage.append(at, (pen) => {
          pens.push(pen);
          return [];
        });
      }
      expectHeld(
        pens.every((pen) => pen.seq === 0),
        'a pen that is not fresh',
      );
    },
  },
  {
    name: 'stores nothing of an append that fails',
    async run(storage) {
      const failing = storage.append(AT, () => {
        throw new Error('refused');
      });
      const failed = await failing.then(
        () => false,
        () => true,
      );
      expectHeld(failed, 'the failure was swallowed');
      expectHeld((await storage.read('doc-1')).length === 0, 'something was stored');
    },
  },
  {
    name: 'unites what comes from elsewhere, once',
    async run(storage) {
      const own = await storage.append(AT, (pen) => written(pen, 1));
      const foreign = written(FRESH_PEN, 2, { ...WRITER, replica: 'van-2' });
      await storage.take('doc-1', [...foreign, ...own]);
      await storage.take('doc-1', foreign);
      expectHeld(sameLog(await storage.read('doc-1'), [...own, ...foreign]), 'not the union');
    },
  },
  {
    name: 'goes on after its own operations come back from elsewhere',
    async run(storage) {
      await storage.take('doc-1', written({ ...FRESH_PEN, seq: 6 }, 1));
      const [next] = await storage.append(AT, (pen) => written(pen, 2));
      expectHeld(next?.id === 'van-1:8', `${next?.id} after van-1:7`);
    },
  },
  {
    name: 'keeps both contents of one id',
    async run(storage) {
      const both = [...written(FRESH_PEN, 1), ...written(FRESH_PEN, 2)];
      await storage.take('doc-1', both);
      expectHeld(sameLog(await storage.read('doc-1'), both), 'a content was lost');
    },
  },
  {
    name: 'forgets an erased document and no other',
    async run(storage) {
      await storage.append(AT, (pen) => written(pen, 1));
      await storage.append({ ...AT, doc: 'doc-2' }, (pen) => written(pen, 1, { ...WRITER, doc: 'doc-2' }));
      await storage.erase('doc-1');
      expectHeld((await storage.read('doc-1')).length === 0, 'still there');
      expectHeld((await storage.documents()).join() === 'doc-2', 'the wrong documents are left');
    },
  },
];
