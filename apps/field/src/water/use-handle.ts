/**
 * Turning the bypass: while it turns, the job is shown as it would be and nothing is written; let go, it is one edit.
 * By finger, by arrows, by steps; Escape returns to the start.
 */
import { quantity } from '@firstfire/engine';
import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { readingOf } from '../entry/reading.ts';
import { trialView } from '../entry/trial.ts';
import type { JobSession, Moment } from '../session/job-session.ts';
import { useSession } from '../session/use-job.tsx';

export const BYPASS = { collection: 'waterLoop', id: '-', field: 'bypassOpening' } as const;

const STEP = 0.01;
const LARGE_STEP = 0.1;

interface Turning {
  readonly start: Moment;
  opening: number;
  frame: number;
}

/** Where the handle's pivot stands on the screen, and how to read an opening from a finger beside it. */
type OpeningAt = (event: { readonly clientX: number; readonly clientY: number }) => number;

export interface HandleEvents {
  readonly onPointerDown: (event: PointerEvent<Element>) => void;
  readonly onPointerMove: (event: PointerEvent<Element>) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onKeyUp: (event: KeyboardEvent) => void;
  readonly onBlur: () => void;
}

export interface Handle {
  readonly events: (openingAt: OpeningAt) => HandleEvents;
  /** One step and one edit. */
  readonly step: (by: number) => void;
}

class Turner {
  readonly #session: JobSession;
  #turning: Turning | undefined;

  constructor(session: JobSession) {
    this.#session = session;
  }

  get busy(): boolean {
    return this.#turning !== undefined;
  }

  begin(): Turning {
    const start = this.#session.now.get();
    this.#turning ??= { start, opening: openingIn(start), frame: 0 };
    return this.#turning;
  }

  /** Shown with the next frame, however often it is asked for until then. */
  to(opening: number): void {
    const turning = this.begin();
    turning.opening = rounded(opening);
    if (turning.frame !== 0) return;
    turning.frame = requestAnimationFrame(() => {
      turning.frame = 0;
      if (this.#turning !== turning) return;
      this.#session.show(trialView(turning.start.view, BYPASS, handleReading(turning.opening)));
    });
  }

  by(step: number): void {
    this.to(this.begin().opening + step);
  }

  end(keep: boolean): void {
    const turning = this.#turning;
    if (turning === undefined) return;
    this.#turning = undefined;
    cancelAnimationFrame(turning.frame);
    const moved = turning.opening !== openingIn(turning.start);
    this.#session.show();
    if (!keep || !moved) return;
    const { collection, field } = BYPASS;
    this.#session.edit([{ type: 'set', collection, field, value: readingOf(made(turning.opening)) }]);
  }
}

function openingIn({ view }: Moment): number {
  const reading = view.record(BYPASS.collection, BYPASS.id).reading(BYPASS.field);
  if (typeof reading?.value !== 'number') return 0;
  return quantity.si(reading.value, reading.unit ?? '1', 'ratio');
}

function made(opening: number) {
  return { value: Math.round(opening * 100), unit: '%', how: 'drawing' } as const;
}

function handleReading(opening: number) {
  return { ...made(opening), at: '' };
}

function rounded(opening: number): number {
  return Math.round(Math.min(1, Math.max(0, opening)) * 100) / 100;
}

const ARROWS: Readonly<Record<string, number>> = {
  ArrowRight: STEP,
  ArrowUp: STEP,
  ArrowLeft: -STEP,
  ArrowDown: -STEP,
  PageUp: LARGE_STEP,
  PageDown: -LARGE_STEP,
};

export function useHandle(): Handle {
  const session = useSession();
  const turner = useRef<Turner>(undefined);
  turner.current ??= new Turner(session);
  const own = turner.current;
  useEffect(() => () => own.end(false), [own]);
  return {
    events: (openingAt) => handleEvents(own, openingAt),
    step: (by) => {
      own.by(by);
      own.end(true);
    },
  };
}

function handleEvents(own: Turner, openingAt: OpeningAt): HandleEvents {
  return {
    onPointerDown: (event) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      own.begin();
    },
    onPointerMove: (event) => {
      if (event.currentTarget.hasPointerCapture(event.pointerId)) own.to(openingAt(event));
    },
    onPointerUp: () => own.end(true),
    onPointerCancel: () => own.end(false),
    onKeyDown: (event) => keyDown(own, event),
    onKeyUp: (event) => {
      if (event.key in ARROWS || event.key === 'Home' || event.key === 'End') own.end(true);
    },
    onBlur: () => own.end(true),
  };
}

function keyDown(own: Turner, event: KeyboardEvent): void {
  const { key, shiftKey } = event;
  const step = ARROWS[key];
  if (step !== undefined) own.by(shiftKey ? step * 10 : step);
  else if (key === 'Home') own.to(0);
  else if (key === 'End') own.to(1);
  else if (key === 'Escape' && own.busy) own.end(false);
  else return;
  event.preventDefault();
}
