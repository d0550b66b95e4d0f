import { expect, it } from 'vitest';
import type { Reading } from '../../schema/index.ts';
import type { JobView, RecordView } from '../facts/view.ts';
import { KeptModels } from './kept-models.ts';
import { plantModels } from './models.ts';
import { LOOP, viewOf } from './water/example-loop.ts';

/** The view with another reading in one record, as an edit leaves it: all other records are the same objects. */
function edited(view: JobView, collection: string, field: string): JobView {
  const reading: Reading = { value: 0.4, unit: '1', how: 'measured' };
  const own = view.record(collection, '-');
  const changed: RecordView = {
    id: '-',
    reading: (name) => (name === field ? reading : own.reading(name)),
  };
  return {
    all: (name) => (name === collection ? [changed] : view.all(name)),
    record: (name, id) => (name === collection ? changed : view.record(name, id)),
  };
}

it('makes anew what an edit touches, and keeps the models of the lines that did not look at it', () => {
  const kept = new KeptModels();
  const view = viewOf(LOOP);
  const old = plantModels(view, kept);
  const now = plantModels(edited(view, 'waterLoop', 'bypassOpening'), kept);
  const fresh = now.filter((model) => !old.includes(model)).map(({ id }) => id);
  expect(fresh).toContain('water.loop');
  const others = now.filter(({ id }) => /^(gas|heat)\./.test(id)).map(({ id }) => id);
  expect(others.length).toBeGreaterThan(3);
  expect(fresh.filter((id) => others.includes(id))).toEqual([]);
});

it('keeps everything where nothing was edited, and nothing of another job', () => {
  const kept = new KeptModels();
  const view = viewOf(LOOP);
  const old = plantModels(view, kept);
  expect(plantModels(view, kept).filter((model) => !old.includes(model))).toEqual([]);
  const other = plantModels(viewOf(LOOP), kept);
  expect(other.filter(({ id }) => id === 'water.loop').every((model) => !old.includes(model))).toBe(true);
});
