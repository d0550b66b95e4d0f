import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { example, firstfire, temporaryFolder } from './run.ts';

function manyFiles(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'north'));
  for (const name of ['house-pool', 'swap', 'unfinished']) {
    copyFileSync(example(name), join(folder, `${name}.job.json`));
    copyFileSync(example(name), join(folder, 'north', `${name}.job.json`));
  }
  writeFileSync(join(folder, 'broken.job.json'), '{"format":');
  writeFileSync(join(folder, 'empty.job.json'), '');
  writeFileSync(join(folder, 'notes.txt'), 'not a job');
  return folder;
}

describe('recheck', () => {
  const { out, error, status } = firstfire(['recheck', manyFiles()]);
  const rows = parse(out, { columns: true }) as Record<string, string>[];

  it('gives a row for every job file, folders below included, and no other', () => {
    expect(rows.map((row) => row['file']).sort()).toEqual([
      'broken.job.json',
      'empty.job.json',
      'house-pool.job.json',
      'north/house-pool.job.json',
      'north/swap.job.json',
      'north/unfinished.job.json',
      'swap.job.json',
      'unfinished.job.json',
    ]);
    expect(status).toBe(0);
  });

  it('says what is wrong with a bad file, and goes on', () => {
    const broken = rows.find((row) => row['file'] === 'broken.job.json');
    expect(broken?.['issue']).toMatch(/at 1:\d+/);
    expect(rows.find((row) => row['file'] === 'swap.job.json')?.['gas']).toBe('fails');
  });

  it('answers the same for the same job, wherever it lies', () => {
    const [one, other] = ['house-pool.job.json', 'north/house-pool.job.json'].map((file) =>
      rows.find((row) => row['file'] === file),
    );
    expect({ ...one, file: '' }).toEqual({ ...other, file: '' });
  });

  it('tells its progress on the error output', () => {
    expect(error).toContain('8 files checked.');
  });

  it.each([
    [['recheck'], 'one folder'],
    [['recheck', '/no/such/folder'], 'no such folder'],
    [['recheck', '.', '--edition', 'IFGC 1066'], 'IFGC 2018'],
  ])('answers %j with what would be right', (args, text) => {
    const wrong = firstfire(args);
    expect(wrong.error).toContain(text);
    expect(wrong.status).toBe(2);
  });
});
