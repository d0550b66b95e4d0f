/** When a person is reminded to take a file out: never twice in a week, never on the first day, only where it helps. */
import type { Summary } from './database.ts';
import type { Marks } from './marks.ts';

const DAY_MS = 24 * 3_600_000;
export const QUIET_MS = 7 * DAY_MS;

/** How many jobs have work that is in no file. */
export function onlyHere(jobs: readonly Summary[]): number {
  return jobs.filter(
    ({ deleted, exported = 0, operations }) => deleted === undefined && exported < operations,
  ).length;
}

/** Worked example: work of yesterday in no file, never asked before: due. An hour after an export: not due. */
export function isExportDue(jobs: readonly Summary[], marks: Marks, now: number): boolean {
  const since = Math.max(marks.exportedAt, marks.begunAt);
  return onlyHere(jobs) > 0 && marks.begunAt > 0 && now > marks.quietUntil && now - since > DAY_MS;
}
