import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from './fold.ts';
import { toSurvey } from './plain.ts';
import { operationsFromSurvey } from './survey.ts';
import { DOC, writerOf } from './testing/devices.ts';

const WRITER = writerOf('desk');

function issues(survey: unknown): string[] {
  const result = operationsFromSurvey(survey, WRITER);
  return result.ok ? [] : result.issues.map(({ code, path }) => `${code} ${path}`);
}

describe('a log made from a survey', () => {
  it('[L45] holds singletons, collections in their order, and every value', () => {
    const survey = {
      job: { title: 'House pool with spa' },
      site: { altitude: '5400 ft', address: { value: 'Hill Road 3', how: 'told' } },
      pipes: [
        { id: 'p2', length: { value: 20, unit: 'ft', how: 'measured', pm: 0.5 }, size: '3/4 in' },
        { id: 'p1', fittings: ['elbow', 'tee'] },
      ],
    };
    const result = operationsFromSurvey(survey, WRITER);
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    const document = fold(result.operations, DOC);
    expect(toSurvey(document)).toEqual(survey);
    expect(document.findings).toEqual([]);
    expect(document.created?.author).toBe('author-of-desk');
    expect(new Set(result.operations.map((operation) => operation.group)).size).toBe(
      result.operations.length,
    );
  });

  it('[L45] gives any survey back', () => {
    const name = fc
      .stringMatching(/^[a-z][A-Za-z0-9]{0,6}$/)
      .filter((text) => !['id', 'records'].includes(text));
    const value = fc
      .jsonValue({ maxDepth: 3 })
      .filter((json) => json !== null && !/__proto__|constructor|prototype/.test(JSON.stringify(json)));
    const fields = fc.dictionary(name, value, { minKeys: 1, maxKeys: 4 });
    const ids = fc.uniqueArray(fc.stringMatching(/^[a-z0-9]{1,4}$/), { minLength: 1, maxLength: 4 });
    const elements = ids.chain((list) =>
      fc.tuple(...list.map((id) => fields.map((rest) => ({ id, ...rest })))),
    );
    fc.assert(
      fc.property(fc.dictionary(name, fc.oneof(fields, elements), { maxKeys: 5 }), (survey) => {
        const result = operationsFromSurvey(survey, WRITER);
        if (!result.ok) throw new Error(JSON.stringify(result.issues));
        // Through JSON, which writes a negative zero as zero.
        const asWritten = (value: unknown) => JSON.parse(JSON.stringify(value)) as unknown;
        expect(asWritten(toSurvey(fold(result.operations, DOC)))).toEqual(asWritten(survey));
      }),
    );
  });

  it('[L45] takes no account of what is not known, and names elements that bring no id', () => {
    const survey = {
      site: null,
      spa: { volume: null, cover: undefined },
      pipes: [{ size: '1 in' }, { id: 'pipes-1' }],
    };
    const result = operationsFromSurvey(survey, WRITER);
    const plain = result.ok && toSurvey(fold(result.operations, DOC));
    expect(plain).toEqual({ pipes: [{ id: 'pipes-1x', size: '1 in' }, { id: 'pipes-1' }] });
  });

  it('says what it cannot hold, and where', () => {
    expect(issues([])).toEqual(['not-a-collection ']);
    expect(issues({ altitude: 5400 })).toEqual(['not-a-collection altitude']);
    expect(issues({ pipes: [{ id: 'a' }, 3, { id: 'a' }, { id: 'b c' }, { id: 7 }] })).toEqual([
      'not-a-collection pipes[1]',
      'repeated-id pipes[2].id',
      'bad-name pipes[3].id',
      'bad-name pipes[4].id',
    ]);
    expect(
      issues({ '2nd': {}, records: [], site: { 'a b': 1, when: new Date(0), flow: [1, Number.NaN] } }),
    ).toEqual([
      'bad-name 2nd',
      'bad-name records',
      'bad-name site.a b',
      'not-json site.when',
      'not-json site.flow[1]',
    ]);
    expect(issues(JSON.parse('{"__proto__":{"x":1},"pipes":[{"id":"a","constructor":1}]}'))).toEqual([
      'bad-name __proto__',
      'bad-name pipes[0].constructor',
    ]);
  });
});
