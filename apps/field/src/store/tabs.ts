/** Keeps the tabs of one device in step: what one has stored, the others take in. */
import type { StoredOperation } from '@firstfire/job';

interface Told {
  readonly doc: string;
  readonly operations: readonly StoredOperation[];
}

type Listener = (doc: string, operations: readonly StoredOperation[]) => void;

export class Tabs {
  readonly #channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('firstfire') : undefined;
  readonly #listeners = new Set<Listener>();

  constructor() {
    this.#channel?.addEventListener('message', ({ data }: MessageEvent<Told>) => {
      for (const listener of this.#listeners) listener(data.doc, data.operations);
    });
  }

  tell(doc: string, operations: readonly StoredOperation[]): void {
    this.#channel?.postMessage({ doc, operations } satisfies Told);
  }

  heard(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}
