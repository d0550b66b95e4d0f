/** The picture of one column: shape first, so that it reads without colour. */
import { type Column, ticksOf } from './column.ts';
import './columns.css';

const WIDTH = 44;
const BLOCK = 34;
const LEAST = 3;
/** A margin of 10 % as a share of a side: √(0.1/0.5). */
const TIGHT = Math.sqrt(0.2);

export interface ColumnPictureProps {
  readonly column: Column;
  /** From the limit line, which lies in the middle, to either end of the picture, px. */
  readonly side?: number;
  /** As it was before the last edit, dashed. */
  readonly before?: Column;
  /** Among others: the lines of all of them are one, and the other findings stand beside the block. */
  readonly isInRow?: boolean;
}

export function ColumnPicture({ column, side = 38, before, isInRow = false }: ColumnPictureProps) {
  const height = 2 * side + 4;
  return (
    <svg
      className="column-picture"
      viewBox={`0 0 ${WIDTH} ${height}`}
      width={WIDTH}
      height={height}
      aria-hidden="true"
    >
      {column.shape !== 'unknown' && <Lines className="own-lines" side={side} />}
      <g transform={`translate(${(WIDTH - BLOCK) / 2} ${side + 2})`}>
        <Shape column={column} side={side} />
        {before !== undefined && <Before column={before} side={side} />}
        {column.bracket !== undefined && <Bracket ends={column.bracket} side={side} />}
        {isInRow && <Ticks column={column} side={side} />}
        {column.shape !== 'unknown' && <line className="limit" x1="0" x2={BLOCK} />}
      </g>
      {column.shape === 'unknown' && <Lines className="own-lines" side={side} isBeside />}
    </svg>
  );
}

interface LinesProps {
  readonly className: string;
  readonly side: number;
  /** On both sides of what stands across the limit. */
  readonly isBeside?: boolean;
}

function Lines({ className, side, isBeside = false }: LinesProps) {
  const edge = (WIDTH - BLOCK) / 2;
  const parts = isBeside
    ? [
        [0, edge],
        [WIDTH - edge, WIDTH],
      ]
    : [[0, WIDTH]];
  return (
    <g className={className}>
      {parts.map(([from, to]) => (
        <g key={from} transform={`translate(0 ${side + 2})`}>
          <line className="limit" x1={from} x2={to} />
          <line className="tight-line" x1={from} x2={to} y1={-TIGHT * side} y2={-TIGHT * side} />
        </g>
      ))}
    </g>
  );
}

function Before({ column, side }: { readonly column: Column; readonly side: number }) {
  if (column.shape !== 'meets' && column.shape !== 'tight' && column.shape !== 'fails') return null;
  const height = Math.max(LEAST, column.height * side);
  return <rect className="before" width={BLOCK} y={column.shape === 'fails' ? 0 : -height} height={height} />;
}

/** Beside the block, where the ± may turn the verdict. */
function Bracket({ ends, side }: { readonly ends: readonly [number, number]; readonly side: number }) {
  const [low, high] = ends;
  const x = BLOCK + 3;
  return <path className="bracket" d={`M${x - 3} ${-high * side}h6m-3 0V${-low * side}m-3 0h6`} />;
}

/** The other findings of the line, for screens with room. */
function Ticks({ column, side }: { readonly column: Column; readonly side: number }) {
  return (
    <g className="ticks">
      {ticksOf(column).map((height) => (
        <line key={height} x1={BLOCK + 10} x2={BLOCK + 22} y1={-height * side} y2={-height * side} />
      ))}
    </g>
  );
}

function Shape({ column, side }: { readonly column: Column; readonly side: number }) {
  const height = Math.max(LEAST, column.height * side);
  const tight = TIGHT * side;
  const width = column.partKnown ? (BLOCK * 2) / 3 : BLOCK;
  switch (column.shape) {
    case 'meets':
      return (
        <>
          <rect className="meets" width={width} y={-height} height={height} />
          {column.partKnown && <Hatch x={width} width={BLOCK - width} height={height} />}
        </>
      );
    case 'tight':
      return (
        <>
          <rect className="tight-fill" width={width} y={-height} height={height} />
          <rect className="tight-box" x="1" width={width - 2} y={-tight} height={tight} />
          {column.partKnown && <Hatch x={width} width={BLOCK - width} height={tight} />}
        </>
      );
    case 'fails':
      return <path className="fails" d={`M0 0 H${BLOCK} L${BLOCK * 0.72} ${height} H${BLOCK * 0.28} Z`} />;
    case 'unknown':
      return (
        <>
          <Hatch x={0} width={BLOCK} height={side * 0.8} below={side * 0.6} />
          <text className="mark" x={BLOCK / 2} y="4" textAnchor="middle">
            ?
          </text>
        </>
      );
    default:
      return <line className="slash" x1="8" y1="-14" x2={BLOCK - 8} y2="14" />;
  }
}

interface HatchAt {
  readonly x: number;
  readonly width: number;
  readonly height: number;
  readonly below?: number;
}

/** Strokes, not a fill: forced colours leave them standing. */
function Hatch({ x, width, height, below = 0 }: HatchAt) {
  const all = height + below;
  const strokes = Array.from({ length: Math.ceil((all + width) / 6) }, (_, i) => i * 6);
  return (
    <g className="hatch" transform={`translate(${x} ${-height})`}>
      {strokes.map((at) => (
        <line
          key={at}
          x1={Math.max(0, at - all)}
          y1={Math.min(all, at)}
          x2={Math.min(width, at)}
          y2={Math.max(0, at - width)}
        />
      ))}
      <rect width={width} height={all} />
    </g>
  );
}
