/** The library as a table: out and in again the same, and nothing half-imported. */
import { readFileSync } from 'node:fs';
import { fold, jobViewOf, RECORD_SPECS, readJobFile, type StoredOperation, writeGroup } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { COLUMNS, readTable, tableOf } from '../../src/equipment/csv.ts';
import {
  type Item,
  itemsOf,
  keepEdits,
  LIBRARY,
  readingsOf,
  takeEdits,
} from '../../src/equipment/library.ts';
import { equipmentFields, PLATES } from '../../src/equipment/plate.ts';

function example(name: string) {
  const url = new URL(`../../../../examples/${name}.job.json`, import.meta.url);
  const file = readJobFile(readFileSync(url, 'utf8'));
  if (!file.ok) throw new Error(name);
  return jobViewOf(fold(file.value.operations, file.value.document.doc));
}

const WRITER = { doc: LIBRARY, replica: 'r1', author: 'me', now: Date.parse('2026-10-02') };

function kept(items: readonly Omit<Item, 'id'>[]) {
  let count = 0;
  let operations: readonly StoredOperation[] = [];
  for (const item of items) {
    const before = fold(operations, LIBRARY);
    const edits = keepEdits(jobViewOf(before), item, () => `e${count++}`);
    const written = writeGroup(before, edits, WRITER);
    if (!written.ok) throw new Error(JSON.stringify(written.issues));
    operations = [...operations, ...(written.operations as readonly StoredOperation[])];
  }
  return jobViewOf(fold(operations, LIBRARY));
}

function all(): readonly Omit<Item, 'id'>[] {
  return ['house-pool', 'public-pool', 'swap', 'winter-propane'].flatMap((name) => {
    const view = example(name);
    return (['heaters', 'pumps'] as const).flatMap((kind) =>
      view
        .all(kind)
        .map((record) => ({ kind, name: `${name} ${record.id}`, readings: readingsOf(record, kind) })),
    );
  });
}

const values = (items: readonly Omit<Item, 'id'>[]) =>
  items
    .map(({ kind, name, readings }) => ({
      kind,
      name,
      readings: Object.fromEntries(
        Object.entries(readings).map(([field, { value, unit, typed }]) => [field, { value, unit, typed }]),
      ),
    }))
    .sort((a, b) => `${a.kind} ${a.name}`.localeCompare(`${b.kind} ${b.name}`));

describe('the library', () => {
  it('keeps what a job has read, and gives it to another', () => {
    const view = example('house-pool');
    const heater = view.record('heaters', 'h1');
    const library = kept([{ kind: 'heaters', name: 'Ours', readings: readingsOf(heater, 'heaters') }]);
    const [item] = itemsOf(library);
    expect(item?.readings['input']).toMatchObject({ value: 333, unit: 'kBtu/h', how: 'nameplate' });
    expect(item?.readings['node']).toBeUndefined();
    if (item === undefined) return;
    const edits = takeEdits(item, { id: 'h9', reading: () => undefined });
    expect(edits).toContainEqual(
      expect.objectContaining({
        element: 'h9',
        field: 'input',
        value: expect.objectContaining({ value: 333, how: 'nameplate' }),
      }),
    );
  });

  it('puts new readings under a name that is there already, and keeps one item', () => {
    const once = {
      kind: 'pumps',
      name: 'P',
      readings: { speedFull: { value: 3450, unit: 'rpm', how: 'nameplate' } },
    } as const;
    const twice = {
      ...once,
      readings: { speedFull: { value: 1750, unit: 'rpm', how: 'nameplate' } },
    } as const;
    expect(itemsOf(kept([once, twice])).map(({ readings }) => readings['speedFull']?.value)).toEqual([1750]);
  });

  it('knows only fields there are', () => {
    for (const kind of Object.keys(PLATES)) {
      const fields = RECORD_SPECS.find(({ collection }) => collection === kind)?.fields ?? {};
      expect(equipmentFields(kind).filter((field) => !(field in fields))).toEqual([]);
    }
  });
});

describe('a table', () => {
  it('comes back as it went out', () => {
    const items = all();
    const library = itemsOf(kept(items));
    const read = readTable(tableOf(library));
    expect(read.ok && values(read.items)).toEqual(values(library));
    expect(library.length).toBeGreaterThan(7);
  });

  it('keeps a name that looks like a formula', () => {
    const items = [{ kind: 'pumps', id: 'e1', name: '=1+1', readings: {} }] as const;
    const text = tableOf(items);
    expect(text).toContain(`'=1+1`);
    expect(readTable(text)).toMatchObject({ ok: true, items: [{ name: '=1+1' }] });
  });

  it('may be parted by semicolons, as spreadsheets with a decimal comma write it', () => {
    expect(readTable('kind;name;input\nheaters;A;400 kBtu/h\n')).toMatchObject({
      ok: true,
      items: [{ readings: { input: { value: 400, unit: 'kBtu/h' } } }],
    });
  });

  it('names every bad row and takes none', () => {
    const text = [
      'kind,name,input,fuel,volts,loss',
      'heaters,A,400 kBtu/h,natural,240 V,30 1.2; 60 4.1 | "gpm, ft"'.replace(
        '30 1.2; 60 4.1 | "gpm, ft"',
        '"30 1.2; 60 4.1 | gpm, ft"',
      ),
      'boilers,B,,,,',
      'heaters,,,,,',
      'heaters,C,400,coal,24 kV,"30 x"',
      'heaters,A,,,,',
      'pumps,D,400 kBtu/h,,,',
    ].join('\n');
    const read = readTable(text);
    if (read.ok) throw new Error('taken');
    expect(read.faults).toMatchObject([
      { row: 3, fault: 'unknown-kind', found: 'boilers' },
      { row: 4, fault: 'no-name' },
      { row: 5, fault: 'cell', column: 'input', issues: [{ reason: 'unit-missing' }] },
      { row: 5, fault: 'cell', column: 'fuel', issues: [{ expected: ['natural', 'propane'] }] },
      { row: 5, fault: 'cell', column: 'volts', issues: [{ code: 'out-of-range', max: 600 }] },
      { row: 5, fault: 'cell', column: 'loss', issues: [{ reason: 'points-expected' }] },
      { row: 6, fault: 'twice', found: 'A' },
      { row: 7, fault: 'not-of-kind', column: 'input', kind: 'pumps' },
    ]);
  });

  it('that is none says so', () => {
    expect(readTable('')).toMatchObject({ ok: false, faults: [{ fault: 'not-a-table' }] });
    expect(readTable('kind,name\nheaters,"A')).toMatchObject({
      ok: false,
      faults: [{ fault: 'not-a-table' }],
    });
    expect(readTable('name,colour\nA,red')).toMatchObject({
      ok: false,
      faults: [
        { fault: 'missing-column', found: 'kind' },
        { fault: 'unknown-column', found: 'colour' },
      ],
    });
    expect(COLUMNS.slice(0, 2)).toEqual(['kind', 'name']);
  });
});
