import { describe, expect, it } from 'vitest';
import { inspectOperation } from './check-operation.ts';
import { fold } from './fold.ts';
import { upcast } from './migrations.ts';
import { toSurvey } from './plain.ts';
import { DOC } from './testing/devices.ts';
import { set } from './testing/make.ts';

/** Operations as version 0 wrote them: `previous`, and no `group`. */
const OLD = [
  {
    v: 0,
    doc: DOC,
    id: 'r:1',
    hlc: '000000000001000-00000',
    author: 'ann',
    kind: 'element.add',
    target: 'pipes/a',
    value: { order: 'V' },
    previous: null,
  },
  {
    v: 0,
    doc: DOC,
    id: 'r:2',
    hlc: '000000000001000-00001',
    author: 'ann',
    kind: 'field.set',
    target: 'pipes/a/x',
    value: 1,
    previous: null,
  },
  {
    v: 0,
    doc: DOC,
    id: 'r:3',
    hlc: '000000000001000-00002',
    author: 'ann',
    kind: 'field.set',
    target: 'pipes/a/x',
    value: 2,
    previous: 'r:2',
  },
];

describe('an operation of version 0', () => {
  it('[L8] is read as one that replaces what it named, in a group of its own', () => {
    expect(upcast(OLD[2]!, 0)).toEqual({
      v: 1,
      doc: DOC,
      id: 'r:3',
      hlc: '000000000001000-00002',
      author: 'ann',
      kind: 'field.set',
      target: 'pipes/a/x',
      value: 2,
      replaces: ['r:2'],
      group: 'r:3+1',
    });
    expect(upcast(OLD[1]!, 0)['replaces']).toEqual([]);
  });

  it('[L8] folds with those of today and stays as it was written', () => {
    const stored = structuredClone(OLD);
    const log = [...stored, set('s:1', 3, { at: 9, replaces: ['r:3'] })];
    const document = fold(log, DOC);
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a', x: 3 }] });
    expect(document.findings).toEqual([]);
    expect(stored).toEqual(OLD);
    const found = inspectOperation(stored[0]);
    expect(found.state === 'known' && found.stored).toBe(stored[0]);
  });

  it('[L8] is refused where it is wrong, under the names of today', () => {
    const problem = (change: object) => {
      const found = inspectOperation({ ...OLD[2]!, ...change });
      return found.state === 'bad' && `${found.problem.code} ${found.problem.path}`;
    };
    expect(problem({ previous: 7 })).toBe('wrong-type replaces[0]');
    expect(problem({ previous: undefined })).toBe('wrong-type replaces[0]');
    expect(problem({ hlc: 'x' })).toBe('wrong-form hlc');
    expect(problem({ v: 1 })).toBe('missing-member replaces');
  });
});
