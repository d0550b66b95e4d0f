/** Every rule of the job's specifications is held by a test whose title begins with its id, and no test by none. */
import { describe, expect, it } from 'vitest';
import { filesIn, textOf } from './tree.ts';

const FOLDERS = ['packages/job/src/log', 'packages/job/src/file'];
const textsIn = (ending: string): string[] =>
  FOLDERS.flatMap((folder) => filesIn(folder, ending)).map(textOf);

const rules = [
  ...textsIn('.md')
    .join('')
    .matchAll(/^- \*\*([LF]\d+)\*\* /gm),
].map((match) => match[1] ?? '');
const tested = new Set(
  textsIn('.test.ts').flatMap((source) =>
    [...source.matchAll(/it\(\s*['"`]\[([LF]\d+)\] /g)].map((match) => match[1] ?? ''),
  ),
);

describe('the specification of the job', () => {
  it('has each rule once', () => {
    expect(rules.length).toBeGreaterThan(40);
    expect(new Set(rules).size).toBe(rules.length);
  });

  it('has a test for every rule', () => {
    expect(rules.filter((rule) => !tested.has(rule))).toEqual([]);
  });

  it('has a rule for every test', () => {
    expect([...tested].filter((rule) => !rules.includes(rule))).toEqual([]);
  });
});
