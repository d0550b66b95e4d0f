/** What an entry would change before it is made: the job with one reading in place of its own, studied like the job. */
import type { JobView, Reading, RecordView, Study } from '@firstfire/job';
import { type Column, columnOf } from '../columns/column.ts';
import type { FieldAt } from './understood.ts';

/** The job with a reading laid over it. All other records stay the same objects, so that what is known of them stays known. */
export function trialView(view: JobView, { collection, id, field }: FieldAt, reading: Reading): JobView {
  const over = (record: RecordView): RecordView => ({
    id: record.id,
    reading: (name) => (name === field ? reading : record.reading(name)),
  });
  const own = view.all(collection);
  const isThere = own.some((record) => record.id === id);
  const tried = over(view.record(collection, id));
  const list = isThere ? own.map((record) => (record.id === id ? tried : record)) : [...own, tried];
  return {
    all: (name) => (name === collection ? list : view.all(name)),
    record: (name, of) => (name === collection && of === id ? tried : view.record(name, of)),
  };
}

export interface ColumnChange {
  readonly before: Column;
  readonly after: Column;
}

/** The lines whose column an entry moves: what fails or begins to fail first, then the largest step. */
export function columnChanges(before: Study, after: Study): readonly ColumnChange[] {
  return after.lines
    .flatMap((line, i) => {
      const old = before.lines[i];
      if (old === undefined) return [];
      const change = { before: columnOf(old), after: columnOf(line) };
      return moved(change) ? [change] : [];
    })
    .sort((a, b) => weight(b) - weight(a));
}

function moved({ before, after }: ColumnChange): boolean {
  return (
    before.shape !== after.shape || before.unknown !== after.unknown || marginOf(before) !== marginOf(after)
  );
}

function marginOf({ worst }: Column): number {
  return worst?.margin ?? (worst?.verdict === 'fails' ? -1 : 1);
}

function weight({ before, after }: ColumnChange): number {
  const fails = Number(after.shape === 'fails') * 4 + Number(before.shape !== after.shape) * 2;
  const step = Math.abs(marginOf(after) - marginOf(before));
  return fails + Math.min(1, step);
}
