/**
 * Keys of three parts, `heaters/h1/input`. A study looks the same ones up some thousand times: each is put together
 * once and found by its parts from then on.
 */
export type Key = `${string}/${string}/${string}`;

const kept = new Map<string, Map<string, Map<string, Key>>>();
let count = 0;
/** Those of some hundred jobs; then they are put together anew. */
const MOST_KEPT = 50_000;

export function keyOfParts(collection: string, id: string, name: string): Key {
  return kept.get(collection)?.get(id)?.get(name) ?? keep(collection, id, name);
}

function keep(collection: string, id: string, name: string): Key {
  if (count >= MOST_KEPT) {
    kept.clear();
    count = 0;
  }
  const key: Key = `${collection}/${id}/${name}`;
  const ids = kept.get(collection) ?? new Map<string, Map<string, Key>>();
  const names = ids.get(id) ?? new Map<string, Key>();
  kept.set(collection, ids.set(id, names.set(name, key)));
  count += 1;
  return key;
}
