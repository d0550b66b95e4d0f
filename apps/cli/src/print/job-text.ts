/** What a job and its readings are called on a terminal. */
import { quantity } from '@firstfire/engine';
import type { JobView } from '@firstfire/job';
import { type Dictionary, fill, type Reader } from '@firstfire/words';
import { oneLine } from './visible.ts';

/** `Juniper Bend · plan · CO, US · 5,840 ft`. */
export function siteText(view: JobView, { system, speech }: Reader): string {
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
        ...speech.figures,
      })
    : '';
  const place = [text('site', 'region'), text('site', 'country')].filter(Boolean).join(', ');
  const written = text('job', 'stage');
  const stage = speech.words.choices[written] ?? written;
  return [text('job', 'name'), stage, place, height].filter(Boolean).join(' · ');
}

/** `gasSegments/s3/length` as `section s3: length`; a place that is no reading stays as it is. */
export function readingName(path: string, { readings, phrases }: Dictionary): string {
  const [collection = '', id = '', field = ''] = path.split('/');
  const name = readings[`${collection}.${field}`];
  if (name === undefined) return path;
  const thing = readings[collection] ?? collection;
  const owner = id === '-' ? thing : `${thing} ${id}`;
  return fill(phrases['cli.reading'] ?? '', { owner, field: name });
}
