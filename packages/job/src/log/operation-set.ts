/** A set of stored operations: by id, each content once. Two contents of one id both have a place in it. */
import { contentText } from './compare.ts';
import type { StoredOperation } from './envelope.ts';

export type Arrival =
  | 'new'
  /** The very same operation is there already. */
  | 'repeated'
  /** The id is there with another content; both stay. */
  | 'conflicting';

export class OperationSet {
  readonly #first = new Map<string, StoredOperation>();
  /** Id → content → operation, only where a second operation of the same id has come. */
  readonly #contents = new Map<string, Map<string, StoredOperation>>();

  add(operation: StoredOperation): Arrival {
    const { id } = operation;
    const first = this.#first.get(id);
    if (!first) {
      this.#first.set(id, operation);
      return 'new';
    }
    if (first === operation) return 'repeated';
    let contents = this.#contents.get(id);
    if (!contents) {
      contents = new Map([[contentText(first), first]]);
      this.#contents.set(id, contents);
    }
    const text = contentText(operation);
    if (contents.has(text)) return 'repeated';
    contents.set(text, operation);
    return 'conflicting';
  }

  has(id: string): boolean {
    return this.#first.has(id);
  }

  /** The operations under an id: none, one, or the contents of one id. */
  get(id: string): StoredOperation[] {
    const contents = this.#contents.get(id);
    if (contents) return [...contents.values()];
    const first = this.#first.get(id);
    return first ? [first] : [];
  }

  all(): StoredOperation[] {
    const all: StoredOperation[] = [];
    for (const [id, first] of this.#first) {
      const contents = this.#contents.get(id);
      if (!contents) all.push(first);
      else for (const operation of contents.values()) all.push(operation);
    }
    return all;
  }
}
