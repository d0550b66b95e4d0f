/** The losses end to end, and below them what the heaters give, on one scale. */
import type { HeatLossShown } from '@firstfire/job';
import { useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { useWidth } from '../water/use-width.ts';
import { rateText } from './figures.ts';
import { PATTERNS } from './patterns.ts';

interface BarProps {
  readonly losses: readonly HeatLossShown[];
  readonly gross: number;
  readonly hold: number;
  readonly output: number | undefined;
}

/** Heaters many times the load are cut off, with a torn end. */
const MOST_TIMES = 2.5;
const NUMBER_NEEDS = 18;

export function LossBar({ losses, gross, hold, output = 0 }: BarProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const most = Math.max(gross, Math.min(output, gross * MOST_TIMES));
  const wide = (heat: number): number => (heat / most) * (width - 4);
  const starts = losses.map((_, i) => 2 + wide(losses.slice(0, i).reduce((sum, one) => sum + one.heat, 0)));
  const torn = output > most;
  const end = 2 + wide(Math.min(output, most));
  // Clear of the line of the load.
  const besideLimit = output > hold && wide(hold) < width * 0.55 ? wide(hold) + 14 : 12;
  return (
    <div ref={frame} className="picture-chart heat-chart heat-bar">
      <svg width={width} height="112" aria-hidden="true">
        {losses.map(({ kind, heat }, i) => (
          <g key={kind}>
            <rect className={`s${i % PATTERNS}`} x={starts[i]} y="4" width={wide(heat)} height="42" />
            {wide(heat) >= NUMBER_NEEDS && (
              <text x={(starts[i] ?? 0) + wide(heat) / 2} y="31" className={`figure n${i % PATTERNS}`}>
                {i + 1}
              </text>
            )}
          </g>
        ))}
        {output > 0 && (
          <path
            className="output"
            d={torn ? `M${end} 58H2V94H${end}l-7 -9l7 -9l-7 -9Z` : `M2 58H${end}V94H2Z`}
          />
        )}
        {output > 0 && (
          <text x={besideLimit} y="82" className="figure start">
            {text.phrase('heat.gives', { rate: rateText(output, text) })}
          </text>
        )}
        <path className="limit" d={`M${2 + wide(hold)} 0V104`} />
      </svg>
    </div>
  );
}
