import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_HISTORY, type History, recorded, redo, undo } from './history.ts';
import { toSurvey } from './plain.ts';
import { anyGroup, Device, START, writerOf } from './testing/devices.ts';
import { add, operation, remove, set } from './testing/make.ts';
import { undoGroup } from './undo.ts';
import type { Edit } from './writer.ts';

const on = { collection: 'pipes', element: 'a' };
const ADD: Edit = { type: 'add', ...on };
const SET = (value: number | null): Edit => ({ type: 'set', ...on, field: 'x', value });
const REMOVE: Edit = { type: 'remove', ...on };

function edited(...groups: Edit[][]): { device: Device; last: string } {
  const device = new Device('d1');
  let last = '';
  for (const group of groups) last = String(device.edit(...group)[0]?.group);
  return { device, last };
}

function undone(device: Device, group: string): string {
  const result = undoGroup(device.folding, { group }, device.writer);
  if (!result.ok) return result.issues.map((issue) => `${issue.code} ${issue.where}`).join();
  device.receive(result.operations);
  return 'ok';
}

describe('undo', () => {
  it('[L42] takes a group back: the values are what they were', () => {
    const before: Edit[][] = [[ADD, SET(1)], [{ type: 'add', ...on, element: 'b' }]];
    const groups: Edit[][] = [
      [SET(2)],
      [SET(null)],
      [SET(2), SET(3)],
      [{ type: 'set', ...on, field: 'y', value: 5 }],
      [{ type: 'set', collection: 'site', field: 'altitude', value: 5 }],
      [REMOVE],
      [REMOVE, { type: 'restore', ...on }],
      [{ type: 'move', ...on, after: 'b' }],
      [
        { type: 'add', ...on, element: 'c', after: 'a' },
        { type: 'set', ...on, element: 'c', field: 'x', value: 1 },
      ],
      [
        { type: 'add', ...on, element: 'c' },
        { type: 'remove', ...on, element: 'c' },
      ],
      [SET(9), { type: 'move', ...on, after: 'b' }, REMOVE],
    ];
    for (const group of groups) {
      const { device } = edited(...before);
      const survey = toSurvey(device.document);
      const last = String(device.edit(...group)[0]?.group);
      expect(undone(device, last)).toBe('ok');
      expect(toSurvey(device.document)).toEqual(survey);
      expect(device.document.findings).toEqual([]);
    }
  });

  it('[L43] is refused once what the group wrote was changed since', () => {
    const { device, last } = edited([ADD], [SET(1)]);
    device.edit(SET(2));
    expect(undone(device, last)).toBe('moved-on pipes/a');
  });

  it('[L43] is refused for an addition once somebody else has edited the element', () => {
    const { device, last } = edited([ADD, SET(1)]);
    device.receive([set('s:1', 5, { target: 'pipes/a/y' })]);
    expect(undone(device, last)).toBe('moved-on pipes/a');
  });

  it('[L43] is refused for a removal once somebody else has edited the element', () => {
    const { device, last } = edited([ADD], [REMOVE]);
    device.receive([set('s:1', 5)]);
    expect(undone(device, last)).toBe('moved-on pipes/a');
  });

  it('[L43] is refused for a removal somebody has answered by another', () => {
    const { device, last } = edited([ADD], [REMOVE]);
    device.receive([remove('s:1', ['d1:1'])]);
    expect(undone(device, last)).toBe('moved-on pipes/a');
  });

  it('[L43] is refused for a value of an element that is gone', () => {
    const { device, last } = edited([ADD], [SET(1)]);
    device.edit(REMOVE);
    expect(undone(device, last)).toBe('moved-on pipes/a');
  });

  it('[L43] is refused for the answer to a conflict, which cannot be asked again', () => {
    const device = new Device('d1');
    device.receive([add('r:1'), remove('s:1', ['r:1']), set('r:2', 1)]);
    const last = String(device.edit({ type: 'restore', ...on })[0]?.group);
    expect(undone(device, last)).toBe('moved-on pipes/a');
  });

  it('[L43] is refused for a group undone already', () => {
    const { device, last } = edited([ADD], [SET(1)]);
    expect(undone(device, last)).toBe('ok');
    expect(undone(device, last)).toBe('moved-on pipes/a');
  });

  it("[L43] is refused for somebody else's group, for one not whole, and for what stands for good", () => {
    const { device, last } = edited([ADD], [SET(1)]);
    const other = writerOf('d1', { author: 'bob' });
    expect(undoGroup(device.folding, { group: last }, other)).toMatchObject({
      issues: [{ code: 'not-own-group' }],
    });
    device.receive([set('s:1', 1, { group: 's:1+2' }), operation('t:1', { kind: 'photo.attach' })]);
    expect(undone(device, 's:1+2')).toMatch(/^not-own-group|group-missing/);
    expect(undone(device, 'd1:9+1')).toBe('group-missing d1:9+1');
    expect(undone(device, 'nonsense')).toBe('group-missing nonsense');
    expect(undone(device, 't:1+1')).toBe('not-undoable t:1+1');
    const created = String(device.edit({ type: 'create' })[0]?.group);
    expect(undone(device, created)).toBe(`not-undoable ${created}`);
  });

  it('[L42] brings back the winner of the values a group had settled', () => {
    const device = new Device('d1');
    device.receive([add('r:1'), set('r:2', 'early', { at: 1 }), set('s:1', 'late', { at: 2 })]);
    const last = String(device.edit(SET(3))[0]?.group);
    expect(undone(device, last)).toBe('ok');
    expect(toSurvey(device.document)).toEqual({ pipes: [{ id: 'a', x: 'late' }] });
  });
});

