/** Work that is asked for more often than it needs doing: one at a time, and once more when asked meanwhile. */
export class Turn {
  readonly #work: () => Promise<void>;
  #running: Promise<void> | undefined;
  #next: Promise<void> | undefined;

  constructor(work: () => Promise<void>) {
    this.#work = work;
  }

  /** Resolves after a run that began no earlier than now. */
  take(): Promise<void> {
    if (this.#running === undefined) return this.#begin();
    this.#next ??= this.#running.catch(() => {}).then(() => this.#begin());
    return this.#next;
  }

  #begin(): Promise<void> {
    this.#next = undefined;
    this.#running = this.#work().finally(() => {
      this.#running = undefined;
    });
    return this.#running;
  }
}
