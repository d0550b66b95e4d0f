/**
 * Equipment kept on this device: a logged document of its own, with heaters and pumps like those of a job, so that a job
 * copies what it uses and nothing that is kept is lost.
 */
import type { Edit, JobView, Reading, RecordView } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';
import { equipmentFields } from './plate.ts';

export const LIBRARY = 'library-equipment';

export const EQUIPMENT = ['heaters', 'pumps'] as const;

export type EquipmentKind = (typeof EQUIPMENT)[number];

export function isEquipment(collection: string): collection is EquipmentKind {
  return (EQUIPMENT as readonly string[]).includes(collection);
}

export interface Item {
  readonly kind: EquipmentKind;
  readonly id: string;
  readonly name: string;
  readonly readings: Readonly<Record<string, Reading>>;
}

/** Everything in the library, by kind and name. */
export function itemsOf(library: JobView): readonly Item[] {
  return EQUIPMENT.flatMap((kind) =>
    library
      .all(kind)
      .map((record) => ({ kind, id: record.id, name: nameOf(record), readings: readingsOf(record, kind) }))
      .sort((a, b) => a.name.localeCompare(b.name)),
  );
}

export function nameOf(record: RecordView): string {
  const name = record.reading('name')?.value;
  return typeof name === 'string' ? name : '';
}

/** The readings of a record that go with the equipment wherever it is put. */
export function readingsOf(record: RecordView, kind: EquipmentKind): Readonly<Record<string, Reading>> {
  return Object.fromEntries(
    equipmentFields(kind).flatMap((field) => {
      const reading = record.reading(field);
      return reading === undefined ? [] : [[field, reading]];
    }),
  );
}

type Kept = Omit<Item, 'id'>;

/** Puts an item into the library; one of the same kind and name takes the new readings. */
export function keepEdits(
  library: JobView,
  { kind, name, readings }: Kept,
  freshId: () => string,
): readonly Edit[] {
  const known = library.all(kind).find((record) => nameOf(record) === name);
  const element = known?.id ?? freshId();
  const add: readonly Edit[] = known === undefined ? [{ type: 'add', collection: kind, element }] : [];
  return [
    ...add,
    { type: 'set', collection: kind, element, field: 'name', value: readingOf({ value: name, how: 'told' }) },
    ...copied(readings, { collection: kind, element }),
  ];
}

/** Copies an item into a record of a job: known from its nameplate there. */
export function takeEdits({ kind, name, readings }: Item, record: RecordView): readonly Edit[] {
  const to = { collection: kind, element: record.id };
  const named = nameOf(record) === '' && name !== '';
  const own: readonly Edit[] = named
    ? [{ type: 'set', ...to, field: 'name', value: readingOf({ value: name, how: 'told' }) }]
    : [];
  return [...own, ...copied(readings, to)];
}

function copied(
  readings: Item['readings'],
  to: { readonly collection: string; readonly element: string },
): readonly Edit[] {
  return Object.entries(readings).map(([field, { value, unit, typed, note }]) => ({
    type: 'set',
    ...to,
    field,
    value: readingOf({
      value,
      how: 'nameplate',
      ...(unit === undefined ? {} : { unit }),
      ...(typed === undefined ? {} : { typed }),
      ...(note === undefined ? {} : { note }),
    }),
  }));
}
