/** What the list says of a job once a study has been made: the worst finding, and what to read next. */
import { fold, type JobView, jobViewOf, type StoredOperation, type Study, study } from '@firstfire/job';
import { byUrgency } from '@firstfire/reference';
import { keyRules } from '../next/first-round.ts';
import { measureNext } from '../next/measure-next.ts';
import type { Summary } from '../store/database.ts';
import { changedAt, namesOf } from '../store/summaries.ts';
import { today } from './today.ts';

export interface Summed {
  readonly doc: string;
  readonly view: JobView;
  readonly study: Study;
  readonly changed: number;
  readonly operations: number;
}

export function summed({ doc, view, study: found, changed, operations }: Summed): Summary {
  const worst = found.lines.flatMap((line) => line.findings).sort(byUrgency)[0];
  const next = measureNext(found, keyRules(view))[0]?.path;
  return {
    doc,
    ...namesOf(view),
    studied: true,
    changed,
    operations,
    ...(next === undefined ? {} : { next }),
    ...(worst === undefined ? {} : { worst: worstOf(worst) }),
  };
}

type Found = Study['lines'][number]['findings'][number];

function worstOf({ rule, verdict, margin }: Found): NonNullable<Summary['worst']> {
  return { rule, verdict, ...(margin === undefined ? {} : { margin }) };
}

/** Of a job that nobody has open. */
export function summedFrom(doc: string, operations: readonly StoredOperation[]): Summary {
  const view = jobViewOf(fold(operations, doc));
  return summed({
    doc,
    view,
    study: study(view, { today: today(), uncertainty: false }),
    changed: changedAt(operations),
    operations: operations.length,
  });
}
