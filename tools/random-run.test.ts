import { expect, it } from 'vitest';
import { runRandomJobs } from './random-run.ts';

const JOBS = process.env['FIRSTFIRE_FAST'] ? 200 : 1500;

it(`${JOBS} random jobs yield no exception, no number that is none and no verdict without a source`, () => {
  expect(runRandomJobs(1, JOBS).faults).toEqual([]);
});
