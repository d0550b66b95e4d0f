import { expect, it } from 'vitest';
import { coverageNow, coveragePage } from '../tools/coverage.ts';

it('docs/coverage.md is what the rules give (npm run coverage)', () => {
  expect(coverageNow()).toBe(coveragePage());
});
