/** The water seen from above, to scale, each measure beside what it measures. */
import type { HeatBasinShown } from '@firstfire/job';
import { useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { useWidth } from '../water/use-width.ts';
import { Dimension } from './dimension.tsx';
import { drawnAs, type Measures, type Outline, outlineOf } from './outline.ts';

interface Placed {
  readonly field: string;
  readonly x: number;
  readonly y: number;
  /** The line it measures. */
  readonly line: string;
}

interface Frame {
  readonly left: number;
  readonly top: number;
  readonly wide: number;
  readonly high: number;
  readonly scale: number;
}

const SIDE = 92;
/** Above the water; more where a measure stands there. */
const TOP = 14;
const TOP_MEASURED = 62;
const HIGHEST = 190;

export function Plan({ basin }: { readonly basin: HeatBasinShown }) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const { shape } = basin;
  const outline = outlineOf(shape);
  const at = framed(outline, width, shape.shape === 'L' ? TOP_MEASURED : TOP);
  const placed = placedOn(shape.shape, shape.measures, at);
  const known = placed.every(({ field }) => shape.measures[field] !== undefined);
  return (
    <div ref={frame} className="heat-plan">
      <svg width={width} height={at.top + at.high + 56} role="img" aria-label={text.choice(shape.shape)}>
        <path
          className={known ? 'outline' : 'outline ghost'}
          d={outline.path}
          transform={`translate(${at.left} ${at.top}) scale(${at.scale})`}
        />
        {placed.map(({ field, line }) => (
          <path key={field} className="measure" d={line} />
        ))}
      </svg>
      {placed.map(({ field, x, y }) => (
        <Dimension key={field} basin={basin.id} field={field} x={x} y={y} />
      ))}
    </div>
  );
}

function framed({ wide, high }: Outline, width: number, top: number): Frame {
  const scale = Math.min((width - 2 * SIDE) / wide, HIGHEST / high);
  return { left: (width - wide * scale) / 2, top, wide: wide * scale, high: high * scale, scale };
}

function placedOn(shape: string, measures: Measures, at: Frame): readonly Placed[] {
  const { left, top, wide, high, scale } = at;
  const [right, foot] = [left + wide, top + high];
  const across = (field: string, y: number, [from, to]: readonly [number, number]): Placed => ({
    field,
    x: (from + to) / 2,
    y: y > foot ? y + 20 : y - 28,
    line: `M${from} ${y}H${to}M${from} ${y - 5}v10M${to} ${y - 5}v10`,
  });
  const along = (field: string, x: number, [from, to]: readonly [number, number]): Placed => ({
    field,
    x: x < left ? x - 42 : x + 42,
    y: (from + to) / 2,
    line: `M${x} ${from}V${to}M${x - 5} ${from}h10M${x - 5} ${to}h10`,
  });
  const length = across('length', foot + 12, [left, right]);
  const middle = (field: string): readonly [number, number] => {
    const half = (drawnAs(measures, field) * scale) / 2;
    return [top + high / 2 - half, top + high / 2 + half];
  };
  switch (shape) {
    case 'round':
      return [length];
    case 'kidney':
      return [
        length,
        along('width', left - 12, middle('width')),
        along('widthNarrow', right + 12, middle('widthNarrow')),
      ];
    case 'L': {
      const out = Math.min(drawnAs(measures, 'legLength') * scale, high);
      const leg = Math.min(drawnAs(measures, 'legWidth') * scale, wide);
      return [
        length,
        along('width', left - 12, [top + out, foot]),
        along('legLength', right + 12, [top, top + out]),
        across('legWidth', top - 10, [right - leg, right]),
      ];
    }
    default:
      return [length, along('width', right + 12, [top, foot])];
  }
}
