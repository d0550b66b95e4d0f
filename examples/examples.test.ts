import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { jobViewOf, readJobFile, study, writeJobFile } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { exampleFile, exampleNames, FOLDER } from './make.ts';

describe.each(exampleNames())('example %s', (name) => {
  const text = readFileSync(join(FOLDER, `${name}.job.json`), 'utf8');

  it('is what its survey makes (npm run examples)', () => {
    expect(exampleFile(name)).toBe(text);
  });

  it('comes back from reading and writing as the same text, with nothing to remark', () => {
    const read = readJobFile(text);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.value.findings).toEqual([]);
    expect(read.value.document.findings).toEqual([]);
    expect(writeJobFile(read.value.operations)).toBe(text);
  });

  it('is studied without an impossible reading', () => {
    const read = readJobFile(text);
    if (!read.ok) throw new Error('unreadable');
    const found = study(jobViewOf(read.value.document), { today: '2026-11-25' });
    expect(found.issues).toEqual([]);
  });
});

describe('the house example', () => {
  it('has at least twelve gas sections and three pump speeds, above 5,000 ft', () => {
    const survey = JSON.parse(readFileSync(join(FOLDER, 'house-pool.survey.json'), 'utf8')) as {
      gasSegments: unknown[];
      pumpSpeeds: unknown[];
    };
    expect(survey.gasSegments.length).toBeGreaterThanOrEqual(12);
    expect(survey.pumpSpeeds).toHaveLength(3);
  });
});
