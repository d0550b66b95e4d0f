/** Twelve months as bars: with the cover filled, without it behind as an outline. */
import { useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { useWidth } from '../water/use-width.ts';
import { monthText } from './figures.ts';

export interface YearRows {
  readonly covered: readonly number[];
  readonly bare: readonly number[];
}

interface BarsProps {
  readonly rows: YearRows;
  readonly hasCover: boolean;
}

const FOOT = 150;

export function YearBars({ rows, hasCover }: BarsProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const most = Math.max(...rows.bare, ...rows.covered, 1e-9);
  const step = width / 12;
  const high = (value: number): number => Math.max(0, (value / most) * (FOOT - 8));
  return (
    <div ref={frame} className="picture-chart heat-chart heat-months">
      {hasCover && (
        <p className="heat-key second">
          <i className="with" aria-hidden="true" /> {text.phrase('heat.with-cover')}
          <i className="bare" aria-hidden="true" /> {text.phrase('heat.no-cover')}
        </p>
      )}
      <svg width={width} height={FOOT + 26} aria-hidden="true">
        {rows.covered.map((value, month) => {
          const x = month * step + step * 0.12;
          const bare = high(rows.bare[month] ?? 0);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a month is its place
            <g key={month}>
              {hasCover && <rect className="bare" x={x} y={FOOT - bare} width={step * 0.76} height={bare} />}
              <rect
                className="with"
                x={hasCover ? x + step * 0.13 : x}
                y={FOOT - high(value)}
                width={step * (hasCover ? 0.5 : 0.76)}
                height={high(value)}
              />
              <text x={month * step + step / 2} y={FOOT + 19} className="small">
                {monthText(month + 1, text, width > 560 ? 'short' : 'narrow')}
              </text>
            </g>
          );
        })}
        <path className="axis" d={`M0 ${FOOT}H${width}`} />
      </svg>
    </div>
  );
}
