/** Every reading of a job that is not what its field can hold, whether or not a model looks at it. */
import type { Issue } from '@firstfire/engine';
import { RECORDS } from '../../schema/index.ts';
import { fieldFact } from './field-fact.ts';
import { type JobView, readingPath } from './view.ts';

export function wrongReadings(view: JobView): readonly Issue[] {
  const issues: Issue[] = [];
  for (const { collection, fields } of RECORDS) {
    for (const record of view.all(collection)) {
      for (const field of Object.keys(fields)) {
        const fact = fieldFact(collection, field, record.reading(field));
        if (fact.state !== 'wrong') continue;
        const where = readingPath(collection, record.id, field);
        issues.push(...fact.issues.map((issue) => ({ ...issue, where })));
      }
    }
  }
  return issues;
}
