/** The page that people read is the one this run gives, and the count it boasts of is honest. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { countPublished, PAGE, page, runSuite } from './report.ts';
import { SUITES } from './suites.ts';

const LEAST_COUNT = 1500;

describe('docs/validation.md', () => {
  const rows = SUITES.map(runSuite);

  it('is what the suites give (npm run validate)', () => {
    expect(readFileSync(PAGE, 'utf8')).toBe(page(rows));
  });

  it(`counts at least ${LEAST_COUNT} published figures, none of its documents for more than a quarter`, () => {
    expect(countPublished(rows).fair).toBeGreaterThanOrEqual(LEAST_COUNT);
  });
});
