/** Where logs are kept. Whatever the adapter, nothing acknowledged is ever lost and nothing stored is ever changed. */
import type { StoredOperation } from '../log/envelope.ts';
import type { PenState } from '../log/pen.ts';

export interface LogStorage {
  /** All operations of a document in canonical order; none for a document it does not know. */
  read(doc: string): Promise<readonly StoredOperation[]>;

  /**
   * Stores what a replica writes, in one transaction: tells `write` the last seq and clock this replica has used in
   * the document, and stores all it returns, or nothing if it throws. Two appends never see the same pen. Resolves
   * with what was stored, once it would survive a power cut.
   */
  append(
    at: { readonly doc: string; readonly replica: string },
    write: (pen: PenState) => readonly StoredOperation[],
  ): Promise<readonly StoredOperation[]>;

  /** Unites operations from elsewhere with the document's, all or none. Those it has already change nothing. */
  take(doc: string, operations: readonly StoredOperation[]): Promise<void>;

  /** The documents it knows, sorted. */
  documents(): Promise<readonly string[]>;

  /** Forgets a document altogether, such as one of people's contact data. */
  erase(doc: string): Promise<void>;
}
