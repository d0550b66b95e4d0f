/** Outlines of basins as paths, in metres, the length along x. Only drawn: areas are the engine's. */
import type { BasinShapeShown } from '@firstfire/job';

export interface Outline {
  readonly path: string;
  readonly wide: number;
  readonly high: number;
  /** Corner that stands at the lower left, m. */
  readonly from: readonly [number, number];
}

export type Measures = Readonly<Record<string, number>>;

/** What a measure nobody has taken is drawn as. */
const GHOST: Measures = { length: 10, width: 5, widthNarrow: 3.6, legLength: 3, legWidth: 3.5 };

export function outlineOf({ shape, measures, corners }: BasinShapeShown): Outline {
  if (shape === 'polygon') return polygon(corners.length > 1 ? corners : GHOST_CORNERS);
  return drawn(shape, (field) => drawnAs(measures, field));
}

/** A measure as it is drawn, m. */
export function drawnAs(measures: Measures, field: string): number {
  return measures[field] ?? GHOST[field] ?? 1;
}

const GHOST_CORNERS = [
  [0, 0],
  [10, 0],
  [10, 4],
  [6, 6],
  [0, 6],
] as const;

function drawn(shape: string, of: (field: string) => number): Outline {
  const [length, width] = [of('length'), of('width')];
  const box = (path: string, wide: number, high: number): Outline => ({ path, wide, high, from: [0, 0] });
  switch (shape) {
    case 'round':
      return box(ellipse(length, length), length, length);
    case 'oval':
      return box(ellipse(length, width), length, width);
    case 'stadium': {
      const r = Math.min(width, length) / 2;
      const arc = `A${r} ${r} 0 0 1`;
      return box(`M${r} 0H${length - r}${arc} ${length - r} ${2 * r}H${r}${arc} ${r} 0Z`, length, 2 * r);
    }
    case 'kidney':
      return box(kidney(length, width, of('widthNarrow')), length, Math.max(width, of('widthNarrow')));
    case 'L': {
      const [out, along] = [of('legLength'), Math.min(of('legWidth'), length)];
      const path = `M0 ${out}H${length - along}V0H${length}V${width + out}H0Z`;
      return box(path, length, width + out);
    }
    default:
      return box(`M0 0H${length}V${width}H0Z`, length, width);
  }
}

function ellipse(length: number, width: number): string {
  const [a, b] = [length / 2, width / 2];
  return `M0 ${b}A${a} ${b} 0 0 1 ${length} ${b}A${a} ${b} 0 0 1 0 ${b}Z`;
}

/** Two rounds and their tangents, as its area is reckoned; a dent on one side is not drawn. */
function kidney(length: number, first: number, last: number): string {
  const middle = Math.max(first, last) / 2;
  const [r, s] = [first / 2, last / 2];
  const distance = Math.max(length - r - s, 1e-6);
  const lean = Math.max(-1, Math.min(1, (r - s) / distance));
  const rise = Math.sqrt(1 - lean * lean);
  const at = (x: number, y: number): string => `${x} ${middle + y}`;
  const [left, right] = [r + r * lean, length - s + s * lean];
  const [bigLeft, bigRight] = lean > 0 ? [1, 0] : [0, 1];
  return [
    `M${at(left, -r * rise)}L${at(right, -s * rise)}`,
    `A${s} ${s} 0 ${bigRight} 1 ${at(right, s * rise)}`,
    `L${at(left, r * rise)}A${r} ${r} 0 ${bigLeft} 1 ${at(left, -r * rise)}Z`,
  ].join('');
}

function polygon(corners: readonly (readonly [number, number])[]): Outline {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [left, foot] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - foot];
  const path = corners.map(([x, y]) => `${x - left} ${high - (y - foot)}`).join('L');
  return { path: `M${path}Z`, wide: wide || 1, high: high || 1, from: [left, foot] };
}
