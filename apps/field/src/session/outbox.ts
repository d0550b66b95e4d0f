/** What has been written to a job and the device has not yet confirmed: stored in order, tried again until it is. */
import type { StoredOperation } from '@firstfire/job';
import { type Ill, illOf } from '../store/health.ts';
import { Signal } from '../store/signal.ts';

export type Saved =
  | { readonly state: 'saved' }
  | { readonly state: 'saving' }
  /** The device refuses: the work is in memory only, and an export is offered. */
  | { readonly state: 'refused'; readonly waiting: number; readonly reason: Ill };

export interface OutboxWork {
  /** Writes down at once what waits, where a tab that dies does not take it along. */
  jot(waiting: readonly StoredOperation[]): void;
  /** Resolves when the device has them for good. */
  store(operations: readonly StoredOperation[]): Promise<void>;
  /** Called once everything written so far is kept. */
  stored(): void;
  /** Called when the device refuses. */
  refused(waiting: readonly StoredOperation[]): void;
}

const RETRY_MS = 4000;

export class Outbox {
  readonly saved = new Signal<Saved>({ state: 'saved' });
  readonly #work: OutboxWork;
  #waiting: readonly StoredOperation[] = [];
  #busy: Promise<void> | undefined;
  #again: ReturnType<typeof setTimeout> | undefined;

  constructor(work: OutboxWork) {
    this.#work = work;
  }

  /** Resolves when the device has answered, one way or the other; `saved` says which. */
  send(operations: readonly StoredOperation[]): Promise<void> {
    this.#waiting = [...this.#waiting, ...operations];
    this.#work.jot(this.#waiting);
    if (this.#waiting.length > 0 && this.saved.get().state !== 'refused') this.saved.set({ state: 'saving' });
    return this.retry();
  }

  waiting(): readonly StoredOperation[] {
    return this.#waiting;
  }

  retry(): Promise<void> {
    clearTimeout(this.#again);
    if (this.#busy !== undefined) return this.#busy;
    if (this.#waiting.length === 0) return Promise.resolve();
    this.#busy = this.#empty();
    return this.#busy;
  }

  /** Until nothing waits. What is sent from the moment it ends begins another round. */
  async #empty(): Promise<void> {
    try {
      while (this.#waiting.length > 0) {
        const batch = this.#waiting;
        await this.#work.store(batch);
        this.#waiting = this.#waiting.slice(batch.length);
        this.#work.jot(this.#waiting);
      }
      this.#busy = undefined;
      this.saved.set({ state: 'saved' });
      this.#work.stored();
    } catch (error) {
      this.#busy = undefined;
      this.saved.set({ state: 'refused', waiting: this.#waiting.length, reason: illOf(error) });
      this.#work.refused(this.#waiting);
      this.#again = setTimeout(() => void this.retry(), RETRY_MS);
    }
  }

  /** Leaves off trying, such as at the end of a test. */
  close(): void {
    clearTimeout(this.#again);
  }
}
