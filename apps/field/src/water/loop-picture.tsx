/** The loop as a live picture: pipes as wide as their flow, the bypass with a handle to turn. */
import { useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import type { Slide } from '../ui/use-slide.ts';
import { BypassGrip, BypassValve } from './bypass-handle.tsx';
import { hasHandle } from './drawn.ts';
import { Labels } from './loop-labels.tsx';
import { layLoop } from './loop-layout.ts';
import { Basins, Heaters, PumpAndFilter } from './loop-parts.tsx';
import { pipesOf } from './loop-pipes.ts';
import { marksOf } from './missing-marks.ts';
import { PartMarks } from './part-marks.tsx';
import { Pipes } from './pipes.tsx';
import { ReadingMark } from './reading-mark.tsx';
import type { Chosen } from './use-chosen.ts';
import type { Water } from './use-water.ts';
import { useWidth } from './use-width.ts';

interface LoopProps {
  readonly water: Water;
  readonly slide: Slide;
  readonly chosen: Chosen;
}

export function LoopPicture({ water, slide, chosen }: LoopProps) {
  const text = useText();
  const frame = useRef<HTMLElement>(null);
  const { picture, state, most } = water;
  const layout = layLoop(picture, useWidth(frame));
  const parts = { picture, layout, state };
  return (
    <section className="water-loop" ref={frame} aria-label={text.phrase('water.loop')}>
      <svg
        width={layout.width}
        height={layout.height}
        viewBox={`0 0 ${layout.width} ${layout.height}`}
        aria-hidden="true"
      >
        <Pipes pipes={pipesOf(parts)} widest={layout.pipe} most={most} />
        <Basins {...parts} />
        <PumpAndFilter {...parts} />
        <Heaters {...parts} />
        <Labels {...parts} />
        {hasHandle(picture) && <BypassValve {...parts} />}
      </svg>
      <PartMarks {...parts} chosen={chosen} />
      {hasHandle(picture) && <BypassGrip {...parts} slide={slide} frame={frame} />}
      {marksOf(picture, layout).map((mark) => (
        <ReadingMark key={mark.path} mark={mark} />
      ))}
    </section>
  );
}
