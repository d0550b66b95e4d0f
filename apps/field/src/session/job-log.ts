/**
 * The log of an open job, and the document it gives. A long log is shown from a snapshot at first and folded when there
 * is time, or when the first edit asks for it; a snapshot that turns out to differ from the log is dropped.
 */
import {
  canonicalJson,
  contentText,
  type FoldedDocument,
  Folding,
  packDocument,
  type StoredOperation,
} from '@firstfire/job';

export class JobLog {
  readonly doc: string;
  readonly #operations: StoredOperation[];
  #known: FoldedDocument | undefined;
  #folding: Folding | undefined;

  /** `known`: what a snapshot says that these operations give. */
  constructor(doc: string, operations: readonly StoredOperation[], known?: FoldedDocument) {
    this.doc = doc;
    this.#operations = [...operations];
    this.#known = known;
    if (known === undefined) this.folding();
  }

  document(): FoldedDocument {
    return this.#known ?? this.folding().document();
  }

  folding(): Folding {
    if (this.#folding !== undefined) return this.#folding;
    const folding = new Folding(this.doc);
    folding.take(this.#operations);
    this.#folding = folding;
    return folding;
  }

  /** Folds what was shown from a snapshot; false where the log gives something else. */
  check(): boolean {
    const known = this.#known;
    if (known === undefined) return true;
    this.#known = undefined;
    const folded = this.folding().document();
    return textOf(known) === textOf(folded);
  }

  has(operation: StoredOperation): boolean {
    const there = this.folding().stored(operation.id);
    if (there.length === 0) return false;
    const content = contentText(operation);
    return there.some((one) => one === operation || contentText(one) === content);
  }

  take(operations: readonly StoredOperation[]): void {
    this.folding().take(operations);
    this.#known = undefined;
    this.#operations.push(...operations);
  }

  all(): readonly StoredOperation[] {
    return this.#operations;
  }
}

function textOf(document: FoldedDocument): string {
  return canonicalJson(packDocument(document));
}
