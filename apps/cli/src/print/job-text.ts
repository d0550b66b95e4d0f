/** What a job and its readings are called on a terminal. */
import { quantity } from '@firstfire/engine';
import type { JobView } from '@firstfire/job';
import { wordsOf } from '@firstfire/words';
import type { System } from './finding-text.ts';
import { oneLine } from './visible.ts';

const { readings } = wordsOf('en');

/** `Juniper Bend · plan · CO, US · 5,840 ft`. */
export function siteText(view: JobView, system: System): string {
  const text = (collection: string, field: string): string => {
    const value = view.record(collection, '-').reading(field)?.value;
    return typeof value === 'string' ? oneLine(value) : '';
  };
  const altitude = view.record('site', '-').reading('altitude');
  const si =
    typeof altitude?.value === 'number'
      ? quantity.valueInSi(altitude.value, altitude.unit ?? '', 'length')
      : undefined;
  const height = si?.ok
    ? quantity.formatQuantity(si.value, quantity.preferredUnit('length', system), {
        kind: 'length',
        decimals: 0,
        style: 'trade',
      })
    : '';
  const place = [text('site', 'region'), text('site', 'country')].filter(Boolean).join(', ');
  return [text('job', 'name'), text('job', 'stage'), place, height].filter(Boolean).join(' · ');
}

/** `gasSegments/s3/length` as `section s3: length`; a place that is no reading stays as it is. */
export function readingName(path: string): string {
  const [collection = '', id = '', field = ''] = path.split('/');
  const name = readings[`${collection}.${field}`];
  if (name === undefined) return path;
  const owner = readings[collection] ?? collection;
  return id === '-' ? `${owner}: ${name}` : `${owner} ${id}: ${name}`;
}
