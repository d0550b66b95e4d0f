/** Local amendments as entered in a job. One without rule or citation is named, and changes nothing. */
import type { Issue } from '@firstfire/engine';
import type { Amendment } from '@firstfire/reference';
import { recordFacts } from './record-facts.ts';
import type { JobView, RecordView } from './view.ts';

export interface EnteredAmendments {
  readonly amendments: readonly Amendment[];
  readonly issues: readonly Issue[];
}

export function amendmentsOf(view: JobView): EnteredAmendments {
  const amendments: Amendment[] = [];
  const issues: Issue[] = [];
  for (const record of view.all('amendments')) {
    const read = wordsOf(record);
    const where = `amendments/${record.id}`;
    const lacking = (['rule', 'citation'] as const).filter((field) => read[field] === '');
    for (const field of lacking)
      issues.push({ code: 'ill-formed', where: `${where}/${field}`, reason: 'amendment-incomplete' });
    if (lacking.length > 0) continue;
    const { rule, citation, required } = read;
    const asked = read.asked !== 'no';
    amendments.push({ where, rule, asked, citation, ...(required === '' ? {} : { required }) });
  }
  return { amendments, issues };
}

function wordsOf(record: RecordView) {
  const facts = recordFacts('amendments', record);
  const word = (field: string): string => {
    const { fact } = facts.at(field);
    return fact.state === 'word' ? fact.value : '';
  };
  return { rule: word('rule'), asked: word('asked'), required: word('required'), citation: word('citation') };
}
