/** A handle as a slider: by finger, by arrows and Page keys, by steps; Enter types the value, Escape returns to the start. */
import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { Slider, type Sliding } from './slide.ts';

interface Finger {
  readonly clientX: number;
  readonly clientY: number;
}

/**
 * Where a finger took hold, and what its place means from then on, in SI. What stands where is measured here, once:
 * no move makes the page lay itself out.
 */
export type Grab = (from: Finger) => (finger: Finger) => number;

export interface SlideEvents {
  readonly onPointerDown: (event: PointerEvent<Element>) => void;
  readonly onPointerMove: (event: PointerEvent<Element>) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onKeyUp: (event: KeyboardEvent) => void;
  readonly onBlur: () => void;
}

export interface Slide {
  /** It is in hand: what is shown is a trial. */
  readonly held: boolean;
  readonly events: (sliding: Sliding, grab: Grab, onTap?: () => void) => SlideEvents;
  /** One step and one edit. */
  readonly step: (sliding: Sliding, by: number) => void;
}

export function useSlide(): Slide {
  const session = useSession();
  const [, go] = useLocation();
  const [held, setHeld] = useState(false);
  const meaning = useRef<((finger: Finger) => number) | undefined>(undefined);
  const slider = useMemo(() => new Slider(session, setHeld), [session]);
  useEffect(() => () => slider.end(false), [slider]);
  return {
    held,
    step: (sliding, by) => {
      slider.begin(sliding);
      slider.by(by);
      slider.end(true);
    },
    events: (sliding, grab, onTap) => ({
      onPointerDown: (event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        meaning.current = grab(event);
        slider.begin(sliding);
      },
      onPointerMove: (event) => {
        const value = meaning.current?.(event);
        if (value !== undefined) slider.to(value);
      },
      onPointerUp: () => {
        const isTap = meaning.current !== undefined && slider.busy && !slider.moved;
        meaning.current = undefined;
        slider.end(true);
        if (isTap) onTap?.();
      },
      onPointerCancel: () => {
        meaning.current = undefined;
        slider.end(false);
      },
      onBlur: () => slider.end(true),
      onKeyUp: ({ key }) => {
        if (isMove(key)) slider.end(true);
      },
      onKeyDown: (event) => {
        const { at } = sliding;
        if (event.key === 'Enter') {
          // The page that opens must not hear this same key.
          event.preventDefault();
          event.stopPropagation();
          slider.end(true);
          go(`/jobs/${session.doc}/read/${at.collection}/${at.id}/${at.field}`);
        } else if (keyDown(slider, sliding, event)) {
          event.preventDefault();
          event.stopPropagation();
        }
      },
    }),
  };
}

const WAY: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 1,
  PageDown: -1,
};

function isMove(key: string): boolean {
  return key in WAY || key === 'Home' || key === 'End';
}

/** False where the key means nothing here. */
function keyDown(slider: Slider, sliding: Sliding, { key, shiftKey }: KeyboardEvent): boolean {
  const way = WAY[key];
  if (key === 'Escape') {
    const wasHeld = slider.busy;
    slider.end(false);
    return wasHeld;
  }
  if (!isMove(key)) return false;
  slider.begin(sliding);
  const isLarge = shiftKey || key.startsWith('Page');
  if (way !== undefined) slider.by(way * (isLarge ? sliding.large : sliding.step));
  else slider.to(key === 'Home' ? sliding.least : sliding.most);
  return true;
}
