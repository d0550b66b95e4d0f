/** Ids of nodes and links, and their indices. */
export class Names {
  readonly ids: readonly string[];
  readonly #at: ReadonlyMap<string, number>;

  constructor(ids: readonly string[]) {
    this.ids = ids;
    this.#at = new Map(ids.map((id, i) => [id, i]));
  }

  index(id: string): number {
    return known(this.#at.get(id), id);
  }

  id(index: number): string {
    return known(this.ids[index], index);
  }
}

/** A value that the caller vouches for; a missing one is a bug of the caller. */
export function known<T>(value: T | undefined, key: string | number): T {
  if (value === undefined) throw new RangeError(`the network has no ${key}`);
  return value;
}
