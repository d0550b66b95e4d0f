/** The line itself, thick as its pipe; steps at meter and regulators; what the dearest section loses, written. */
import { useText } from '../text/use-text.tsx';
import { widthOf } from '../ui/text-room.ts';
import { loss, pressureUnit } from './figures.ts';
import type { Scale } from './scale.ts';
import type { Stair, StairLine } from './stair.ts';
import type { StairPart } from './stair-ground.tsx';

export function StairLines({ stair, state, dearest }: StairPart & { readonly dearest: string | undefined }) {
  const { lines, dots, dashed, scale } = stair;
  const worst = lines.find(({ leg }) => leg.link.type === 'section' && leg.link.id === dearest);
  return (
    <>
      {dashed.length > 1 && (
        <polyline className="gas-alone" points={dashed.map(([x, y]) => `${x},${y}`).join(' ')} />
      )}
      {lines.map((line) => (
        <line
          key={`${line.leg.link.type} ${line.leg.link.id}`}
          className={line.leg.link.type === 'section' ? 'gas-pipe' : 'gas-step'}
          x1={line.x0}
          x2={line.x1}
          y1={line.y0}
          y2={line.y1}
          strokeWidth={line.thickness}
        />
      ))}
      {dots.slice(0, -1).map((dot, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: dots stand in the order of the way
        <circle key={i} className="gas-dot" cx={dot.x} cy={dot.y} r="5.5" />
      ))}
      {worst !== undefined && scale !== undefined && state !== 'all-off' && (
        <Dearest line={worst} state={state} stair={stair} scale={scale} />
      )}
    </>
  );
}

interface DearestProps extends Pick<StairPart, 'state'> {
  readonly line: StairLine;
  readonly stair: Stair;
  readonly scale: Scale;
}

/** Letters of the words beside the limit. */
const NOTE = 15;

/** Under its stretch, over it where there is no room or the limit is named there. */
function Dearest({ line, state, stair: { plot }, scale }: DearestProps) {
  const text = useText();
  const lost = line.leg.link.drop[state];
  if (lost === undefined) return null;
  const x = (line.x0 + line.x1) / 2;
  const low = Math.max(line.y0, line.y1) + line.thickness / 2;
  const limit = scale.limit === undefined ? Number.POSITIVE_INFINITY : scale.y(scale.limit);
  const noteEnd = plot.left + 8 + widthOf(text.phrase('gas.least'), NOTE);
  const onNote = low + 24 > limit && low < limit + 22 && x - 24 < noteEnd;
  const under = low + 28 < plot.bottom && !onNote;
  return (
    <text
      className="gas-dearest"
      x={x}
      y={under ? low : Math.min(line.y0, line.y1) - line.thickness / 2}
      dy={under ? '1.25em' : '-0.6em'}
      textAnchor="middle"
    >
      {loss(lost, pressureUnit(scale.high, text), text)}
    </text>
  );
}
