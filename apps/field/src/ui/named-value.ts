/** A reading as text where it names something else of the job: by what people call that, not by its id. */
import type { JobView, Reading } from '@firstfire/job';
import { readingText } from '../entry/reading.ts';
import { formOf, monthsIn, recordsOf } from '../entry/refers.ts';
import type { AppText } from '../text/app-text.ts';

export interface FieldOf {
  readonly collection: string;
  readonly field: string;
}

export function namedValue(
  reading: Reading,
  { collection, field }: FieldOf,
  { view, text }: { readonly view: JobView; readonly text: AppText },
): string {
  const { value } = reading;
  const form = formOf(collection, field);
  if (form.form === 'month')
    return (
      monthsIn(text.reader.speech.locale).find((one) => one.value === String(value))?.name ?? String(value)
    );
  if ((form.form !== 'one' && form.form !== 'many') || typeof value !== 'string')
    return readingText(reading, text);
  const known = recordsOf(view, form.collection, text.record(form.collection));
  return value
    .split(' ')
    .map((id) => known.find((one) => one.value === id)?.name ?? id)
    .join(', ');
}
