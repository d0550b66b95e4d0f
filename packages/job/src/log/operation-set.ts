/** A set of stored operations: by id, each content once. Two contents of one id both have a place in it. */
import { contentText } from './compare.ts';
import type { StoredOperation } from './envelope.ts';

interface Filed {
  readonly first: StoredOperation;
  /** Content → operation, kept only once a second operation of the same id has come. */
  contents?: Map<string, StoredOperation>;
}

export type Arrival =
  | 'new'
  /** The very same operation is there already. */
  | 'repeated'
  /** The id is there with another content; both stay. */
  | 'conflicting';

export class OperationSet {
  readonly #filed = new Map<string, Filed>();

  add(operation: StoredOperation): Arrival {
    const filed = this.#filed.get(operation.id);
    if (!filed) {
      this.#filed.set(operation.id, { first: operation });
      return 'new';
    }
    if (filed.first === operation) return 'repeated';
    filed.contents ??= new Map([[contentText(filed.first), filed.first]]);
    const text = contentText(operation);
    if (filed.contents.has(text)) return 'repeated';
    filed.contents.set(text, operation);
    return 'conflicting';
  }

  has(id: string): boolean {
    return this.#filed.has(id);
  }

  /** The operations under an id: none, one, or the contents of one id. */
  get(id: string): StoredOperation[] {
    const filed = this.#filed.get(id);
    if (!filed) return [];
    return filed.contents ? [...filed.contents.values()] : [filed.first];
  }

  all(): StoredOperation[] {
    return [...this.#filed.keys()].flatMap((id) => this.get(id));
  }
}
