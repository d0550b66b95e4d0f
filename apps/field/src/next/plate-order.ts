/** The fields of a plate in the order they are worth reading: what settles most first, what is known last. */
import { PLATES } from '../equipment/plate.ts';
import { isKnown } from './old-pipe.ts';
import { type JobNow, roundsOf } from './rounds.ts';

/** Paths of what is printed on the plate of a record. A plate nobody asks about, of an old heater, goes by the new one's. */
export function plateOrder(now: JobNow, collection: string, id: string): readonly string[] {
  const { first, rest } = roundsOf(now);
  const asked = [...first, ...rest].filter(({ path }) => path.startsWith(`${collection}/`));
  const rank = new Map(asked.map(({ path }, i) => [path.split('/')[2], i]));
  const printed = (PLATES[collection]?.plate ?? []).flatMap(({ fields }) => fields);
  const told = (PLATES[collection]?.instructions ?? []).filter((field) => rank.has(field));
  const place = (field: string): number =>
    (isKnown(now.view, `${collection}/${id}/${field}`) ? 2 : rank.has(field) ? 0 : 1) * asked.length +
    (rank.get(field) ?? 0);
  const fields = [...printed, ...told].map((field) => ({ field, place: place(field) }));
  return fields.sort((a, b) => a.place - b.place).map(({ field }) => `${collection}/${id}/${field}`);
}
