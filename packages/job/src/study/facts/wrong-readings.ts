/** Every reading of a job that is not what its field can hold, whether or not a model looks at it. */
import type { Issue } from '@firstfire/engine';
import { RECORDS } from '../../schema/index.ts';
import { recordFacts } from './record-facts.ts';
import type { JobView } from './view.ts';

export function wrongReadings(view: JobView): readonly Issue[] {
  const issues: Issue[] = [];
  for (const { collection } of RECORDS) {
    for (const record of view.all(collection)) issues.push(...recordFacts(collection, record).wrong);
  }
  return issues;
}
