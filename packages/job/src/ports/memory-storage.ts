/** Logs kept in memory: for tests, and for looking at a file without keeping it. */
import { inspectOperation } from '../log/check-operation.ts';
import type { StoredOperation } from '../log/envelope.ts';
import { isHlc } from '../log/hlc.ts';
import { FRESH_PEN, type PenState } from '../log/pen.ts';
import { unite } from '../log/union.ts';
import type { LogStorage } from './storage.ts';

export class MemoryStorage implements LogStorage {
  readonly #logs = new Map<string, readonly StoredOperation[]>();

  async read(doc: string): Promise<readonly StoredOperation[]> {
    return this.#log(doc);
  }

  async append(
    { doc, replica }: { readonly doc: string; readonly replica: string },
    write: (pen: PenState) => readonly StoredOperation[],
  ): Promise<readonly StoredOperation[]> {
    const written = write(penIn(this.#log(doc), replica));
    this.#unite(doc, written);
    return written;
  }

  async take(doc: string, operations: readonly StoredOperation[]): Promise<void> {
    this.#unite(doc, operations);
  }

  async documents(): Promise<readonly string[]> {
    return [...this.#logs.keys()].sort();
  }

  async erase(doc: string): Promise<void> {
    this.#logs.delete(doc);
  }

  #log(doc: string): readonly StoredOperation[] {
    return this.#logs.get(doc) ?? [];
  }

  #unite(doc: string, operations: readonly StoredOperation[]): void {
    if (operations.length > 0) this.#logs.set(doc, unite(this.#log(doc), operations));
  }
}

/** The last seq and the latest clock a replica has used in a log. */
export function penIn(operations: Iterable<StoredOperation>, replica: string): PenState {
  let { seq, hlc } = FRESH_PEN;
  for (const operation of operations) {
    const found = inspectOperation(operation);
    if (found.state === 'bad' || found.id.replica !== replica) continue;
    seq = Math.max(seq, found.id.seq);
    const clock = operation['hlc'];
    if (typeof clock === 'string' && isHlc(clock) && clock > hlc) hlc = clock;
  }
  return { seq, hlc };
}
