/** The heaters a job is about: those to be installed or serviced, not the one that leaves. */
import { recordFacts } from './record-facts.ts';
import type { JobView, RecordView } from './view.ts';

export function isLeaving(record: RecordView): boolean {
  const planned = recordFacts('heaters', record).at('planned').fact;
  return planned.state === 'word' && planned.value === 'no';
}

/** Ids, in the order of the job. */
export function plannedHeaters(view: JobView): readonly string[] {
  return view
    .all('heaters')
    .filter((record) => !isLeaving(record))
    .map((record) => record.id);
}
