/**
 * Moving the flag of the wanted hour: while it moves, the job is shown as it would be and nothing is written; let go,
 * it is one edit. By finger, by arrows, by steps; Escape returns to the start.
 */
import { quantity } from '@firstfire/engine';
import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { readingOf } from '../entry/reading.ts';
import { trialView } from '../entry/trial.ts';
import type { JobSession, Moment } from '../session/job-session.ts';
import { useSession } from '../session/use-job.tsx';

const { HOUR } = quantity;
const LEAST = 300;
const MOST = 30 * 24 * HOUR;
const SHORT = 2 * HOUR;

/** Minutes for a spa, hours for a pool. */
export function stepOf(wanted: number): number {
  return wanted <= SHORT ? 300 : HOUR;
}

interface Moving {
  readonly start: Moment;
  readonly from: number;
  wanted: number;
  frame: number;
}

class Mover {
  readonly #session: JobSession;
  readonly #basin: string;
  #moving: Moving | undefined;

  constructor(session: JobSession, basin: string) {
    this.#session = session;
    this.#basin = basin;
  }

  get busy(): boolean {
    return this.#moving !== undefined;
  }

  get basin(): string {
    return this.#basin;
  }

  begin(wanted: number): Moving {
    this.#moving ??= { start: this.#session.now.get(), from: wanted, wanted, frame: 0 };
    return this.#moving;
  }

  /** Shown with the next frame, however often it is asked for until then. */
  to(wanted: number): void {
    const moving = this.#moving;
    if (moving === undefined) return;
    moving.wanted = rounded(wanted);
    if (moving.frame !== 0) return;
    moving.frame = requestAnimationFrame(() => {
      moving.frame = 0;
      if (this.#moving !== moving) return;
      const at = { collection: 'basins', id: this.#basin, field: 'warmUpTime' };
      this.#session.show(trialView(moving.start.view, at, { ...made(moving.wanted), at: '' }));
    });
  }

  by(steps: number): void {
    if (this.#moving !== undefined) this.to(this.#moving.wanted + steps * stepOf(this.#moving.wanted));
  }

  end(keep: boolean): void {
    const moving = this.#moving;
    if (moving === undefined) return;
    this.#moving = undefined;
    cancelAnimationFrame(moving.frame);
    this.#session.show();
    if (!keep || Math.abs(moving.wanted - moving.from) < 1) return;
    this.#session.edit([
      {
        type: 'set',
        collection: 'basins',
        element: this.#basin,
        field: 'warmUpTime',
        value: readingOf(made(moving.wanted)),
      },
    ]);
  }
}

function made(wanted: number) {
  const unit = wanted < SHORT ? 'min' : 'h';
  return { value: Number(quantity.fromSi(wanted, unit, 'time').toFixed(2)), unit, how: 'told' } as const;
}

function rounded(wanted: number): number {
  const step = stepOf(wanted);
  return Math.min(MOST, Math.max(LEAST, Math.round(wanted / step) * step));
}

const ARROWS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 6,
  PageDown: -6,
};

export interface Flag {
  readonly busy: () => boolean;
  readonly events: (wantedAt: (event: { readonly clientX: number }) => number) => FlagEvents;
  /** One step and one edit. */
  readonly step: (by: number) => void;
}

export interface FlagEvents {
  readonly onPointerDown: (event: PointerEvent<Element>) => void;
  readonly onPointerMove: (event: PointerEvent<Element>) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onKeyUp: (event: KeyboardEvent) => void;
  readonly onBlur: () => void;
}

export function useFlag(basin: string, wanted: number): Flag {
  const session = useSession();
  const mover = useRef<Mover>(undefined);
  if (mover.current?.basin !== basin) mover.current = new Mover(session, basin);
  const own = mover.current;
  useEffect(() => () => own.end(false), [own]);
  return {
    busy: () => own.busy,
    step: (by) => {
      own.begin(wanted);
      own.by(by);
      own.end(true);
    },
    events: (wantedAt) => ({
      onPointerDown: (event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        own.begin(wanted);
      },
      onPointerMove: (event) => {
        if (event.currentTarget.hasPointerCapture(event.pointerId)) own.to(wantedAt(event));
      },
      onPointerUp: () => own.end(true),
      onPointerCancel: () => own.end(false),
      onKeyDown: (event) => keyDown(own, wanted, event),
      onKeyUp: ({ key }) => {
        if (key in ARROWS) own.end(true);
      },
      onBlur: () => own.end(true),
    }),
  };
}

function keyDown(own: Mover, wanted: number, event: KeyboardEvent): void {
  const { key, shiftKey } = event;
  const steps = ARROWS[key];
  if (steps !== undefined) {
    own.begin(wanted);
    own.by(shiftKey ? steps * 6 : steps);
  } else if (key === 'Escape' && own.busy) own.end(false);
  else return;
  event.preventDefault();
}
