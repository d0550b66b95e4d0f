import { describe, expect, it } from 'vitest';
import type { Operation, StoredOperation } from './envelope.ts';
import { documentOf, fold } from './fold.ts';
import { toSurvey } from './plain.ts';
import { DOC } from './testing/devices.ts';
import { add, operation, set } from './testing/make.ts';

const GROUP: readonly Operation[] = [
  add('s:1', { group: 's:1+3' }),
  set('s:2', 5, { group: 's:1+3' }),
  set('s:3', 6, { group: 's:1+3', target: 'pipes/a/y' }),
];

function codes(operations: Iterable<StoredOperation>): string[] {
  return fold(operations, DOC).findings.map((finding) => finding.code);
}

describe('a group', () => {
  it('[L25] is applied when the last of it has come, not before', () => {
    for (const missing of GROUP) {
      const part = GROUP.filter((one) => one !== missing);
      expect(toSurvey(fold(part, DOC))).toEqual({});
      expect(codes(part)).toEqual(['incomplete-group']);
    }
    expect(toSurvey(fold(GROUP, DOC))).toEqual({ pipes: [{ id: 'a', x: 5, y: 6 }] });
    expect(codes(GROUP)).toEqual([]);
  });

  it('[L25] leaves what it would replace in force while it waits', () => {
    const earlier = [add('r:1'), set('r:2', 'before')];
    const edits = [
      set('s:1', 'after', { group: 's:1+2', replaces: ['r:2'] }),
      set('s:2', 1, { group: 's:1+2', target: 'pipes/a/y' }),
    ];
    expect(toSurvey(fold([...earlier, edits[0]!], DOC))).toEqual({ pipes: [{ id: 'a', x: 'before' }] });
    expect(toSurvey(fold([...earlier, ...edits], DOC))).toEqual({ pipes: [{ id: 'a', x: 'after', y: 1 }] });
  });

  it('[L25] counts what a waiting operation saw as seen by the one that replaces it', () => {
    const waiting = set('s:1', 'waiting', { at: 1, group: 's:1+2', replaces: ['r:2'] });
    const edit = set('t:1', 'edit', { at: 2, replaces: ['s:1'] });
    const document = fold([add('r:1'), set('r:2', 'before'), waiting, edit], DOC);
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a', x: 'edit' }] });
    expect(document.findings.map((finding) => finding.code)).toEqual(['incomplete-group']);
  });

  it('[L6] goes as a whole where one of it is refused, and takes nothing else along', () => {
    const bad = { ...GROUP[1]!, hlc: 'noon' };
    const others = [add('t:1', { target: 'pipes/b' })];
    expect(toSurvey(fold([GROUP[0]!, bad, GROUP[2]!, ...others], DOC))).toEqual({ pipes: [{ id: 'b' }] });
    expect(codes([GROUP[0]!, bad, GROUP[2]!])).toEqual(['bad-operation', 'incomplete-group']);
  });

  it('[L25] waits where part of it is of a kind not known here', () => {
    const strange = { ...GROUP[1]!, kind: 'pipe.split' };
    const log = [GROUP[0]!, strange, GROUP[2]!];
    expect(toSurvey(fold(log, DOC))).toEqual({});
    expect(codes(log)).toEqual(['group-not-understood', 'unknown-kind']);
  });

  it('[L5] may not claim an operation that is not in it', () => {
    expect(codes([set('s:4', 1, { group: 's:1+3' })])).toEqual(['bad-operation']);
    expect(codes([set('s:1', 1, { group: 't:1+3' })])).toEqual(['bad-operation']);
    expect(codes([set('s:1', 1, { group: 's:1' })])).toEqual(['bad-operation']);
  });
});

describe('what is not applied', () => {
  it('[L7] is an operation of an unknown kind or a newer version, and is a finding', () => {
    const log = [
      add('r:1'),
      operation('r:2', { kind: 'pipe.split' }),
      { v: 2, id: 'r:3', doc: DOC, shape: { of: 'things to come' } },
    ];
    const document = fold(log, DOC);
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a' }] });
    expect(document.findings.map(({ code, ids }) => [code, ids])).toEqual([
      ['newer-operation', ['r:3']],
      ['unknown-kind', ['r:2']],
    ]);
    expect(document.replicas.get('r')).toMatchObject({ last: 3, count: 3 });
  });

  it('[L27] is an operation of another document', () => {
    const document = fold([add('r:1'), add('r:1', { doc: 'doc-2', target: 'pipes/b' })], DOC);
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a' }] });
    expect(document.findings).toEqual([{ code: 'other-document', where: 'doc-2', ids: ['r:1'] }]);
  });

  it('[L27] is told from the document of the earliest creation where nobody says which is meant', () => {
    const create = operation('s:1', {
      kind: 'job.create',
      target: 'job/-',
      value: null,
      doc: 'doc-2',
      at: 9,
    });
    expect(documentOf([add('r:1'), create])).toBe('doc-2');
    expect(documentOf([add('r:1', { at: 3 }), add('s:2', { doc: 'doc-3', at: 1 })])).toBe('doc-3');
    expect(documentOf([])).toBe('');
  });
});
