/** Pump and system curves: where they cross, the loop runs. */
import { type HeadPoint, type WaterCurves, type WaterStateShown, waterCurvesOf } from '@firstfire/job';
import { useMemo, useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { type CurveFrame, curveFrame, spread } from './curve-frame.ts';
import { bareText, flowText, headText, rpmText, shareOfTick } from './figures.ts';
import { nameIn } from './names.ts';
import { Ticks } from './ticks.tsx';
import type { Water } from './use-water.ts';
import { useWidth } from './use-width.ts';

export function Curves({ water }: { readonly water: Water }) {
  const text = useText();
  const { look, picture, view } = water;
  const curves = useMemo(() => waterCurvesOf(view, look.basin), [view, look.basin]);
  if (curves.pump.length === 0) return null;
  return (
    <section className="water-curves">
      <h2>
        {text.phrase('water.curves')}
        {picture.basins.length > 1 && ` · ${nameIn(picture.basins, look.basin, { kind: 'basins', text })}`}
      </h2>
      <p className="second">{text.phrase('water.curves-say')}</p>
      <Chart water={water} curves={curves} />
    </section>
  );
}

interface ChartProps {
  readonly water: Water;
  readonly curves: WaterCurves;
}

function Chart({ water, curves }: ChartProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const { picture, look } = water;
  const working = picture.states.filter((one) => one.basin === look.basin && one.flowing !== undefined);
  const signs = Math.max(...picture.speeds.map(({ speed }) => rpmText(speed, text).length));
  const at = curveFrame({ curves, working, text, width, signs });
  const { left, right, top, foot } = at;
  const spoken = working.map((one) => workingText(one)).join('; ');
  return (
    <div ref={frame} className="picture-chart water-chart">
      <svg width={width} height={foot + 30} role="img" aria-label={spoken}>
        {at.up.ticks.map((tick) => {
          const y = foot - shareOfTick(at.up, tick, 'head') * (foot - top);
          return (
            <g key={tick}>
              <path className="grid" d={`M${left} ${y}H${right}`} />
              <text x={left - 6} y={y + 5} className="small end">
                {bareText(tick, text)}
              </text>
            </g>
          );
        })}
        <Lines curves={curves} at={at} speed={look.speed} />
        <SpeedNames water={water} curves={curves} at={at} />
        {working.map(({ speed, filter, flowing }) => (
          <circle
            key={`${speed} ${filter}`}
            className={filter}
            cx={at.x(flowing?.flow ?? 0)}
            cy={at.y(flowing?.pumpHead ?? 0)}
            r={speed === look.speed && filter === look.filter ? 8 : 5.5}
          />
        ))}
        <path className="axis" d={`M${left} ${top}V${foot}`} />
        <Ticks scale={at.across} kind="volume-flow" {...{ left, right, foot }} />
        <text x={width} y={foot + 22} className="small end">
          {text.unit(at.across.unit)}
        </text>
        <text x="0" y={top - 4} className="small start">
          {at.up.unit}
        </text>
      </svg>
    </div>
  );

  function workingText({ speed, filter, flowing }: WaterStateShown): string {
    const rpm = rpmText(picture.speeds.find(({ id }) => id === speed)?.speed, text);
    const state = text.phrase(filter === 'clean' ? 'water.filter-clean' : 'water.filter-dirty');
    return `${rpm}, ${state}: ${flowText(flowing?.flow ?? 0, text)}, ${headText(flowing?.pumpHead ?? 0, text)}`;
  }
}

interface LinesProps {
  readonly curves: WaterCurves;
  readonly at: CurveFrame;
  readonly speed: string;
}

function Lines({ curves, at, speed }: LinesProps) {
  const line = (of: readonly HeadPoint[]): string =>
    `M${of.map(([flow, head]) => `${at.x(flow)} ${at.y(head)}`).join('L')}`;
  return (
    <>
      <clipPath id="water-curves-in">
        <rect x={at.left} y={at.top - 4} width={at.right - at.left} height={at.foot - at.top + 4} />
      </clipPath>
      <g clipPath="url(#water-curves-in)">
        {curves.system.map((one) => (
          <path key={one.filter} className={`system ${one.filter}`} d={line(one.points)} />
        ))}
        {curves.pump.map((one) => (
          <path
            key={one.speed}
            className={one.speed === speed ? 'pump chosen' : 'pump'}
            d={line(one.points)}
          />
        ))}
      </g>
    </>
  );
}

/** Each speed beside the end of its curve, none over another. */
function SpeedNames({ water, curves, at }: ChartProps & { readonly at: CurveFrame }) {
  const text = useText();
  const { picture, look } = water;
  const ends = spread(curves.pump.map(({ points }) => at.endOf(points)));
  return curves.pump.map(({ speed }, i) => (
    <text
      key={speed}
      x={at.right + 6}
      y={ends[i]}
      className={speed === look.speed ? 'small start chosen' : 'small start'}
    >
      {rpmText(picture.speeds.find(({ id }) => id === speed)?.speed, text)}
    </text>
  ));
}
