/** The pipes: as wide as their flow, dashed where it is not known, a thin line behind a shut valve. */
import type { Pipe } from './pipe.ts';
import { pointAlong } from './pipe.ts';

interface PipesProps {
  readonly pipes: readonly Pipe[];
  /** Pixels of the widest pipe, and the flow it carries. */
  readonly widest: number;
  readonly most: number;
}

const THINNEST = 3;

export function Pipes({ pipes, widest, most }: PipesProps) {
  const wide = ({ flow }: Pipe): number => Math.max(THINNEST, ((flow ?? 0) / most) * widest);
  const live = pipes.filter((one) => !one.shut && one.flow !== undefined);
  return (
    <g className="water-pipes">
      {pipes
        .filter((one) => one.shut)
        .map((one) => (
          <path key={one.id} className="shut" d={pathOf(one)} />
        ))}
      {pipes
        .filter((one) => !one.shut && one.flow === undefined)
        .map((one) => (
          <path key={one.id} className="unknown" d={pathOf(one)} />
        ))}
      {live.map((one) => (
        <path key={one.id} className="wall" d={pathOf(one)} strokeWidth={wide(one) + 5} />
      ))}
      {live.map((one) => (
        <path key={one.id} className="inside" d={pathOf(one)} strokeWidth={wide(one)} />
      ))}
      {live.map((one) =>
        one.arrow === undefined ? null : <Arrow key={one.id} pipe={one} wide={wide(one)} />,
      )}
    </g>
  );
}

function pathOf({ points }: Pipe): string {
  return `M${points.map((one) => one.join(' ')).join('L')}`;
}

function Arrow({ pipe, wide }: { readonly pipe: Pipe; readonly wide: number }) {
  const { x, y, angle } = pointAlong(pipe.points, pipe.arrow ?? 0.5);
  const size = Math.max(5, wide * 0.42);
  return (
    <path
      className="arrow"
      d={`M${size * 1.3} 0L${-size} ${-size}V${size}Z`}
      transform={`translate(${x} ${y}) rotate(${angle})`}
    />
  );
}
