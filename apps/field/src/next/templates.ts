/** What a job begins with: one of each thing every job has, so that its readings can be asked for. */
import type { Edit } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';

export function startOf(name: string): readonly Edit[] {
  const add = (collection: string, element: string): Edit => ({ type: 'add', collection, element });
  const set = (collection: string, element: string, field: string, value: string): Edit => ({
    type: 'set',
    collection,
    element,
    field,
    value: readingOf({ value, how: 'told' }),
  });
  return [
    set('job', '-', 'name', name),
    set('job', '-', 'stage', 'survey'),
    add('heaters', 'h1'),
    set('heaters', 'h1', 'planned', 'yes'),
    add('basins', 'b1'),
    add('gasSegments', 's1'),
    add('pumpSpeeds', 'v1'),
    add('spots', 'spot1'),
    set('spots', 'spot1', 'heater', 'h1'),
    add('circuits', 'c1'),
    set('circuits', 'c1', 'heater', 'h1'),
  ];
}
