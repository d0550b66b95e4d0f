import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Operation, StoredOperation } from '../log/envelope.ts';
import { toSurvey } from '../log/plain.ts';
import { operationsFromSurvey } from '../log/survey.ts';
import { anyDevices, DOC, documentText, everything, textOf, writerOf } from '../log/testing/devices.ts';
import { hostileLog } from '../log/testing/hostile.ts';
import { add, operation, set } from '../log/testing/make.ts';
import { importOperations } from './import.ts';
import { type JobFile, readJobFile } from './read.ts';
import { writeJobFile } from './write.ts';

const SURVEY = {
  site: { altitude: '5400 ft', name: 'Höhenweg “3”' },
  pipes: [
    { id: 'a', length: { value: 20, unit: 'ft', how: 'measured' } },
    { id: 'b', size: '3/4 in' },
  ],
};
const MADE = operationsFromSurvey(SURVEY, writerOf('desk'));
const OPERATIONS = MADE.ok ? MADE.operations : [];
const TEXT = writeJobFile(OPERATIONS);

function read(text: string): JobFile {
  const result = readJobFile(text);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}

function refusal(text: string, maxLength?: number): string {
  const result = readJobFile(text, maxLength);
  if (result.ok) return 'read';
  const [{ code, place, found, expected }] = result.issues as [(typeof result.issues)[0]];
  return [code, `${place.line}:${place.column}`, place.path, found, expected]
    .filter((part) => part !== undefined && part !== '')
    .join(' ');
}

function file(log: unknown, more: object = {}): string {
  return JSON.stringify({ format: 'firstfire-job', version: 1, log, ...more }, null, 1);
}

function findings(text: string): string[] {
  return read(text).findings.map(({ code, place, reason }) =>
    [code, place.path, reason].filter(Boolean).join(' '),
  );
}

