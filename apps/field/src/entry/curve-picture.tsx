/** The points so far, joined: enough to see a slip of the pen. The table beside it says the same. */
export interface CurvePictureProps {
  readonly points: readonly (readonly [number, number])[];
  /** Corners in their order, closed; else a curve from zero. */
  readonly isOutline: boolean;
  readonly label: string;
}

const WIDTH = 240;
const HEIGHT = 120;
const EDGE = 10;

export function CurvePicture({ points, isOutline, label }: CurvePictureProps) {
  const sorted = isOutline ? points : [...points].sort((a, b) => a[0] - b[0]);
  const at = placing(sorted, isOutline);
  const drawn = sorted.map((point) => at(point).join(' '));
  return (
    <svg className="entry-curve" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {!isOutline && <path className="axis" d={`M${EDGE} ${EDGE} V${HEIGHT - EDGE} H${WIDTH - EDGE}`} />}
      {drawn.length > 1 && <path className="line" d={`M${drawn.join(' L')}${isOutline ? ' Z' : ''}`} />}
      {sorted.map((point, i) => {
        const [x, y] = at(point);
        // biome-ignore lint/suspicious/noArrayIndexKey: a point is its place
        return <circle key={i} cx={x} cy={y} r="4" />;
      })}
    </svg>
  );
}

type Point = readonly [number, number];

function placing(points: readonly Point[], isOutline: boolean): (point: Point) => Point {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const from = (all: readonly number[]): number => (isOutline ? Math.min(...all) : Math.min(0, ...all));
  const [left, right, foot, top] = [from(xs), Math.max(...xs), from(ys), Math.max(...ys)];
  const [wide, high] = [right - left || 1, top - foot || 1];
  const [fullX, fullY] = [(WIDTH - 2 * EDGE) / wide, (HEIGHT - 2 * EDGE) / high];
  const [scaleX, scaleY] = isOutline ? [Math.min(fullX, fullY), Math.min(fullX, fullY)] : [fullX, fullY];
  return ([x, y]) => [EDGE + (x - left) * scaleX, HEIGHT - EDGE - (y - foot) * scaleY];
}
