/** The picture of one column: shape first, so that it reads without colour. */
import type { Column } from './column.ts';
import './columns.css';

/** From the limit line, which lies in the middle, to either end of the picture, px. */
const SIDE = 38;
const WIDTH = 44;
const BLOCK = 34;
const LEAST = 3;
/** Of the lines beyond the picture, so that they run on from one column to the next. */
const EDGE = 11;
/** A margin of 10 % as a share of a side: √(0.1/0.5). */
const TIGHT = Math.sqrt(0.2);

export function ColumnPicture({ column, side = SIDE }: { readonly column: Column; readonly side?: number }) {
  return (
    <svg
      className="column-picture"
      viewBox={`0 0 ${WIDTH} ${2 * side + 4}`}
      width={WIDTH}
      height={2 * side + 4}
      aria-hidden="true"
    >
      <g transform={`translate(${(WIDTH - BLOCK) / 2} ${side + 2})`}>
        <Shape column={column} side={side} />
      </g>
      <line className="limit" x1={-EDGE} x2={WIDTH + EDGE} y1={side + 2} y2={side + 2} />
      <line
        className="tight-line"
        x1={-EDGE}
        x2={WIDTH + EDGE}
        y1={side + 2 - TIGHT * side}
        y2={side + 2 - TIGHT * side}
      />
    </svg>
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
