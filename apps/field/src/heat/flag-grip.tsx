/** What a finger or a key takes hold of: it lies over the flag. */
import type { HeatBasinShown } from '@firstfire/job';
import type { RefObject } from 'react';
import { useLocation } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { timeText } from './figures.ts';
import type { Flag } from './use-flag.ts';
import { verdictText } from './verdict.ts';
import type { WarmFrame } from './warm-frame.ts';

interface GripProps {
  readonly basin: HeatBasinShown;
  readonly wanted: number;
  readonly at: WarmFrame;
  readonly flag: Flag;
  readonly frame: RefObject<HTMLDivElement | null>;
}

const GRIP = 56;

export function FlagGrip({ basin, wanted, at, flag, frame }: GripProps) {
  const text = useText();
  const { doc } = useSession();
  const [, go] = useLocation();
  const events = flag.events(({ clientX }) => {
    const box = frame.current?.getBoundingClientRect();
    if (box === undefined) return wanted;
    return at.across.si((clientX - box.x - at.left) / (at.right - at.left));
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
      onKeyDown={(event) => {
        if (event.key !== 'Enter') {
          events.onKeyDown(event);
          return;
        }
        // Else the entry that opens would take the same key for its own.
        event.preventDefault();
        go(`/jobs/${doc}/read/basins/${basin.id}/warmUpTime`);
      }}
    />
  );
}
