/** Ids of nodes and links, and their indices. */
export class Names {
  readonly ids: readonly string[];
  readonly #at: ReadonlyMap<string, number>;

  constructor(all: readonly { readonly id: string }[]) {
    const at = new Map<string, number>();
    const ids: string[] = [];
    for (const { id } of all) {
      at.set(id, ids.length);
      ids.push(id);
    }
    this.ids = ids;
    this.#at = at;
  }

  /** Ids that stand for more than one. */
  get repeated(): readonly string[] {
    if (this.#at.size === this.ids.length) return NONE;
    return [...new Set(this.ids.filter((id, i) => this.#at.get(id) !== i))];
  }

  has(id: string): boolean {
    return this.#at.has(id);
  }

  index(id: string): number {
    return known(this.#at.get(id), id);
  }

  id(index: number): string {
    return known(this.ids[index], index);
  }
}

const NONE: readonly string[] = [];

/** A value that the caller vouches for; a missing one is a bug of the caller. */
export function known<T>(value: T | undefined, key: string | number): T {
  if (value === undefined) throw new RangeError(`the network has no ${key}`);
  return value;
}
