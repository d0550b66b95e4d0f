/** What a session has written and the device has not yet confirmed: stored in order, tried again until it is. */
import type { StoredOperation } from '@firstfire/job';
import type { Shop } from '../store/shop.ts';
import { Signal } from '../store/signal.ts';

export type Saved =
  | { readonly state: 'saved' }
  | { readonly state: 'saving' }
  /** The device refuses: the work is in memory only, and an export is offered. */
  | { readonly state: 'refused'; readonly waiting: number; readonly reason: string };

interface At {
  readonly doc: string;
  readonly replica: string;
  readonly shop: Shop;
  /** Called once everything written so far is kept. */
  readonly stored: () => void;
}

const RETRY_MS = 4000;

export class Outbox {
  readonly saved = new Signal<Saved>({ state: 'saved' });
  readonly #at: At;
  #waiting: readonly StoredOperation[] = [];
  #busy = false;

  constructor(at: At) {
    this.#at = at;
  }

  send(operations: readonly StoredOperation[]): void {
    this.#waiting = [...this.#waiting, ...operations];
    if (this.saved.get().state !== 'refused') this.saved.set({ state: 'saving' });
    void this.#work();
  }

  waiting(): readonly StoredOperation[] {
    return this.#waiting;
  }

  async #work(): Promise<void> {
    if (this.#busy) return;
    this.#busy = true;
    const { doc, shop } = this.#at;
    try {
      while (this.#waiting.length > 0) {
        const batch = this.#waiting;
        await shop.store(doc, batch);
        this.#waiting = this.#waiting.slice(batch.length);
      }
      this.saved.set({ state: 'saved' });
      this.#at.stored();
    } catch (error) {
      const reason = error instanceof Error ? error.name : String(error);
      this.saved.set({ state: 'refused', waiting: this.#waiting.length, reason });
      setTimeout(() => void this.#work(), RETRY_MS);
    } finally {
      this.#busy = false;
    }
  }
}
