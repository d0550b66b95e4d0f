/** Fields that hold the name of something the job or the program knows: picked from a list, not typed. */
import type { JobView } from '@firstfire/job';

export interface Pick {
  readonly value: string;
  /** What a person calls it; the reader's word for the record where it has no name. */
  readonly name: string;
}

/** One record, by its id. */
const ONE: Readonly<Record<string, string>> = {
  'spots.heater': 'heaters',
  'circuits.heater': 'heaters',
  'lifts.heater': 'heaters',
  'flueTests.heater': 'heaters',
  'waterRuns.heater': 'heaters',
  'waterRuns.basin': 'basins',
  'waterTests.basin': 'basins',
  'basins.spillway': 'basins',
};

/** Several records, their ids separated by spaces. */
const MANY: Readonly<Record<string, string>> = {
  'basins.heatedBy': 'heaters',
  'pumpSpeeds.basins': 'basins',
};

const MONTHS = new Set(['basins.seasonFirst', 'basins.seasonLast', 'site.designMonth']);

export type TextForm =
  | { readonly form: 'one' | 'many'; readonly collection: string }
  | { readonly form: 'month' | 'day' | 'climate' | 'plain' };

export function formOf(collection: string, field: string): TextForm {
  const key = `${collection}.${field}`;
  const [one, many] = [ONE[key], MANY[key]];
  if (one !== undefined) return { form: 'one', collection: one };
  if (many !== undefined) return { form: 'many', collection: many };
  if (MONTHS.has(key)) return { form: 'month' };
  if (key === 'job.date') return { form: 'day' };
  if (key === 'site.climatePlace') return { form: 'climate' };
  return { form: 'plain' };
}

export function recordsOf(view: JobView, collection: string, called: string): readonly Pick[] {
  return view.all(collection).map((record, i) => {
    const name = record.reading('name')?.value;
    return { value: record.id, name: typeof name === 'string' && name !== '' ? name : `${called} ${i + 1}` };
  });
}

/** Every junction of the gas piping that something is joined to; the supply first. */
export function junctionsOf(view: JobView): readonly string[] {
  const found = new Set(['supply']);
  const note = (collection: string, field: string): void => {
    for (const record of view.all(collection)) {
      const value = record.reading(field)?.value;
      if (typeof value === 'string' && value !== '') found.add(value);
    }
  };
  for (const collection of ['gasSegments', 'gasRegulators']) {
    note(collection, 'from');
    note(collection, 'to');
  }
  note('gasAppliances', 'node');
  note('heaters', 'node');
  return [...found];
}

/** Months 1 to 12 by name. */
export function monthsIn(locale: string): readonly Pick[] {
  const format = new Intl.DateTimeFormat(locale, { month: 'long', timeZone: 'UTC' });
  return Array.from({ length: 12 }, (_, i) => ({
    value: String(i + 1),
    name: format.format(new Date(Date.UTC(2020, i, 1))),
  }));
}
