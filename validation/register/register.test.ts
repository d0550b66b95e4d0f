/** The register names nothing that is not there, and says why where nothing answers. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { RULES } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { SUITES } from '../suites.ts';
import { REGISTER } from './index.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const suites = new Set(SUITES.map(({ id }) => id));
const rules = new Set(RULES.map(({ id }) => id));

const stands = (one: string): boolean =>
  one.endsWith('.test.ts') ? existsSync(join(ROOT, one)) : suites.has(one) || rules.has(one);

describe.each(REGISTER)('the register, $title', ({ entries }) => {
  it('names suites, rules and test files that exist', () => {
    expect(entries.flatMap(({ by }) => by).filter((one) => !stands(one))).toEqual([]);
  });

  it('says why where nothing answers, and names nothing twice', () => {
    expect(entries.filter(({ by, not }) => by.length === 0 && !not)).toEqual([]);
    expect(entries.filter(({ by }) => new Set(by).size !== by.length)).toEqual([]);
  });
});
