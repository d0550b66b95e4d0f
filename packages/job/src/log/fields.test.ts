import { describe, expect, it } from 'vitest';
import { fieldOf } from './document.ts';
import type { StoredOperation } from './envelope.ts';
import { fold } from './fold.ts';
import { toSurvey } from './plain.ts';
import { DOC } from './testing/devices.ts';
import { add, operation, set } from './testing/make.ts';

const X = { collection: 'pipes', element: 'a', field: 'x' };

function folded(...operations: StoredOperation[]) {
  const document = fold([add('r:1'), ...operations], DOC);
  return { field: fieldOf(document, X), findings: document.findings, document };
}

describe('a field', () => {
  it('[L30] takes the later of two values written without sight of each other and keeps the other visible', () => {
    const { field, findings } = folded(set('s:1', 'late', { at: 9 }), set('r:2', 'early', { at: 5 }));
    expect(field?.value).toBe('late');
    expect(field?.heads).toEqual(['s:1', 'r:2']);
    expect(field?.others.map(({ value, id }) => [value, id])).toEqual([['early', 'r:2']]);
    expect(findings).toEqual([{ code: 'concurrent-values', where: 'pipes/a/x', ids: ['s:1', 'r:2'] }]);
  });

  it('[L13] orders equal clocks by replica, then by seq as a number', () => {
    expect(folded(set('s:2', 1), set('r:30', 2)).field?.value).toBe(1);
    expect(folded(set('s:10', 1), set('s:9', 2)).field?.value).toBe(1);
  });

  it('[L30] makes no conflict of one value written twice', () => {
    const { field, findings } = folded(set('s:1', { a: 1, b: 2 }), set('r:2', { b: 2, a: 1 }));
    expect(field?.heads).toEqual(['s:1', 'r:2']);
    expect(field?.others).toEqual([]);
    expect(findings).toEqual([]);
  });

  it('[L31] takes a later edit over what it saw, even with an earlier clock', () => {
    const { field, findings } = folded(
      set('s:1', 'seen', { at: 9 }),
      set('r:2', 'edit', { at: 1, replaces: ['s:1'] }),
    );
    expect(field?.value).toBe('edit');
    expect(field?.others).toEqual([]);
    expect(findings).toEqual([]);
  });

  it('[L31] lets one edit settle several values', () => {
    const both = [set('s:1', 1), set('t:1', 2)];
    const { field } = folded(...both, set('r:2', 3, { replaces: ['s:1', 't:1'] }));
    expect(field).toMatchObject({ value: 3, heads: ['r:2'], others: [] });
  });

  it('[L30] keeps the one an edit did not see beside the edit', () => {
    const { field } = folded(
      set('s:1', 1, { at: 1 }),
      set('t:1', 2, { at: 2 }),
      set('r:2', 3, { at: 3, replaces: ['s:1'] }),
    );
    expect(field?.value).toBe(3);
    expect(field?.others.map((other) => other.value)).toEqual([2]);
  });

  it('[L32] is not known once taken back, and appears in no view', () => {
    const { field, document } = folded(set('s:1', 1), set('s:2', null, { replaces: ['s:1'] }));
    expect(field?.value).toBeNull();
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a' }] });
  });

  it('[L26] bears a replaced operation that is missing, and stops telling of it when it comes', () => {
    const edit = set('r:2', 2, { at: 2, replaces: ['s:1'] });
    const before = folded(edit);
    expect(before.field?.value).toBe(2);
    expect(before.findings).toEqual([{ code: 'dangling-replaces', where: 'pipes/a/x', ids: ['r:2', 's:1'] }]);
    const after = folded(edit, set('s:1', 1));
    expect(after.field).toMatchObject({ value: 2, others: [] });
    expect(after.findings).toEqual([]);
  });

  it('[L26] ignores a claim to replace a value of another field', () => {
    const { field, findings } = folded(
      set('s:1', 1),
      operation('r:2', { target: 'pipes/a/y', replaces: ['s:1'] }),
    );
    expect(field?.value).toBe(1);
    expect(findings).toEqual([{ code: 'replaces-elsewhere', where: 'pipes/a/y', ids: ['r:2', 's:1'] }]);
  });

  it('[L26] hides nothing behind a cycle', () => {
    const circle = [set('s:1', 1, { replaces: ['r:2'] }), set('r:2', 2, { at: 1, replaces: ['s:1'] })];
    const { field, findings } = folded(...circle);
    expect(field?.value).toBe(2);
    expect(field?.others.map((other) => other.value)).toEqual([1]);
    expect(findings.map(({ code, ids }) => [code, ids])).toEqual([
      ['concurrent-values', ['r:2', 's:1']],
      ['cycle-in-replaces', ['r:2', 's:1']],
    ]);
  });

  it('[L26] ignores an operation that claims to replace itself', () => {
    const { field, findings } = folded(set('s:1', 1, { replaces: ['s:1'] }));
    expect(field?.value).toBe(1);
    expect(findings).toEqual([{ code: 'cycle-in-replaces', where: 'pipes/a', ids: ['s:1'] }]);
  });

  it('[L26] bears a chain of thirty thousand edits and a cycle as long', () => {
    const chain = Array.from({ length: 30_000 }, (_, i) =>
      set(`s:${i + 1}`, i, { replaces: i > 0 ? [`s:${i}`] : [] }),
    );
    expect(folded(...chain).field?.value).toBe(29_999);
    const cycle = [...chain.slice(1), set('s:1', 0, { replaces: ['s:30000'] })];
    const { field, findings } = folded(...cycle);
    expect(field?.heads.length).toBe(30_000);
    expect(findings.map(({ code }) => code)).toEqual(['concurrent-values', 'cycle-in-replaces']);
  });

  it('[L24] keeps both contents of one id', () => {
    const { field, findings, document } = folded(set('s:1', 1), set('s:1', 2));
    expect([field?.value, ...(field?.others ?? []).map((other) => other.value)].sort()).toEqual([1, 2]);
    expect(findings.map(({ code, ids }) => [code, ids])).toEqual([
      ['concurrent-values', ['s:1']],
      ['conflicting-duplicate', ['s:1']],
    ]);
    expect(document.replicas.get('s')).toMatchObject({ last: 1, count: 1 });
    const settled = folded(set('s:1', 1), set('s:1', 2), set('r:2', 3, { at: 1, replaces: ['s:1'] }));
    expect(settled.field).toMatchObject({ value: 3, others: [] });
  });
});
