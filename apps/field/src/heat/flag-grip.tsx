/** What a finger or a key takes hold of: it lies over the flag. */
import type { HeatBasinShown } from '@firstfire/job';
import type { RefObject } from 'react';
import { useText } from '../text/use-text.tsx';
import type { Slide } from '../ui/use-slide.ts';
import { timeText } from './figures.ts';
import { flagSliding } from './flag.ts';
import { verdictText } from './verdict.ts';
import type { WarmFrame } from './warm-frame.ts';

interface GripProps {
  readonly basin: HeatBasinShown;
  readonly wanted: number;
  readonly at: WarmFrame;
  readonly slide: Slide;
  readonly frame: RefObject<HTMLDivElement | null>;
}

const GRIP = 56;

export function FlagGrip({ basin, wanted, at, slide, frame }: GripProps) {
  const text = useText();
  const events = slide.events(flagSliding(basin.id, wanted), () => {
    const left = (frame.current?.getBoundingClientRect().x ?? 0) + at.left;
    return ({ clientX }) => at.across.si((clientX - left) / (at.right - at.left));
  });
  return (
    <div
      className="heat-grip"
      style={{ left: at.x(wanted) - GRIP / 2, top: 0, height: at.foot }}
      role="slider"
      tabIndex={0}
      aria-label={text.field('basins', 'warmUpTime')}
      aria-valuemin={0}
      aria-valuemax={720}
      aria-valuenow={Number((wanted / 3600).toFixed(2))}
      aria-valuetext={`${timeText(wanted, text)}; ${verdictText(basin, text)}`}
      {...events}
    />
  );
}
