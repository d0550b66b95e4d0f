/** Pump and system curves: where they cross, the loop runs. */
import { type HeadPoint, waterCurvesOf } from '@firstfire/job';
import { useMemo, useRef } from 'react';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { bareText, flowText, headText, rpmText, scaleTo, shareOfTick } from './figures.ts';
import type { Water } from './use-water.ts';
import { useWidth } from './use-width.ts';

const EDGE = { left: 40, right: 66, top: 14, foot: 30 };

export function Curves({ water }: { readonly water: Water }) {
  const text = useText();
  const { view } = useMoment();
  const { look, picture } = water;
  const curves = useMemo(() => waterCurvesOf(view, look.basin), [view, look.basin]);
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  if (curves.pump.length === 0) return null;
  const height = width < 560 ? 210 : 240;
  const points = [...curves.pump, ...curves.system].flatMap((one) => one.points);
  const working = picture.states.filter((one) => one.basin === look.basin && one.flowing !== undefined);
  const farthest = Math.max(...working.map((one) => one.flowing?.flow ?? 0), 1e-6) * 1.25;
  const most = curves.system.length > 0 ? farthest : Math.max(...points.map(([flow]) => flow));
  const across = scaleTo(most, 'volume-flow', { text });
  const up = scaleTo(Math.max(...curves.pump.flatMap((one) => one.points.map(([, head]) => head))), 'head', {
    text,
  });
  const x = (flow: number): number => EDGE.left + across.at(flow) * (width - EDGE.left - EDGE.right);
  const y = (head: number): number => height - EDGE.foot - up.at(head) * (height - EDGE.foot - EDGE.top);
  const line = (of: readonly HeadPoint[]): string =>
    `M${of.map(([flow, head]) => `${x(flow)} ${y(head)}`).join('L')}`;
  return (
    <section className="water-curves">
      <h2>{text.phrase('water.curves')}</h2>
      <p className="second">{text.phrase('water.curves-say')}</p>
      <div ref={frame} className="water-chart">
        <svg width={width} height={height} role="img" aria-label={spoken()}>
          <defs>
            <clipPath id="water-curves-in">
              <rect x={EDGE.left} y="0" width={width - EDGE.left - EDGE.right} height={height - EDGE.foot} />
            </clipPath>
          </defs>
          {up.ticks.map((tick) => {
            const at = height - EDGE.foot - shareOfTick(up, tick, 'head') * (height - EDGE.foot - EDGE.top);
            return (
              <g key={tick}>
                <path className="grid" d={`M${EDGE.left} ${at}H${width - EDGE.right}`} />
                <text x={EDGE.left - 6} y={at + 5} className="small end">
                  {bareText(tick, text)}
                </text>
              </g>
            );
          })}
          {across.ticks.map((tick) => (
            <text
              key={tick}
              x={EDGE.left + shareOfTick(across, tick, 'volume-flow') * (width - EDGE.left - EDGE.right)}
              y={height - 10}
              className="small"
            >
              {bareText(tick, text)}
            </text>
          ))}
          <g clipPath="url(#water-curves-in)">
            {curves.system.map((one) => (
              <path key={one.filter} className={`system ${one.filter}`} d={line(one.points)} />
            ))}
            {curves.pump.map((one) => (
              <path
                key={one.speed}
                className={one.speed === look.speed ? 'pump chosen' : 'pump'}
                d={line(one.points)}
              />
            ))}
          </g>
          {curves.pump.map((one) => (
            <text
              key={one.speed}
              x={width - EDGE.right + 6}
              y={endOf(one.points)}
              className={one.speed === look.speed ? 'small start chosen' : 'small start'}
            >
              {rpmText(picture.speeds.find(({ id }) => id === one.speed)?.speed, text).replace(/\s\D+$/, '')}
            </text>
          ))}
          {working.map(({ speed, filter, flowing }) => (
            <circle
              key={`${speed} ${filter}`}
              className={filter}
              cx={x(flowing?.flow ?? 0)}
              cy={y(flowing?.pumpHead ?? 0)}
              r={speed === look.speed && filter === look.filter ? 8 : 5.5}
            />
          ))}
          <path
            className="axis"
            d={`M${EDGE.left} ${EDGE.top}V${height - EDGE.foot}H${width - EDGE.right}`}
          />
          <text x={width} y={height - 10} className="small end">
            {text.unit(across.unit)}
          </text>
          <text x="0" y={EDGE.top} className="small start">
            {up.unit}
          </text>
        </svg>
      </div>
    </section>
  );

  /** Height of a curve where the picture ends. */
  function endOf(of: readonly HeadPoint[]): number {
    const limit = width - EDGE.right;
    const last = of.filter(([flow]) => x(flow) <= limit).at(-1);
    const next = of.find(([flow]) => x(flow) > limit);
    const head = last === undefined ? 0 : next === undefined ? last[1] : (last[1] + next[1]) / 2;
    return Math.min(height - EDGE.foot, Math.max(EDGE.top, y(head) + 5));
  }

  function spoken(): string {
    return working
      .map(({ speed, filter, flowing }) => {
        const rpm = rpmText(picture.speeds.find(({ id }) => id === speed)?.speed, text);
        const state = text.phrase(filter === 'clean' ? 'water.filter-clean' : 'water.filter-dirty');
        return `${rpm}, ${state}: ${flowText(flowing?.flow ?? 0, text)}, ${headText(flowing?.pumpHead ?? 0, text)}`;
      })
      .join('; ');
  }
}