describe('a history', () => {
  it('[L44] goes back to the beginning and forward to the end, step by step', () => {
    fc.assert(
      fc.property(fc.array(anyGroup, { minLength: 1, maxLength: 12 }), (groups) => {
        const device = new Device('d1');
        device.edit(...START);
        let history: History = EMPTY_HISTORY;
        const stages = [toSurvey(device.document)];
        for (const edits of groups) {
          const operations = device.edit(...edits);
          if (operations.length === 0) continue;
          history = recorded(history, operations);
          stages.push(toSurvey(device.document));
        }
        const step = (which: typeof undo) => {
          const result = which(device.folding, history, device.writer);
          if (!result.ok) throw new Error(JSON.stringify(result.issues));
          device.receive(result.operations);
          history = result.history;
          return toSurvey(device.document);
        };
        for (const stage of stages.slice(0, -1).reverse()) expect(step(undo)).toEqual(stage);
        expect(step(undo)).toEqual(stages[0]);
        for (const stage of stages.slice(1)) expect(step(redo)).toEqual(stage);
        expect(step(redo)).toEqual(stages.at(-1));
        expect(device.document.findings).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('[L44] forgets what was undone once something new is written', () => {
    const device = new Device('d1');
    const first = recorded(EMPTY_HISTORY, device.edit(ADD));
    const back = undo(device.folding, first, device.writer);
    if (!back.ok) throw new Error('refused');
    device.receive(back.operations);
    expect(back.history).toMatchObject({ done: [], undone: ['d1:2+1'] });
    expect(recorded(back.history, device.edit())).toEqual(back.history);
    const next = recorded(
      back.history,
      device.edit({ type: 'set', collection: 'site', field: 'x', value: 1 }),
    );
    expect(next).toMatchObject({ done: ['d1:3+1'], undone: [] });
    expect(redo(device.folding, next, device.writer)).toMatchObject({ ok: true, operations: [] });
  });

  it('[L43] stops where somebody else has gone on from what is to be undone', () => {
    const device = new Device('d1');
    const one = recorded(EMPTY_HISTORY, device.edit(ADD, SET(1)));
    const two = recorded(one, device.edit(SET(2)));
    device.receive([set('s:1', 5, { at: 9, replaces: ['d1:3'] })]);
    expect(undo(device.folding, two, device.writer)).toMatchObject({ issues: [{ code: 'moved-on' }] });
  });
});
