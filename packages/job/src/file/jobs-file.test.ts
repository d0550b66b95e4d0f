import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from '../log/fold.ts';
import { anyDevices, everything, writerOf } from '../log/testing/devices.ts';
import { hostileLog } from '../log/testing/hostile.ts';
import { writeGroup } from '../log/writer.ts';
import { type JobsFileResult, readJobsFile, writeJobsFile } from './jobs-file.ts';
import { readOperationLines, writeOperationLines } from './lines.ts';
import { readJobFile } from './read.ts';
import { writeJobFile } from './write.ts';

function log(doc: string, name: string) {
  const made = writeGroup(
    fold([], doc),
    [
      { type: 'create' },
      { type: 'set', collection: 'job', field: 'name', value: { value: name, how: 'told' } },
    ],
    { ...writerOf('van-1'), doc },
  );
  return made.ok ? made.operations : [];
}

const LOGS = [log('one', 'First, with “{[”, a , and a \\"'), log('two', 'Second')];

function jobs(result: JobsFileResult) {
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.jobs;
}

function refusal(text: string): string {
  const result = readJobsFile(text);
  if (result.ok) return 'read';
  const [{ code, place }] = result.issues as [(typeof result.issues)[0]];
  return `${code} ${place.line}:${place.column} ${place.path}`;
}

describe('a file of many jobs', () => {
  it('[F13] reads back as the jobs it was written from', () => {
    expect(jobs(readJobsFile(writeJobsFile(LOGS))).map(({ operations }) => operations)).toEqual(LOGS);
    expect(jobs(readJobsFile(writeJobsFile([])))).toEqual([]);
    expect(jobs(readJobsFile(writeJobFile(LOGS[0] ?? []))).map(({ document }) => document.doc)).toEqual([
      'one',
    ]);
  });

  it('[F13] holds job files that stand alone when they are cut out', () => {
    fc.assert(
      fc.property(fc.array(anyDevices.map(everything), { maxLength: 3 }), (logs) => {
        const text = writeJobsFile(logs);
        const raw = JSON.parse(text) as { readonly jobs: readonly unknown[] };
        const cut = raw.jobs.map((job) => readJobFile(JSON.stringify(job)));
        expect(cut.map((one) => one.ok && one.value.operations)).toEqual(logs);
        expect(jobs(readJobsFile(text)).map(({ operations }) => operations)).toEqual(logs);
      }),
      { numRuns: 30 },
    );
  });

  it('[F14] is refused whole when one of its jobs is, with the place in the whole file', () => {
    const text = writeJobsFile(LOGS);
    const second = text.lastIndexOf('"version": 1');
    const line = text.slice(0, second).split('\n').length;
    const newer = `${text.slice(0, second)}"version": 9${text.slice(second + 12)}`;
    expect(refusal(newer)).toBe(`newer-version ${line}:14 jobs[1].version`);
    expect(refusal(text.slice(0, -20))).toMatch(/^truncated /);
    expect(refusal('{"format":"firstfire-jobs","version":2,"jobs":[]}')).toBe('newer-version 1:38 version');
    expect(refusal('{"format":"firstfire-jobs","version":"x","jobs":[]}')).toBe('wrong-version 1:38 version');
    expect(refusal('{"format":"firstfire-jobs","version":1,"jobs":{}}')).toBe('no-jobs 1:47 jobs');
    expect(refusal('{"format":"firstfire-jobs","version":1,"jobs":[3]}')).toBe('foreign-json 1:48 jobs[0]');
    expect(refusal('{"format":"another"}')).toBe('wrong-format 1:11 format');
  });

  it('[F14] answers any text', () => {
    const text = writeJobsFile(LOGS);
    fc.assert(
      fc.property(fc.nat(text.length), fc.string({ maxLength: 3 }), (at, put) => {
        expect(typeof readJobsFile(text.slice(0, at) + put + text.slice(at + put.length)).ok).toBe('boolean');
      }),
    );
  });
});

describe('a log as lines', () => {
  it('[F15] reads back as the operations it was written from, whatever they are', () => {
    fc.assert(
      fc.property(anyDevices.map(everything), (operations) => {
        expect(readOperationLines(writeOperationLines(operations))).toEqual({ operations, damaged: 0 });
      }),
      { numRuns: 30 },
    );
  });

  it('[F15] loses a damaged line alone', () => {
    const [first = [], second = []] = LOGS;
    const torn = writeOperationLines(first).slice(0, -9);
    const text = `${torn}\n${writeOperationLines(second)}`;
    expect(readOperationLines(text)).toEqual({ operations: [first[0], ...second], damaged: 1 });
  });

  it('[F15] answers any text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          hostileLog.map((log) => log.map((one) => JSON.stringify(one)).join('\n')),
        ),
        (text) => {
          const { operations, damaged } = readOperationLines(text);
          expect(operations.length + damaged).toBeLessThanOrEqual(text.split('\n').length);
        },
      ),
    );
  });
});