describe('a job file', () => {
  it('[F1] is written again as it was read, character by character', () => {
    const { operations, document, findings: noticed } = read(TEXT);
    expect(writeJobFile(operations)).toBe(TEXT);
    expect(toSurvey(document)).toEqual(SURVEY);
    expect(noticed).toEqual([]);
  });

  it('[F1] is one text for one set of operations, in any order and however written', () => {
    fc.assert(
      fc.property(fc.oneof(anyDevices.map(everything), hostileLog), (log) => {
        const written = writeJobFile(read(file(log)).operations);
        const again = read(written);
        expect(writeJobFile(again.operations)).toBe(written);
        expect(again.findings).toEqual([]);
        expect(writeJobFile([...again.operations].reverse())).toBe(written);
        const shuffledMembers = JSON.parse(written, (_, value: unknown) =>
          typeof value === 'object' && value !== null && !Array.isArray(value)
            ? Object.fromEntries(Object.entries(value).reverse())
            : value,
        ) as { log: unknown };
        expect(writeJobFile(read(JSON.stringify(shuffledMembers)).operations)).toBe(written);
      }),
    );
  });

  it('[F1] holds all that devices know', () => {
    fc.assert(
      fc.property(anyDevices, (devices) => {
        const all = everything(devices);
        const { operations, document } = read(writeJobFile(all));
        expect(operations).toEqual(JSON.parse(JSON.stringify(all)));
        expect(documentText(document)).toBe(textOf(all));
      }),
    );
  });

  it('[F1] of no operations is written and read', () => {
    expect(read(writeJobFile([]))).toMatchObject({ operations: [], findings: [], document: { doc: '' } });
  });

  it('[F1] may begin with a byte order mark, which is not written again', () => {
    expect(writeJobFile(read(`\uFEFF${TEXT}`).operations)).toBe(TEXT);
  });

  it('[F2] gives an answer to every cut, changed or random text', () => {
    const changed = fc
      .array(fc.tuple(fc.nat(TEXT.length), fc.nat(3), fc.string({ unit: 'binary', maxLength: 2 })), {
        minLength: 1,
        maxLength: 4,
      })
      .map((changes) =>
        changes.reduce((text, [at, drop, put]) => text.slice(0, at) + put + text.slice(at + drop), TEXT),
      );
    const cut = fc.nat(TEXT.length).map((end) => TEXT.slice(0, end));
    const odd = fc.jsonValue().map((log) => file(log));
    const oddLog = hostileLog.map((log) => file(log, { document: { a: 1 } }));
    fc.assert(
      fc.property(fc.oneof(changed, cut, odd, oddLog, fc.json(), fc.string()), (text) => {
        const result = readJobFile(text);
        if (result.ok) {
          expect(typeof writeJobFile(result.value.operations)).toBe('string');
          for (const { place } of result.value.findings) expect(place.line * place.column).toBeGreaterThan(0);
        } else {
          expect(result.issues.length).toBeGreaterThan(0);
          for (const { place } of result.issues) expect(place.line * place.column).toBeGreaterThan(0);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('[F3] that is no JSON, or stops in the middle, says where', () => {
    expect(refusal('')).toBe('truncated 1:1');
    expect(refusal('PK\u0003\u0004')).toBe('not-json 1:1');
    expect(refusal(TEXT.slice(0, TEXT.indexOf('"log"')))).toMatch(/^truncated 2\d:3/);
    expect(refusal(TEXT.replace('"version": 1,', '"version": 1'))).toBe('not-json 4:3 version');
  });

  it('[F4] that is something else is refused as such', () => {
    expect(refusal('{"type":"FeatureCollection"}')).toBe('foreign-json 1:1 firstfire-job');
    expect(refusal('[1]')).toBe('foreign-json 1:1 firstfire-job');
    expect(refusal('7')).toBe('foreign-json 1:1 firstfire-job');
    expect(refusal(file([], { format: 'drawing' }))).toBe('wrong-format 2:12 format "drawing" firstfire-job');
    expect(refusal(file([], { version: '1' }))).toBe('wrong-version 3:13 version "1" 1');
    expect(refusal(file([], { version: undefined }))).toBe('wrong-version 1:1 version nothing 1');
    expect(refusal(file({}))).toBe('no-log 4:9 log');
    expect(refusal(file(undefined))).toBe('no-log 1:1 log');
  });

  it('[F5] of a newer version is refused', () => {
    expect(refusal(TEXT.replace('"version": 1', '"version": 2'))).toBe('newer-version 3:14 version 2 1');
  });

  it('[F6] too long or too deep is refused before it is parsed', () => {
    expect(refusal(TEXT, 100)).toBe(`too-large 1:1 ${TEXT.length} 100`);
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    expect(refusal(file([]).replace('[]', deep))).toMatch(/^too-deep 4:48 log\[0\]/);
  });

  it('[F7] with a name that reaches into objects, or a member twice, is refused', () => {
    expect(refusal('{"format":"firstfire-job","version":1,"log":[],"__proto__":{"x":1}}')).toMatch(
      /^forbidden-key 1:48 __proto__/,
    );
    expect(refusal('{"format":"firstfire-job","version":2,\n"version":1,"log":[]}')).toMatch(
      /^repeated-key 2:1 version/,
    );
    expect(({} as { x?: unknown }).x).toBeUndefined();
  });

  it('[F8] refuses a bad entry alone, with its place, and reads the others', () => {
    const text = file([add('r:1'), { ...set('r:2', 1), hlc: 'noon' }, 17, set('r:3', 2), { v: 1 }], {
      document: { pipes: [{ id: 'a', x: 2 }] },
    });
    const { findings: noticed, document, operations } = read(text);
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a', x: 2 }] });
    expect(operations.map(({ id }) => id)).toEqual(['r:1', 'r:3']);
    expect(noticed.map(({ code, reason, id, place }) => [code, reason, id, place.path])).toEqual([
      ['bad-operation', 'wrong-form', 'r:2', 'log[1].hlc'],
      ['bad-operation', 'not-an-object', undefined, 'log[2]'],
      ['bad-operation', 'missing-member', undefined, 'log[4].id'],
    ]);
    const lines = text.split('\n');
    for (const { place } of noticed)
      expect(lines[place.line - 1]?.slice(place.column - 1)).toMatch(/^(\{|17)/);
  });

  it('[F8] refuses a number that JSON allows and no computer holds', () => {
    const text = file([set('r:1', 1)]).replace('"value": 1', '"value": [1e999]');
    expect(findings(text)).toContain('bad-operation log[0].value[0] not-finite');
  });

  it('[F9] counts an operation that stands twice once, and keeps two contents of one id', () => {
    const twice = file([add('r:1'), set('r:2', 1), add('r:1')]);
    expect(findings(twice)).toContain('repeated-operation log[2]');
    expect(read(twice).operations.length).toBe(2);
    const cloned = read(file([add('r:1'), set('r:2', 1), set('r:2', 2)]));
    expect(cloned.operations.length).toBe(3);
    expect(cloned.document.findings.map((finding) => finding.code)).toContain('conflicting-duplicate');
  });

  it('[F10] goes by its log where the document is missing or says something else', () => {
    const changed = TEXT.replace('"size": "3/4 in"', '"size": "2 in"');
    expect(findings(changed)).toEqual(['document-differs document']);
    expect(toSurvey(read(changed).document)).toEqual(SURVEY);
    expect(findings(file(OPERATIONS))).toEqual(['document-missing document']);
    expect(findings(file(OPERATIONS, { document: null }))).toEqual(['document-differs document']);
    expect(findings(file(OPERATIONS, { document: SURVEY, colour: 1 }))).toEqual(['unknown-member colour']);
    expect(writeJobFile(read(changed).operations)).toBe(TEXT);
  });

  it('[F11] with operations of version 0 opens, and keeps them as they were', () => {
    const old = [
      '{"v":0,"doc":"doc-1","id":"r:1","hlc":"000000000001000-00000","author":"ann","kind":"element.add","target":"pipes/a","value":{"order":"V"},"previous":null}',
      '{"v":0,"doc":"doc-1","id":"r:2","hlc":"000000000001000-00001","author":"ann","kind":"field.set","target":"pipes/a/x","value":1,"previous":null}',
      '{"v":0,"doc":"doc-1","id":"r:3","hlc":"000000000001000-00002","author":"ann","kind":"field.set","target":"pipes/a/x","value":2,"previous":"r:2"}',
    ];
    const { document, operations } = read(`{"format":"firstfire-job","version":1,"log":[${old.join(',')}]}`);
    expect(toSurvey(document)).toEqual({ pipes: [{ id: 'a', x: 2 }] });
    expect(document.findings).toEqual([]);
    const written = writeJobFile(operations);
    for (const line of old) expect(written).toContain(line);
    expect(writeJobFile(read(written).operations)).toBe(written);
  });

  it('[F11] keeps what a newer program wrote into the log', () => {
    const newer = { v: 2, id: 's:1', doc: DOC, what: { is: 'to come' } };
    const strange = operation('s:2', { kind: 'photo.attach', target: 'pipes/a/photo' });
    const { operations, document } = read(file([add('r:1'), newer, strange]));
    expect(operations.length).toBe(3);
    expect(document.findings.map((finding) => finding.code)).toEqual(['newer-operation', 'unknown-kind']);
    expect(read(writeJobFile(operations)).operations).toEqual(operations);
  });

  it('is read in the time of its length, however hostile', () => {
    const start = performance.now();
    const clones = Array.from({ length: 20_000 }, (_, i) => set('r:1', i, { replaces: ['r:1', 's:1'] }));
    const bad = Array.from({ length: 20_000 }, (_, i) => ({ i }));
    expect(read(file([...clones, ...bad])).findings.length).toBe(20_001);
    // Quadratic work on these would take minutes.
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});

describe('importing', () => {
  const own: Operation[] = [add('r:1'), set('r:2', 1)];

  it('[F12] unites by id and says how many came', () => {
    const foreign: StoredOperation[] = [set('r:2', 1), set('s:1', 2, { replaces: ['r:2'] })];
    expect(importOperations(own, foreign)).toMatchObject({ ok: true, added: 1, operations: { length: 3 } });
    expect(importOperations([], own)).toMatchObject({ ok: true, added: 2 });
    expect(importOperations(own, [])).toMatchObject({ ok: true, added: 0 });
  });

  it('[F12] refuses the log of another document', () => {
    const foreign = [add('s:1', { doc: 'doc-2' })];
    expect(importOperations(own, foreign)).toEqual({
      ok: false,
      code: 'other-document',
      found: 'doc-2',
      expected: DOC,
    });
  });
});
