/**
 * One reading moved along a scale: while it moves, the job is shown as it would be and nothing is written; let go, it
 * is one edit. However often it is moved, it is shown once a frame.
 */
import type { HowKnown } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';
import { trialView } from '../entry/trial.ts';
import type { FieldAt } from '../entry/understood.ts';
import type { JobSession, Moment } from '../session/job-session.ts';

/** What is moved, in SI: where it stands and how far it goes. */
export interface Sliding {
  readonly at: FieldAt;
  readonly value: number;
  readonly step: number;
  readonly large: number;
  readonly least: number;
  readonly most: number;
  readonly made: (value: number) => { readonly value: number; readonly unit: string; readonly how: HowKnown };
}

interface Held {
  readonly start: Moment;
  readonly sliding: Sliding;
  value: number;
  frame: number;
}

export class Slider {
  readonly #session: JobSession;
  readonly #onHeld: (held: boolean) => void;
  #held: Held | undefined;

  constructor(session: JobSession, onHeld: (held: boolean) => void) {
    this.#session = session;
    this.#onHeld = onHeld;
  }

  get busy(): boolean {
    return this.#held !== undefined;
  }

  /** Whether what is held has left the place where it stood. */
  get moved(): boolean {
    return this.#held !== undefined && this.#held.value !== this.#held.sliding.value;
  }

  begin(sliding: Sliding): void {
    if (this.#held !== undefined) return;
    this.#held = { start: this.#session.now.get(), sliding, value: sliding.value, frame: 0 };
    this.#onHeld(true);
  }

  to(value: number): void {
    const held = this.#held;
    if (held === undefined) return;
    held.value = rounded(value, held.sliding);
    if (held.frame !== 0) return;
    held.frame = requestAnimationFrame(() => {
      held.frame = 0;
      if (this.#held !== held) return;
      const { at, made } = held.sliding;
      this.#session.show(trialView(held.start.view, at, { ...made(held.value), at: '' }));
    });
  }

  by(change: number): void {
    if (this.#held !== undefined) this.to(this.#held.value + change);
  }

  end(keep: boolean): void {
    const held = this.#held;
    if (held === undefined) return;
    const { moved } = this;
    this.#held = undefined;
    cancelAnimationFrame(held.frame);
    this.#onHeld(false);
    this.#session.show();
    if (!keep || !moved) return;
    const { at, made } = held.sliding;
    const element = at.id === '-' ? {} : { element: at.id };
    const value = readingOf(made(held.value));
    this.#session.edit([{ type: 'set', collection: at.collection, ...element, field: at.field, value }]);
  }
}

/** On a whole step, so that arrows and finger leave the same figures. */
function rounded(value: number, { step, least, most, value: start }: Sliding): number {
  const whole = Math.round(value / step) * step;
  const kept = Math.min(most, Math.max(least, whole));
  // Back at the start it is the start, though that stood between two steps.
  return Math.abs(kept - start) < step / 2 && Math.abs(value - start) < step / 2 ? start : kept;
}
