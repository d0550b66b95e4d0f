/** What an entry would change, held against the study of the job after the same edit was made. */
import { readFileSync } from 'node:fs';
import {
  fold,
  jobViewOf,
  type Reading,
  readJobFile,
  type StoredOperation,
  study,
  writeGroup,
} from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { columnChanges, trialView } from '../../src/entry/trial.ts';

const file = readJobFile(
  readFileSync(new URL('../../../../examples/house-pool.job.json', import.meta.url), 'utf8'),
);
if (!file.ok) throw new Error('example');
const { operations, document } = file.value;
const OPTIONS = { today: '2026-10-01', uncertainty: false } as const;
const view = jobViewOf(fold(operations, document.doc));

function edited(collection: string, element: string, field: string, value: Reading) {
  const before = fold(operations, document.doc);
  const writer = { doc: document.doc, replica: 'r1', author: 'me', now: Date.parse('2026-10-02') };
  const written = writeGroup(
    before,
    [
      {
        type: 'set',
        collection,
        ...(element === '-' ? {} : { element }),
        field,
        value: { ...value } as never,
      },
    ],
    writer,
  );
  if (!written.ok) throw new Error('not written');
  return jobViewOf(
    fold([...operations, ...(written.operations as readonly StoredOperation[])], document.doc),
  );
}

describe('a trial', () => {
  it.each([
    ['gasSegments', 's3', 'size', { value: '2', how: 'measured' }],
    ['gasSegments', 's1', 'length', { value: 60, unit: 'ft', how: 'measured' }],
    ['basins', 'pool', 'warmUpTime', { value: 96, unit: 'h', how: 'told' }],
    ['gasSupply', '-', 'setPressure', { value: 5, unit: 'in w.c.', how: 'measured' }],
    ['gasSupply', '-', 'setPressure', { value: 'seven', how: 'measured' }],
  ] as const)('of %s/%s/%s says what the edit says', (collection, id, field, reading) => {
    const tried = study(trialView(view, { collection, id, field }, reading as Reading), OPTIONS);
    const made = study(edited(collection, id, field, reading as Reading), OPTIONS);
    expect(tried.lines).toEqual(made.lines);
  });

  it('of a record that is not there yet adds it', () => {
    const tried = trialView(
      view,
      { collection: 'lifts', id: 'l9', field: 'from' },
      { value: 1, unit: 'ft', how: 'measured' },
    );
    expect(tried.all('lifts').at(-1)?.reading('from')?.value).toBe(1);
    expect(tried.record('lifts', 'l9').reading('to')).toBeUndefined();
    expect(tried.all('heaters')).toBe(view.all('heaters'));
  });

  it('names the lines it moves and no others', () => {
    const before = study(view, OPTIONS);
    const after = study(
      trialView(
        view,
        { collection: 'gasSupply', id: '-', field: 'setPressure' },
        { value: 4, unit: 'in w.c.', how: 'measured' },
      ),
      OPTIONS,
    );
    const changes = columnChanges(before, after);
    expect(changes.map(({ after: { line } }) => line)).toContain('gas');
    expect(changes.map(({ after: { line } }) => line)).not.toContain('heat');
    expect(columnChanges(before, before)).toEqual([]);
  });
});
