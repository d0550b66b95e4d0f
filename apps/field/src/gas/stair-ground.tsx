/** Behind the line: the scale, the limit of the nameplate with hatch beyond it, and hatch where nothing is known. */
import type { GasState } from '@firstfire/job';
import { useId } from 'react';
import { useText } from '../text/use-text.tsx';
import { pressureUnit, ticksOf } from './figures.ts';
import type { Stair } from './stair.ts';

export interface StairPart {
  readonly stair: Stair;
  readonly state: GasState;
}

export function StairGround({ stair, state }: StairPart) {
  const text = useText();
  const { scale, plot, unknownFrom, band } = stair;
  const { left, right, bottom } = plot;
  if (scale === undefined) return <Hatch x={[left, right]} y={[plot.top, bottom]} mark />;
  const top = band ?? plot.top;
  const unit = pressureUnit(scale.high, text);
  const ticks = ticksOf(scale, unit, text).filter(({ y }) => y > top + 6);
  return (
    <>
      <text className="gas-tick" x={0} y={top} dy="-0.5em">
        {text.unit(unit)}
      </text>
      {ticks.map((tick) => (
        <g key={tick.text}>
          <line className="gas-grid" x1={left} x2={right} y1={tick.y} y2={tick.y} />
          <text className="gas-tick" x={left - 14} y={tick.y} dy="0.35em" textAnchor="end">
            {tick.text}
          </text>
        </g>
      ))}
      {scale.limit !== undefined && <Limit stair={stair} state={state} at={scale.y(scale.limit)} top={top} />}
      {unknownFrom !== undefined && <Hatch x={[unknownFrom, right]} y={[plot.top, bottom]} mark />}
      {band !== undefined && <Break y={band} x={[left, right]} />}
    </>
  );
}

interface LimitProps extends StairPart {
  readonly at: number;
  readonly top: number;
}

/** Gas that flows must not fall under the least, gas at rest not rise over the greatest. */
function Limit({ stair: { plot }, state, at, top }: LimitProps) {
  const text = useText();
  const above = state === 'all-off';
  return (
    <>
      <Hatch x={[plot.left, plot.right]} y={above ? [top, at] : [at, plot.bottom]} />
      <line className="gas-limit" x1={plot.left} x2={plot.right} y1={at} y2={at} />
      <text className="gas-note" x={plot.left + 8} y={at} dy={above ? '-0.45em' : '1.2em'}>
        {text.phrase(above ? 'gas.greatest' : 'gas.least')}
      </text>
    </>
  );
}

interface HatchProps {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** Where it stands for what is not known. */
  readonly mark?: boolean;
}

/** Strokes, not a fill: forced colours leave them standing. */
function Hatch({ x: [x0, x1], y: [y0, y1], mark = false }: HatchProps) {
  const clip = useId();
  const [width, height] = [x1 - x0, y1 - y0];
  if (!(width > 0 && height > 0)) return null;
  const count = Math.ceil((width + height) / 9);
  return (
    <g className={mark ? 'gas-hatch unknown' : 'gas-hatch'}>
      <clipPath id={clip}>
        <rect x={x0} y={y0} width={width} height={height} />
      </clipPath>
      <path
        clipPath={`url(#${clip})`}
        d={Array.from({ length: count }, (_, i) => `M${x0 + i * 9 - height} ${y1}l${height} ${-height}`).join(
          '',
        )}
      />
      {mark && (
        <text className="gas-mark" x={(x0 + x1) / 2} y={(y0 + y1) / 2} dy="0.35em" textAnchor="middle">
          ?
        </text>
      )}
    </g>
  );
}

/** Two scales meet here. */
function Break({ y, x: [x0, x1] }: { readonly y: number; readonly x: readonly [number, number] }) {
  const teeth = Math.floor((x1 - x0) / 12);
  return <path className="gas-break" d={`M${x0} ${y}${'l6 -4 6 4'.repeat(Math.max(0, teeth))}`} />;
}
