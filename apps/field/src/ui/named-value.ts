/** A reading that names something else of the job, or a month: by what people call that, not by its id. */
import type { JobView, Reading } from '@firstfire/job';
import { formOf, monthsIn, type Pick, recordsOf } from '../entry/refers.ts';
import type { AppText } from '../text/app-text.ts';

export interface FieldOf {
  readonly collection: string;
  readonly field: string;
}

/** Undefined where the reading is a value of its own. */
export function namedValue(
  { value }: Reading,
  { collection, field }: FieldOf,
  { view, text }: { readonly view: JobView; readonly text: AppText },
): string | undefined {
  const form = formOf(collection, field);
  if (form.form === 'month') return nameIn(months(text.reader.speech.locale), String(value));
  if ((form.form !== 'one' && form.form !== 'many') || typeof value !== 'string') return undefined;
  const known = recordsOf(view, form.collection, text.record(form.collection));
  return value
    .split(' ')
    .map((id) => nameIn(known, id))
    .join(', ');
}

function nameIn(picks: readonly Pick[], value: string): string {
  return picks.find((one) => one.value === value)?.name ?? value;
}

const MONTHS = new Map<string, readonly Pick[]>();

/** Made once a language: a list is written with every move of a handle. */
function months(locale: string): readonly Pick[] {
  const known = MONTHS.get(locale) ?? monthsIn(locale);
  MONTHS.set(locale, known);
  return known;
}
