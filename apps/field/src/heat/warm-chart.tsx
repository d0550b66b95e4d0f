/** The water warming up: temperature against hours, the plateau as a line, a flag at the wanted hour. */
import type { HeatBasinShown, WarmUpShown } from '@firstfire/job';
import { useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import type { Slide } from '../ui/use-slide.ts';
import { useWidth } from '../water/use-width.ts';
import { numberText, plateauText, temperatureText, timeText } from './figures.ts';
import { FlagGrip } from './flag-grip.tsx';
import type { Heat } from './use-heat.ts';
import { cutAt, longest, type WarmFrame, warmFrame } from './warm-frame.ts';

interface ChartProps {
  readonly heat: Heat;
  readonly basin: HeatBasinShown;
  readonly warmUp: WarmUpShown;
  readonly slide: Slide;
}

export function WarmChart({ heat, basin, warmUp, slide }: ChartProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const long = useRef(0);
  // Under the finger the scale stands still.
  if (!slide.held || long.current === 0) long.current = longest(basin);
  const at = warmFrame({ warmUp, long: long.current, width, text });
  return (
    <div ref={frame} className="picture-chart heat-chart">
      <svg width={width} height={at.foot + 32} role="img" aria-label={spoken()}>
        <Grid at={at} width={width} />
        <Levels at={at} warmUp={warmUp} />
        <clipPath id="heat-chart-in">
          <rect x={at.left} y={at.top - 6} width={at.right - at.left + 6} height={at.foot - at.top + 6} />
        </clipPath>
        <g clipPath="url(#heat-chart-in)">
          <Curve warmUp={warmUp} at={at} />
          {heat.trial !== undefined && <path className="trial" d={lineOf(heat.trial.points, at)} />}
        </g>
        {basin.wanted !== undefined && <FlagDrawn basin={basin} warmUp={warmUp} at={at} />}
      </svg>
      {basin.wanted !== undefined && (
        <FlagGrip basin={basin} wanted={basin.wanted} at={at} slide={slide} frame={frame} />
      )}
    </div>
  );

  function spoken(): string {
    const { start, target, time, plateau } = warmUp;
    const slots = { start: temperatureText(start, text), target: temperatureText(target, text) };
    const curve =
      time === undefined
        ? text.phrase('heat.spoken-never', slots)
        : text.phrase('heat.spoken', { ...slots, time: timeText(time, text) });
    return `${curve} ${text.phrase('heat.plateau-at', { value: plateauText(plateau, text) })}`;
  }
}

function lineOf(points: WarmUpShown['points'], at: WarmFrame): string {
  return `M${points.map(([t, T]) => `${at.x(t).toFixed(1)} ${at.y(T).toFixed(1)}`).join('L')}`;
}

function Curve({ warmUp, at }: { readonly warmUp: WarmUpShown; readonly at: WarmFrame }) {
  const { before, beyond } = cutAt(warmUp.points, warmUp);
  const area = `${lineOf(before, at)}V${at.foot}H${at.left}Z`;
  return (
    <>
      {before.length > 1 && <path className="under" d={area} />}
      {beyond.length > 1 && <path className="beyond" d={lineOf(beyond, at)} />}
      {before.length > 1 && <path className="curve" d={lineOf(before, at)} />}
      {warmUp.time !== undefined && (
        <circle className="there" cx={at.x(warmUp.time)} cy={at.y(warmUp.target)} r="7" />
      )}
    </>
  );
}

function Grid({ at, width }: { readonly at: WarmFrame; readonly width: number }) {
  const text = useText();
  const { left, right, top, foot, across, up } = at;
  return (
    <>
      {up.ticks.map((tick) => {
        const y = foot - up.tickAt(tick) * (foot - top);
        return (
          <g key={tick}>
            <path className="grid" d={`M${left} ${y}H${right}`} />
            <text x={left - 6} y={y + 5} className="small end">
              {numberText(tick, text)}
            </text>
          </g>
        );
      })}
      {across.ticks.map((tick) => {
        const x = left + across.tickAt(tick) * (right - left);
        return (
          <g key={tick}>
            <path className="tick" d={`M${x} ${foot}v6`} />
            <text x={x} y={foot + 22} className="small">
              {numberText(tick, text, Number.isInteger(tick) ? 0 : 1)}
            </text>
          </g>
        );
      })}
      <text x={width} y={foot + 22} className="small end">
        {text.unit(across.unit)}
      </text>
      <text x="0" y={top - 10} className="small start">
        {text.unit(up.unit)}
      </text>
      <path className="axis" d={`M${left} ${top - 4}V${foot}H${right}`} />
    </>
  );
}

/** Wanted temperature and plateau. */
function Levels({ at, warmUp }: { readonly at: WarmFrame; readonly warmUp: WarmUpShown }) {
  const text = useText();
  const { target, plateau } = warmUp;
  const [y, top] = [at.y(target), at.y(plateau)];
  const inside = top >= at.top - 4 && top < at.foot;
  const said = text.phrase('heat.plateau-at', { value: plateauText(plateau, text) });
  const above = top < y;
  return (
    <>
      <path className="target" d={`M${at.left} ${y}H${at.right}`} />
      <text x={at.right} y={inside && !above ? y - 7 : y + 18} className="figure end">
        {temperatureText(target, text)}
      </text>
      {inside ? (
        <>
          <path className="plateau" d={`M${at.left} ${top}H${at.right}`} />
          <text x={at.left + 8} y={above ? top - 7 : top + 18} className="small start">
            {said}
          </text>
        </>
      ) : (
        <text x={at.left + 8} y={at.top - 10} className="small start">
          ↑ {said}
        </text>
      )}
    </>
  );
}

interface DrawnProps {
  readonly basin: HeatBasinShown;
  readonly warmUp: WarmUpShown;
  readonly at: WarmFrame;
}

const PENNANT = 26;

function FlagDrawn({ basin: { wanted = 0 }, warmUp, at }: DrawnProps) {
  const text = useText();
  const x = at.x(wanted);
  const late = warmUp.time === undefined || warmUp.time > wanted;
  // Near the right edge it waves to the left.
  const way = x > at.right - 70 ? -1 : 1;
  return (
    <g className={late ? 'heat-flag late' : 'heat-flag'}>
      <path className="pole" d={`M${x} ${at.foot}V10`} />
      <path className="cloth" d={`M${x} 10l${way * PENNANT} 11l${-way * PENNANT} 11Z`} />
      <text x={x + way * (PENNANT + 6)} y="27" className={way > 0 ? 'figure start' : 'figure end'}>
        {timeText(wanted, text)}
      </text>
    </g>
  );
}
