import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elementsOf, fieldOf } from './document.ts';
import { fold } from './fold.ts';
import { formatHlc, hlcMillis } from './hlc.ts';
import { FRESH_PEN } from './pen.ts';
import { toSurvey } from './plain.ts';
import { anyDevices, anyGroup, Device, DOC, everything, NOW, writerOf } from './testing/devices.ts';
import { add, remove, set } from './testing/make.ts';
import { type Edit, writeGroup } from './writer.ts';

const ADD_A: Edit = { type: 'add', collection: 'pipes', element: 'a' };
const SET_X = (value: number | null): Edit => ({
  type: 'set',
  collection: 'pipes',
  element: 'a',
  field: 'x',
  value,
});

function codeOf(device: Device, ...edits: Edit[]): string {
  const result = writeGroup(device.document, edits, device.writer);
  return result.ok
    ? `${result.operations.length} written`
    : `${result.issues[0]?.code} ${result.issues[0]?.where}`;
}

function started(...edits: Edit[]): Device {
  const device = new Device('d1');
  device.edit(ADD_A, ...edits);
  return device;
}

describe('writing', () => {
  it('[L5] puts the edits of a group under consecutive ids and one group', () => {
    const device = started(SET_X(1));
    const [third] = device.edit(SET_X(2));
    expect(device.operations.map(({ id, group }) => [id, group])).toEqual([
      ['d1:1', 'd1:1+2'],
      ['d1:2', 'd1:1+2'],
      ['d1:3', 'd1:3+1'],
    ]);
    expect(third).toMatchObject({ replaces: ['d1:2'], doc: DOC, author: 'author-of-d1' });
  });

  it('[L40] replaces all heads of a field, so that one edit settles a conflict', () => {
    const device = new Device('d1');
    device.receive([add('r:1'), set('r:2', 1), set('s:1', 2)]);
    expect(device.document.findings.map((finding) => finding.code)).toEqual(['concurrent-values']);
    const [edit] = device.edit(SET_X(1));
    expect([...edit!.replaces].sort()).toEqual(['r:2', 's:1']);
    expect(device.document.findings).toEqual([]);
  });

  it('[L40] removes an element with everything on it, and answers the removals there are', () => {
    const device = new Device('d1');
    device.receive([
      add('r:1'),
      remove('s:1', ['r:1']),
      set('r:2', 2),
      set('t:1', 3, { target: 'pipes/a/y' }),
    ]);
    const [removal] = device.edit({ type: 'remove', collection: 'pipes', element: 'a' });
    expect([...removal!.replaces].sort()).toEqual(['r:2', 's:1', 't:1']);
    expect(elementsOf(device.document, 'pipes')).toEqual([]);
    expect(device.document.findings).toEqual([]);
  });

  it('[L41] lets each edit of a group see those before it', () => {
    const device = new Device('d1');
    const edits: Edit[] = [
      ADD_A,
      SET_X(1),
      SET_X(2),
      { type: 'add', collection: 'pipes', element: 'b', after: null },
      { type: 'move', collection: 'pipes', element: 'a', after: null },
      { type: 'remove', collection: 'pipes', element: 'b' },
      { type: 'restore', collection: 'pipes', element: 'b' },
    ];
    expect(device.edit(...edits).length).toBe(7);
    expect(toSurvey(device.document)).toEqual({ pipes: [{ id: 'a', x: 2 }, { id: 'b' }] });
    expect(device.document.findings).toEqual([]);
  });

  it('[L41] gives what the same edits give one group each', () => {
    fc.assert(
      fc.property(fc.array(anyGroup, { maxLength: 12 }), (groups) => {
        const [whole, single] = [new Device('d1'), new Device('d1')];
        for (const edits of groups) {
          const allowed = writeGroup(whole.document, edits, whole.writer).ok;
          whole.edit(...edits);
          if (allowed) for (const edit of edits) single.edit(edit);
        }
        expect(toSurvey(whole.document)).toEqual(toSurvey(single.document));
        expect(whole.document.findings).toEqual([]);
      }),
    );
  });

  it('[L41] writes nothing for an edit that changes nothing', () => {
    const device = started(SET_X(1));
    device.edit({ type: 'add', collection: 'pipes', element: 'b' });
    expect(codeOf(device, SET_X(1))).toBe('0 written');
    expect(codeOf(device, { type: 'set', collection: 'site', field: 'altitude', value: null })).toBe(
      '0 written',
    );
    expect(codeOf(device, { type: 'move', collection: 'pipes', element: 'a', after: null })).toBe(
      '0 written',
    );
    expect(codeOf(device, { type: 'move', collection: 'pipes', element: 'b', after: 'a' })).toBe('0 written');
    expect(codeOf(device, { type: 'restore', collection: 'pipes', element: 'a' })).toBe('0 written');
    expect(codeOf(device)).toBe('0 written');
  });

  it('[L41] answers a removal once, however often the group says so', () => {
    const device = new Device('d1');
    device.receive([add('r:1'), remove('s:1', ['r:1']), set('r:2', 2)]);
    const restore: Edit = { type: 'restore', collection: 'pipes', element: 'a' };
    expect(device.edit(restore, restore).length).toBe(1);
    expect(device.document.findings).toEqual([]);
  });

  it('[L41] refuses the whole group for one issue', () => {
    const device = started();
    const onB = { collection: 'pipes', element: 'b' };
    const refused: [Edit, string][] = [
      [ADD_A, 'element-exists pipes/a'],
      [{ type: 'set', ...onB, field: 'x', value: 1 }, 'element-missing pipes/b/x'],
      [{ type: 'remove', ...onB }, 'element-missing pipes/b'],
      [{ type: 'add', ...onB, after: 'c' }, 'element-missing pipes/c'],
      [{ type: 'set', collection: 'pipes', element: 'a', field: 'id', value: 1 }, 'bad-name pipes/a/id'],
      [{ type: 'add', collection: 'pipes', element: '__proto__' }, 'bad-name pipes/__proto__'],
      [{ type: 'add', collection: 'records', element: 'startup' }, 'bad-name records/startup'],
      [{ type: 'remove', collection: 'site', element: '-' }, 'bad-name site/-'],
      [SET_X(Number.NaN), 'not-json pipes/a/x'],
    ];
    for (const [edit, expected] of refused) expect(codeOf(device, SET_X(5), edit)).toBe(expected);
    device.edit({ type: 'remove', collection: 'pipes', element: 'a' });
    for (const edit of [ADD_A, SET_X(1)]) expect(codeOf(device, edit)).toContain('element-removed pipes/a');
    device.edit({ type: 'create' });
    expect(codeOf(device, { type: 'create' })).toBe('document-exists job/-');
    expect(codeOf(new Device('d2'), { type: 'create' }, { type: 'create' })).toBe('document-exists job/-');
  });

  it('[L24] stops when an id of this replica has two contents, and goes on under a new one', () => {
    const device = started();
    device.receive([set('d1:1', 'from the clone')]);
    expect(codeOf(device, SET_X(1))).toBe('replica-cloned d1');
    expect(writeGroup(device.document, [SET_X(1)], writerOf('d1b')).ok).toBe(true);
    expect(writeGroup(device.document, [SET_X(1)], writerOf('d1b', { doc: 'doc-2' })).ok).toBe(false);
  });

  it('[L2] goes on from the seq of the store where that is further than the log seen', () => {
    const device = started();
    const pen = { seq: 7, hlc: formatHlc(NOW + 5, 3) };
    const result = writeGroup(device.document, [SET_X(1)], { ...device.writer, pen });
    expect(result).toMatchObject({
      ok: true,
      operations: [{ id: 'd1:8', group: 'd1:8+1', hlc: formatHlc(NOW + 5, 4) }],
    });
    const behind = writeGroup(device.document, [SET_X(1)], { ...device.writer, pen: FRESH_PEN });
    expect(behind).toMatchObject({ ok: true, operations: [{ id: 'd1:2' }] });
  });

  it('[L12] follows foreign clocks, but none more than five minutes ahead', () => {
    const device = new Device('d1');
    device.receive([add('r:1', { hlc: formatHlc(NOW + 60_000, 0) })]);
    expect(hlcMillis(device.edit(SET_X(1))[0]!.hlc)).toBe(NOW + 60_000);
    device.receive([set('s:1', 9, { target: 'pipes/a/y', hlc: formatHlc(NOW + 3_600_000, 0) })]);
    expect(hlcMillis(device.edit(SET_X(2))[0]!.hlc)).toBe(NOW + 60_000);
  });

  it('[L31] beats what it saw even where that has a clock far ahead', () => {
    const device = started();
    device.receive([set('s:1', 9, { hlc: formatHlc(NOW + 3_600_000, 0) })]);
    device.edit(SET_X(2));
    const field = fieldOf(device.document, { collection: 'pipes', element: 'a', field: 'x' });
    expect(field).toMatchObject({ value: 2, others: [] });
  });

  it('[L14] inserts between siblings that have the same order after both', () => {
    const device = new Device('d1');
    device.receive([
      add('r:1', { target: 'pipes/a' }),
      add('s:1', { target: 'pipes/b' }),
      add('s:2', { target: 'pipes/c', value: { order: 'k' } }),
    ]);
    device.edit({ type: 'add', collection: 'pipes', element: 'd', after: 'a' });
    expect(elementsOf(device.document, 'pipes').map((element) => element.id)).toEqual(['a', 'b', 'd', 'c']);
  });

  it('[L40] leaves a single author without conflicts, whoever else wrote before', () => {
    fc.assert(
      fc.property(anyDevices, (devices) => {
        const last = new Device('last');
        last.receive(everything(devices));
        for (const { id } of elementsOf(last.document, 'pipes')) {
          const on = { collection: 'pipes', element: id };
          last.edit({ type: 'restore', ...on });
          last.edit(
            ...['length', 'size'].map((field): Edit => ({ type: 'set', ...on, field, value: 'settled' })),
          );
        }
        last.edit(
          ...['length', 'size'].map(
            (field): Edit => ({ type: 'set', collection: 'site', field, value: 'settled' }),
          ),
        );
        expect(fold(last.operations, DOC).findings).toEqual([]);
      }),
    );
  });
});
