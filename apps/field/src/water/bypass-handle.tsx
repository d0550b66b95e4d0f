/**
 * The bypass valve with its handle: across the pipe it is shut, along the pipe it is open. The arc shows where every
 * heater keeps inside its band in all states.
 */
import type { RefObject } from 'react';
import { useText } from '../text/use-text.tsx';
import type { Grab, Slide } from '../ui/use-slide.ts';
import { bypassSliding } from './bypass.ts';
import { shareText } from './figures.ts';
import { holdsText } from './loop-labels.tsx';
import type { LoopLayout } from './loop-layout.ts';
import type { PartsProps } from './loop-parts.tsx';

const QUARTER = Math.PI / 2;

/** Shut it points down, open it points along the pipe. */
function around({ valveX, bypassY }: LoopLayout, opening: number, radius: number): string {
  return `${valveX + radius * Math.sin(opening * QUARTER)} ${bypassY + radius * Math.cos(opening * QUARTER)}`;
}

export function BypassValve({ picture, layout }: PartsProps) {
  const text = useText();
  const { valveX: x, bypassY: y, arm, arc, narrow } = layout;
  const { opening = 0, holds } = picture.bypass;
  const way = (low: number, high: number): string =>
    `M${around(layout, low, arc)}A${arc} ${arc} 0 0 0 ${around(layout, high, arc)}`;
  const [knobX, knobY] = around(layout, opening, arm).split(' ');
  const radius = narrow ? 13 : 16;
  return (
    <g className="water-bypass">
      <path className="way" d={way(0, 1)} />
      {holds.found === 'interval' && (
        <path className="holds" d={way(holds.low, Math.max(holds.high, holds.low + 0.01))} />
      )}
      <text x={x} y={y + arc + 18} className="small">
        {text.phrase('water.shut')}
      </text>
      <text x={x + arc + 8} y={y - 19} className="small end">
        {text.phrase('water.open')}
      </text>
      <path className="tick" d={`M${around(layout, opening, arm)}L${around(layout, opening, arc + 9)}`} />
      <path className="lever" d={`M${x} ${y}L${knobX} ${knobY}`} />
      <circle className="body" cx={x} cy={y} r={radius} />
      <circle className="body" cx={knobX} cy={knobY} r={radius} />
    </g>
  );
}

interface GripProps extends PartsProps {
  readonly slide: Slide;
  readonly frame: RefObject<HTMLElement | null>;
}

const GRIP = 52;

/** What a finger or a key takes hold of: it lies over the knob. */
export function BypassGrip({ picture, layout, slide, frame }: GripProps) {
  const text = useText();
  const { opening = 0, holds } = picture.bypass;
  const [x = 0, y = 0] = around(layout, opening, layout.arm).split(' ').map(Number);
  return (
    <div
      className="water-grip"
      style={{ left: x - GRIP / 2, top: y - GRIP / 2 }}
      role="slider"
      tabIndex={0}
      aria-label={text.phrase('water.bypass')}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(opening * 100)}
      aria-valuetext={`${shareText(opening, text)}; ${holdsText(holds, text)}`}
      {...slide.events(bypassSliding(picture), grabOf(layout, frame))}
    />
  );
}

/** The opening at which the handle points to the finger; beyond the stops it stays at the nearer one. */
function grabOf({ valveX, bypassY }: LoopLayout, frame: GripProps['frame']): Grab {
  return () => {
    const { x = 0, y = 0 } = frame.current?.getBoundingClientRect() ?? {};
    return ({ clientX, clientY }) => {
      const angle = Math.atan2(clientX - x - valveX, clientY - y - bypassY);
      return angle < -QUARTER ? 1 : Math.min(1, Math.max(0, angle / QUARTER));
    };
  };
}
