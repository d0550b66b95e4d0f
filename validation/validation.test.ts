import { describe, expect, it } from 'vitest';
import { deviation, type Suite } from './suite.ts';
import { SUITES } from './suites.ts';

describe.each(SUITES.map((suite): [string, Suite] => [suite.id, suite]))('%s', (_id, suite) => {
  const misfits = new Set(suite.misfits?.flatMap((misfit) => misfit.cases));
  const run = suite.cases.map((one) => deviation(suite, one));

  it(`agrees with ${suite.document}, ${suite.at}`, () => {
    const outside = run.filter((one) => !misfits.has(one.id) && !(one.ofBand <= 1));
    expect(outside).toEqual([]);
    expect(run.length).toBeGreaterThan(0);
  });

  it('has distinct cases, and every misfit it writes down is one', () => {
    expect(new Set(run.map((one) => one.id)).size).toBe(run.length);
    const stale = [...misfits].filter((id) => !run.some((one) => one.id === id && !(one.ofBand <= 1)));
    expect(stale).toEqual([]);
  });
});
