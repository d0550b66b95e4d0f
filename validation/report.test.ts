/** The pages that people read are the ones this run gives, and the count they boast of is honest. */
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { countPublished } from './count.ts';
import { madeFiles } from './report.ts';
import { runSuite } from './run.ts';
import { SUITES } from './suites.ts';

const LEAST_COUNT = 3000;

describe('the pages of the validation', () => {
  const rows = SUITES.map(runSuite);

  it.each(madeFiles(rows).map((file) => [basename(file.path), file] as const))(
    '%s is what the suites give (npm run validate)',
    (_name, { path, text }) => {
      expect(readFileSync(path, 'utf8')).toBe(text);
    },
  );

  it(`count at least ${LEAST_COUNT} published figures, none of their documents for more than a quarter`, () => {
    expect(countPublished(rows).fair).toBeGreaterThanOrEqual(LEAST_COUNT);
  });

  it('tell a carried figure only of suites that print one', () => {
    expect(SUITES.filter(({ carried, kind }) => carried && kind !== 'published')).toEqual([]);
  });
});
