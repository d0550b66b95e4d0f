/** A scale along the foot of a picture. */
import type { quantity } from '@firstfire/engine';
import { useText } from '../text/use-text.tsx';
import { bareText, type Scale, shareOfTick } from './figures.ts';

interface TicksProps {
  readonly scale: Scale;
  readonly kind: quantity.Kind;
  readonly left: number;
  readonly right: number;
  readonly foot: number;
}

export function Ticks({ scale, kind, left, right, foot }: TicksProps) {
  const text = useText();
  return (
    <>
      <path className="axis" d={`M${left} ${foot}H${right}`} />
      {scale.ticks.map((tick) => {
        const at = left + shareOfTick(scale, tick, kind) * (right - left);
        return (
          <g key={tick}>
            <path className="axis" d={`M${at} ${foot}v6`} />
            <text x={at} y={foot + 22} className={at < 10 ? 'small start' : 'small'}>
              {bareText(tick, text)}
            </text>
          </g>
        );
      })}
    </>
  );
}
