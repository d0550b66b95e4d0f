/** What changes between two studies of one job: under another edition, in a variant, before and after a repair. */
import { type Finding, findingId } from '@firstfire/reference';
import type { Study } from './study.ts';

export interface Change {
  /** Id of the finding. */
  readonly id: string;
  /** Absent where the rule does not hold in the first study. */
  readonly before?: Finding;
  /** Absent where it does not hold in the second. */
  readonly after?: Finding;
}

/** Findings that differ in verdict, limit, figure or source; in the order of the second study, then what is gone. */
export function changesBetween(before: Study, after: Study): readonly Change[] {
  const first = byId(before);
  const second = byId(after);
  const changes: Change[] = [];
  for (const [id, finding] of second) {
    const old = first.get(id);
    if (old === undefined) changes.push({ id, after: finding });
    else if (differ(old, finding)) changes.push({ id, before: old, after: finding });
  }
  for (const [id, finding] of first) if (!second.has(id)) changes.push({ id, before: finding });
  return changes;
}

function byId(study: Study): ReadonlyMap<string, Finding> {
  return new Map(
    study.lines.flatMap((line) => line.findings).map((finding) => [findingId(finding), finding]),
  );
}

function differ(a: Finding, b: Finding): boolean {
  return (
    a.verdict !== b.verdict ||
    a.edition !== b.edition ||
    a.checkTheBook !== b.checkTheBook ||
    JSON.stringify(a.outcome) !== JSON.stringify(b.outcome)
  );
}
