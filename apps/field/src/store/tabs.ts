/** Keeps the tabs of one device in step: what one has stored, the others take in. */
import type { StoredOperation } from '@firstfire/job';

interface Told {
  readonly doc: string;
  readonly operations: readonly StoredOperation[];
}

type Listener = (doc: string, operations: readonly StoredOperation[]) => void;

export class Tabs {
  readonly #channel: BroadcastChannel | undefined;
  readonly #listeners = new Set<Listener>();

  constructor(name = 'firstfire') {
    this.#channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(name) : undefined;
    this.#channel?.addEventListener('message', ({ data }: MessageEvent<Told>) => {
      for (const listener of this.#listeners) listener(data.doc, data.operations);
    });
  }

  /** No operations: something else about the job has changed, such as a deletion. */
  tell(doc: string, operations: readonly StoredOperation[]): void {
    try {
      this.#channel?.postMessage({ doc, operations } satisfies Told);
    } catch {
      // The other tabs read it when they are next looked at.
    }
  }

  heard(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  close(): void {
    this.#listeners.clear();
    this.#channel?.close();
  }
}
