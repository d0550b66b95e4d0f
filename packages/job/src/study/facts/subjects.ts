/** What the rules of a job are asked about. */
import type { Scope } from '@firstfire/reference';
import { faceSubjects } from '../plant/place/subjects.ts';
import { waterStateSubjects } from '../plant/water/subjects.ts';
import type { Book } from './book.ts';
import { isLeaving } from './heaters.ts';
import { recordFacts } from './record-facts.ts';
import type { JobView, RecordView } from './view.ts';

const COLLECTIONS: readonly (readonly [scope: Scope, collection: string])[] = [
  ['basin', 'basins'],
  ['heater', 'heaters'],
  ['segment', 'gasSegments'],
  ['regulator', 'gasRegulators'],
  ['appliance', 'gasAppliances'],
  ['run', 'waterRuns'],
  ['filter', 'filters'],
];

export function addSubjects(book: Book, view: JobView): void {
  for (const [scope, collection] of COLLECTIONS) {
    for (const record of view.all(collection)) {
      if (collection === 'heaters' && isLeaving(record)) continue;
      book.addSubject({ scope, id: record.id, label: nameOf(collection, record) });
    }
  }
  for (const record of view.all('gasSegments')) {
    const label = nameOf('gasSegments', record);
    if (wordOf(record, 'planned') !== 'no') book.addSubject({ scope: 'laid-segment', id: record.id, label });
    if (wordOf(record, 'material') === 'polyethylene')
      book.addSubject({ scope: 'plastic-segment', id: record.id, label });
  }
  for (const subject of waterStateSubjects(view)) book.addSubject(subject);
  for (const subject of faceSubjects(view)) book.addSubject(subject);
}

function wordOf(record: RecordView, field: string): string {
  const { fact } = recordFacts('gasSegments', record).at(field);
  return fact.state === 'word' ? fact.value : '';
}

export function nameOf(collection: string, record: RecordView): string {
  const name = recordFacts(collection, record).at('name').fact;
  return name.state === 'word' ? name.value : record.id;
}
