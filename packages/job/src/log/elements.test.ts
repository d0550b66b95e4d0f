import { describe, expect, it } from 'vitest';
import { elementOf, elementsOf, fieldOf } from './document.ts';
import type { StoredOperation } from './envelope.ts';
import { fold } from './fold.ts';
import { toSurvey } from './plain.ts';
import { DOC } from './testing/devices.ts';
import { add, operation, remove, set } from './testing/make.ts';

function folded(...operations: StoredOperation[]) {
  const document = fold(operations, DOC);
  const a = elementOf(document, 'pipes', 'a');
  return { a, codes: document.findings.map((finding) => finding.code), document };
}

describe('an element', () => {
  it('[L33] is gone once a removal has seen all there is of it', () => {
    const { a, codes } = folded(add('r:1'), set('r:2', 1), remove('s:1', ['r:1', 'r:2']));
    expect(a?.alive).toBe(false);
    expect(codes).toEqual([]);
  });

  it('[L33] counts as seen what the seen operations name in turn', () => {
    const history = [add('r:1'), set('r:2', 1), set('r:3', 2, { replaces: ['r:2'] })];
    expect(folded(...history, remove('s:1', ['r:1', 'r:3'])).a?.alive).toBe(false);
    expect(folded(...history, remove('s:1', ['r:1', 'r:2'])).a?.alive).toBe(true);
  });

  it('[L34] comes back whole where somebody edited it meanwhile, and shows the conflict', () => {
    const removal = remove('s:1', ['r:1', 'r:2']);
    const edit = set('r:3', 2, { replaces: ['r:2'] });
    const { a, codes, document } = folded(add('r:1'), set('r:2', 1), removal, edit);
    expect(a?.alive).toBe(true);
    expect(a?.removals).toEqual(['s:1']);
    expect(codes).toEqual(['edit-against-delete']);
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a', x: 2 }] });
  });

  it('[L34] keeps the conflict open until it is restored or removed again', () => {
    const conflict = [add('r:1'), remove('s:1', ['r:1']), set('r:2', 2)];
    const another = folded(...conflict, set('r:3', 3, { replaces: ['r:2'] }));
    expect(another.codes).toEqual(['edit-against-delete']);
    const kept = folded(...conflict, add('t:1', { replaces: ['s:1', 'r:1'] }));
    expect([kept.a?.alive, kept.codes]).toEqual([true, []]);
    const removed = folded(...conflict, remove('t:1', ['s:1', 'r:2']));
    expect([removed.a?.alive, removed.codes]).toEqual([false, []]);
  });

  it('[L35] brings its fields back when restored', () => {
    const gone = [add('r:1'), set('r:2', 7), remove('r:3', ['r:1', 'r:2'])];
    const { document } = folded(...gone);
    expect(toSurvey(document)).toEqual({});
    expect(fieldOf(document, { collection: 'pipes', element: 'a', field: 'x' })).toBeUndefined();
    expect(elementOf(document, 'pipes', 'a')?.fields.get('x')?.value).toBe(7);
    const back = folded(...gone, add('r:4', { replaces: ['r:3', 'r:1'] }));
    expect(toSurvey(back.document)).toEqual({ pipes: [{ id: 'a', x: 7 }] });
  });

  it('[L33] outlives one of two removals when restored against the other', () => {
    const twice = [add('r:1'), remove('r:2', ['r:1']), remove('s:1', ['r:1'])];
    expect(folded(...twice).a?.alive).toBe(false);
    const { a, codes } = folded(...twice, add('r:3', { replaces: ['r:2', 'r:1'] }));
    expect(a?.alive).toBe(true);
    expect(codes).toEqual(['edit-against-delete']);
  });

  it('[L36] is alive when edited and never added, with a finding', () => {
    const { a, codes } = folded(set('r:1', 1));
    expect([a?.alive, a?.order]).toEqual([true, '']);
    expect(codes).toEqual(['never-added']);
  });

  it('[L36] of a singleton needs no adding and cannot be removed', () => {
    const { document, codes } = folded(set('r:1', 1, { target: 'site/-/altitude' }));
    expect(codes).toEqual([]);
    expect(toSurvey(document)).toEqual({ site: { altitude: 1 } });
    const refused = folded(remove('r:2', ['r:1'], { target: 'site/-' }));
    expect(refused.codes).toEqual(['bad-operation']);
  });

  it('[L14] stands by its order, then by its id', () => {
    const place = (id: string, order: string, name: string) =>
      add(id, { target: `pipes/${name}`, value: { order } });
    const { document } = folded(place('r:1', 'k', 'a'), place('r:2', 'V', 'c'), place('r:3', 'V', 'b'));
    expect(elementsOf(document, 'pipes').map((element) => element.id)).toEqual(['b', 'c', 'a']);
    const move = operation('r:4', {
      kind: 'element.move',
      target: 'pipes/a',
      value: { order: 'A' },
      replaces: ['r:1'],
    });
    const moved = fold([place('r:1', 'k', 'a'), place('r:2', 'V', 'c'), move], DOC);
    expect(elementsOf(moved, 'pipes').map((element) => element.id)).toEqual(['a', 'c']);
  });

  it('[L14] takes the later of two moves made without sight of each other', () => {
    const move = (id: string, order: string, at: number) =>
      operation(id, { kind: 'element.move', target: 'pipes/a', value: { order }, replaces: ['r:1'], at });
    const { a } = folded(add('r:1'), move('r:2', 'c', 5), move('s:1', 'b', 9));
    expect(a).toMatchObject({ order: 'b', orderHeads: ['r:2', 's:1'] });
  });

  it('[L3] may bear no name that reaches into an object', () => {
    for (const target of [
      '__proto__/a/x',
      'constructor/a/x',
      'pipes/constructor/x',
      'pipes/a/prototype',
      'pipes/a/id',
    ]) {
      expect(folded(set('r:1', 1, { target })).codes).toEqual(['bad-operation']);
    }
    const plain = toSurvey(folded(add('r:1', { target: 'pipes/toString' })).document);
    expect(plain).toEqual({ pipes: [{ id: 'toString' }] });
  });
});

describe('the creation of a document', () => {
  it('[L37] holds as the earliest of several', () => {
    const create = (id: string, at: number) =>
      operation(id, { kind: 'job.create', target: 'job/-', value: { by: id }, at });
    const { document, codes } = folded(create('s:1', 7), create('r:1', 3));
    expect(document.created).toMatchObject({ id: 'r:1', value: { by: 'r:1' } });
    expect(codes).toEqual(['created-twice']);
  });
});
