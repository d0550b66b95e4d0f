import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inspectOperation } from './check-operation.ts';
import { compareOperationIds, parseGroup, parseOperationId, parseTarget } from './names.ts';
import { add, operation, set } from './testing/make.ts';

function problem(change: Record<string, unknown>) {
  const found = inspectOperation({ ...set('r:1', 1), ...change });
  return found.state === 'bad' ? `${found.problem.code} ${found.problem.path}` : found.state;
}

describe('an operation', () => {
  it('[L1] has just the members of the envelope', () => {
    expect(problem({})).toBe('known');
    for (const member of [
      'v',
      'doc',
      'id',
      'hlc',
      'author',
      'kind',
      'target',
      'value',
      'replaces',
      'group',
    ]) {
      expect(problem({ [member]: undefined })).toBe(`missing-member ${member}`);
    }
    expect(problem({ colour: 'red' })).toBe('unknown-member colour');
  });

  it('[L6] is refused with the member that is wrong', () => {
    const wrong: [Record<string, unknown>, string][] = [
      [{ v: '1' }, 'wrong-type v'],
      [{ v: 1.5 }, 'wrong-type v'],
      [{ v: -1 }, 'wrong-type v'],
      [{ id: 7 }, 'wrong-type id'],
      [{ id: 'r:0', group: 'r:0+1' }, 'wrong-form id'],
      [{ doc: {} }, 'wrong-type doc'],
      [{ doc: 'a b' }, 'wrong-form doc'],
      [{ hlc: '5' }, 'wrong-form hlc'],
      [{ author: '' }, 'wrong-form author'],
      [{ author: 'a'.repeat(201) }, 'wrong-form author'],
      [{ kind: null }, 'wrong-type kind'],
      [{ target: 'pipes' }, 'wrong-form target'],
      [{ target: 'pipes/a' }, 'wrong-form target'],
      [{ target: 'records/a/x' }, 'wrong-form target'],
      [{ value: { a: [Number.NaN] } }, 'not-finite value.a[0]'],
      [{ value: JSON.parse('{"__proto__":1}') }, 'forbidden-key value.__proto__'],
      [{ replaces: 'r:1' }, 'wrong-type replaces'],
      [{ replaces: ['s:1', 2] }, 'wrong-type replaces[1]'],
      [{ replaces: ['s:1', 's'] }, 'wrong-form replaces[1]'],
      [{ group: 'r:2+1' }, 'wrong-form group'],
    ];
    for (const [change, expected] of wrong) expect(problem(change)).toBe(expected);
    for (const raw of [null, 1, 'x', [], undefined]) {
      expect(inspectOperation(raw)).toEqual({ state: 'bad', problem: { code: 'not-an-object', path: '' } });
    }
  });

  it('[L6] is refused where its value does not go with its kind', () => {
    const onElement = { target: 'pipes/a' };
    expect(problem({ ...onElement, kind: 'element.add', value: { order: 'V' } })).toBe('known');
    for (const value of [null, {}, { order: 'V0' }, { order: 5 }, { order: 'V', more: 1 }, ['V']]) {
      expect(problem({ ...onElement, kind: 'element.add', value })).toBe('wrong-form value');
      expect(problem({ ...onElement, kind: 'element.move', value })).toBe('wrong-form value');
    }
    expect(problem({ ...onElement, kind: 'element.remove', value: 1 })).toBe('wrong-form value');
    expect(problem({ kind: 'record.append', target: 'records/startup', value: {} })).toBe('wrong-form value');
    expect(problem({ kind: 'job.create', target: 'site/-' })).toBe('wrong-form target');
  });

  it('[L7] is sound with version and id alone when it is newer, and of any target when its kind is not known', () => {
    expect(inspectOperation({ v: 2, id: 'r:1', anything: [1] }).state).toBe('newer');
    expect(inspectOperation({ v: 2, id: 'r' })).toMatchObject({ state: 'bad', problem: { path: 'id' } });
    expect(inspectOperation({ v: 2, id: 'r:1', deep: { prototype: 1 } }).state).toBe('bad');
    expect(inspectOperation(operation('r:1', { kind: 'photo.attach', target: '?' })).state).toBe('unknown');
  });

  it('[L6] never throws, whatever it is given', () => {
    const member = fc.oneof(fc.jsonValue(), fc.anything());
    const changed = fc.dictionary(fc.constantFrom(...Object.keys(add('r:1'))), member);
    fc.assert(
      fc.property(changed, fc.anything(), (change, anything) => {
        expect(typeof inspectOperation({ ...add('r:1'), ...change }).state).toBe('string');
        expect(typeof inspectOperation(anything).state).toBe('string');
      }),
    );
  });
});

describe('names', () => {
  it('[L2] reads an operation id', () => {
    expect(parseOperationId('van-2:17')).toEqual({ replica: 'van-2', seq: 17 });
    for (const text of [
      '',
      ':1',
      'r:',
      'r:0',
      'r:01',
      'r:-1',
      'r:1.5',
      'r:1:2',
      'r:99999999999999999',
      '-r:1',
      'r 1:1',
    ]) {
      expect(parseOperationId(text)).toBeUndefined();
    }
  });

  it('[L5] reads a group', () => {
    expect(parseGroup('van-2:15+3')).toEqual({ replica: 'van-2', first: 15, count: 3 });
    for (const text of ['', 'r:1', 'r:1+', 'r:1+0', 'r:1+x', '+1']) expect(parseGroup(text)).toBeUndefined();
  });

  it('[L3] reads a target', () => {
    expect(parseTarget('site/-/altitude')).toEqual({ collection: 'site', element: '-', field: 'altitude' });
    expect(parseTarget('pipes/p4')).toEqual({ collection: 'pipes', element: 'p4' });
    expect(parseTarget('job/-/id')).toEqual({ collection: 'job', element: '-', field: 'id' });
    for (const text of [
      '',
      'a',
      'a/',
      'a/b/',
      'a/b/c/d',
      '1a/b',
      'a/b c',
      'a/b/1',
      '/a/b',
      'a/__proto__/c',
      '-/-/a',
    ]) {
      expect(parseTarget(text)).toBeUndefined();
    }
  });

  it('[L13] compares ids by replica, then by seq as a number', () => {
    const sorted = ['a:9', 'a:10', 'a-b:1', 'b:2'];
    expect([...sorted].reverse().sort(compareOperationIds)).toEqual(['a:9', 'a:10', 'a-b:1', 'b:2']);
  });
});
