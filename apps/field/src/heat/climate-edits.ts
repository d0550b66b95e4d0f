/** The climate a job rests on, and the edits that put another in its place. */
import type { ClimateReading, Edit, JobView } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';

const MONTHS = 'climateMonths';

/** One group: the months that are not there yet, and every reading. */
export function climateEdits(view: JobView, readings: readonly ClimateReading[]): readonly Edit[] {
  const there = new Set(view.all(MONTHS).map(({ id }) => id));
  const ids = new Set(readings.filter(({ collection }) => collection === MONTHS).map(({ id }) => id));
  return [
    ...[...ids]
      .filter((id) => !there.has(id))
      .map((element): Edit => ({ type: 'add', collection: MONTHS, element })),
    ...readings.map(
      ({ collection, id, field, reading }): Edit => ({
        type: 'set',
        collection,
        ...(id === '-' ? {} : { element: id }),
        field,
        value: readingOf(reading),
      }),
    ),
  ];
}

export type Source = 'bundled' | 'typed' | 'file';

export function climateSource(view: JobView): Source {
  const said = view.record('site', '-').reading('climateFrom')?.value;
  if (said === 'bundled' || said === 'typed' || said === 'file') return said;
  return view.all(MONTHS).length > 0 ? 'typed' : 'bundled';
}

export function climateName(view: JobView): string {
  const name = view.record('site', '-').reading('climateName')?.value;
  return typeof name === 'string' ? name : '';
}

/** Where the months in the job are from, whether or not it rests on them. Those of a file are known as measured. */
export function monthsSource(view: JobView): Exclude<Source, 'bundled'> | undefined {
  const [first] = view.all(MONTHS);
  if (first === undefined) return undefined;
  return first.reading('airTemperature')?.how === 'measured' ? 'file' : 'typed';
}
