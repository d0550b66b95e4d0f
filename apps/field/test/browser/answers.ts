/** What a surveyor answers at Harrow Lane, the example of a swap; what its survey does not say is taken from Juniper Bend. */
import { readFileSync } from 'node:fs';
import { RECORD_BY_COLLECTION, type Reading } from '@firstfire/job';
import { catalog } from '@firstfire/reference';
import { ENGLISH } from '@firstfire/words';
import type { Answer } from './person.ts';

type Element = Readonly<Record<string, Reading | undefined>>;

/** Harrow Lane's planned heater is called `new` there. */
const SAME_AS: Readonly<Record<string, string>> = { h1: 'new', old: 'old' };

const SURVEYS = ['swap', 'house-pool'].map(documentOf);
const MONTH = new Intl.DateTimeFormat('en-US', { month: 'long', timeZone: 'UTC' });

/** Asked on the walk and answered by neither survey. */
const OTHERS: Readonly<Record<string, Answer>> = {
  'gasSupply.purgeInert': { key: ENGLISH.choices['no'] ?? 'no' },
  'spots.near': { key: 'Next' },
  // A flow meter at Harrow Lane; its pump gives about this much through pipe and filter.
  'waterLoop.flowFound': { typed: '65 gpm' },
};

function documentOf(name: string): Readonly<Record<string, Element | readonly Element[]>> {
  const url = new URL(`../../../../examples/${name}.job.json`, import.meta.url);
  return (JSON.parse(readFileSync(url, 'utf8')) as { document: Record<string, Element> }).document;
}

/** How a person enters what the surveys say of a reading. */
export function answerTo(path: string): Answer {
  const [collection = '', id = '', field = ''] = path.split('/');
  const other = OTHERS[`${collection}.${field}`];
  if (other !== undefined) return other;
  const reading = surveyed(collection, id, field);
  if (reading === undefined) throw new Error(`neither survey says ${path}`);
  return entered(collection, field, reading);
}

function surveyed(collection: string, id: string, field: string): Reading | undefined {
  for (const survey of SURVEYS) {
    const there = survey[collection] ?? [];
    const all = Array.isArray(there) ? (there as readonly Element[]) : [there as Element];
    const own = all.filter((one) => (one['id'] as unknown) === (SAME_AS[id] ?? id));
    const found = [...own, ...all].find((one) => one[field] !== undefined)?.[field];
    if (found !== undefined) return found;
  }
  return undefined;
}

function entered(collection: string, field: string, { value, unit, typed }: Reading): Answer {
  const type = RECORD_BY_COLLECTION.get(collection)?.fields[field]?.type;
  if (Array.isArray(value)) return { points: value as unknown as readonly (readonly [number, number])[] };
  const word = String(value);
  if (type === 'choice') return { key: ENGLISH.choices[word] ?? word };
  if (type === 'size' || type === 'point') return { key: word };
  if (/^season|^designMonth/.test(field)) return { key: MONTH.format(Date.UTC(2020, Number(word) - 1, 1)) };
  if (field === 'climatePlace')
    return { key: catalog.climate.PLACES.find((place) => place.id === word)?.name ?? word };
  if (type === 'text') return { typed: word };
  // On a pad nobody writes the comma of the thousands.
  const written = typed ?? `${word} ${unit === '1' || unit === undefined ? '' : unit}`.trim();
  return { typed: written.replace(/,(?=\d{3})/g, '') };
}
