/**
 * Where everything in the pressure staircase stands, in pixels: the way to the heater from left to right, a column for
 * each section, a step at meter and regulators. The heater's own pressure zone has the scale; a higher pressure ahead
 * of a regulator is drawn in a band above it, with a scale of its own.
 */
import type { GasHeaterSeen, GasLeg, GasState } from '@firstfire/job';
import { type Ends, type Scale, scaleOf } from './scale.ts';

export interface StairSize {
  readonly width: number;
  readonly height: number;
  /** Pixels of the letter the picture is measured by: 1 at the usual text size. */
  readonly em: number;
}

export interface StairColumn {
  readonly leg: GasLeg;
  readonly x0: number;
  readonly x1: number;
}

export interface StairLine {
  readonly leg: GasLeg;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly thickness: number;
}

export interface Stair {
  readonly columns: readonly StairColumn[];
  readonly lines: readonly StairLine[];
  /** Dots at the junctions. */
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  /** The other state, as a polyline. */
  readonly dashed: readonly (readonly [number, number])[];
  readonly scale: Scale | undefined;
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** Where the supply pressure is taken hold of, and what a pixel upwards means there, Pa. */
  readonly hold?: { readonly x: number; readonly y: number; readonly perPixel: number };
  /** What the scales reach over: kept while something is moved, so that the ground stands still under it. */
  readonly reach: Reach;
  /** Foot of the band of a higher pressure; absent where there is none. */
  readonly band?: number;
  /** From here on nothing is known. */
  readonly unknownFrom?: number;
}

/** The scale of the heater's own zone, and the one ahead of the last regulator. */
export interface Reach {
  readonly own: Pick<Scale, 'low' | 'high'> | undefined;
  readonly ahead: Pick<Scale, 'low' | 'high'> | undefined;
}

export interface Shown {
  readonly state: GasState;
  readonly keep?: Reach | undefined;
}

const LEFT = 46;
const RIGHT = 22;
const TOP = 24;
const BAND = 64;
const LEAST_COLUMN = 37;

/** The least width in which every section has room for its size: where letters are large, more than the screen has. */
export function leastWidth({ way }: Pick<GasHeaterSeen, 'way'>, em: number): number {
  const sections = way.filter(({ link }) => link.type === 'section').length;
  return (LEFT + RIGHT + sections * LEAST_COLUMN) * em;
}

export function stairOf(
  heater: GasHeaterSeen,
  { state, keep }: Shown,
  { width, height, em }: StairSize,
): Stair {
  const { way } = heater;
  const sections = way.filter(({ link }) => link.type === 'section');
  const plot = { left: LEFT * em, right: width - RIGHT * em, top: TOP * em, bottom: height - 6 };
  const columns = columnsOf(sections, plot);
  const low = lastRegulator(way);
  // The outlet of the last regulator stands on the scale of what is behind it.
  const ahead: Ends[] = way.slice(0, low).map((leg, i) => (i === low - 1 ? { from: leg.from } : leg));
  const own: Ends[] = [...way.slice(Math.max(0, low - 1), low).map(({ to }) => ({ to })), ...way.slice(low)];
  const band = low > 0 ? plot.top + BAND * em : undefined;
  const scale = scaleOf(own, {
    state,
    heater,
    keep: keep?.own,
    top: band === undefined ? plot.top : band + 22 * em,
    bottom: plot.bottom,
  });
  const above = scaleOf(ahead, {
    state,
    heater: undefined,
    keep: keep?.ahead,
    top: plot.top,
    bottom: (band ?? 0) - 14 * em,
  });
  const y = (index: number, value: number): number => (index < low ? above : scale)?.y(value) ?? plot.bottom;
  const walker = new Walker(columns, plot.left, y);
  const drawn = walker.walk(way, state, low);
  const dashed = state === 'everything-on' ? walker.walk(way, 'heater-alone', low).points : [];
  const first = drawn.dots[0];
  const zone = low > 0 ? above : scale;
  return {
    columns,
    reach: { own: scale, ahead: above },
    ...(first === undefined || zone === undefined
      ? {}
      : { hold: { ...first, perPixel: 1 / (zone.y(0) - zone.y(1)) } }),
    lines: drawn.lines,
    dots: drawn.dots,
    dashed,
    scale,
    plot,
    ...(band === undefined ? {} : { band }),
    ...(drawn.unknownFrom === undefined ? {} : { unknownFrom: drawn.unknownFrom }),
  };
}

/** How many pieces of the way lie ahead of the heater's own zone; the regulator itself ends them. */
function lastRegulator(way: readonly GasLeg[]): number {
  return way.findLastIndex(({ link }) => link.type === 'regulator') + 1;
}

/** Wide as the section is long, as far as the width allows: none so narrow that its size cannot stand in it. */
function columnsOf(sections: readonly GasLeg[], plot: Stair['plot']): readonly StairColumn[] {
  const all = plot.right - plot.left;
  const least = Math.min(LEAST_COLUMN * 1.6, all / Math.max(sections.length, 1));
  const known = sections.flatMap(({ link }) => (link.length === undefined ? [] : [link.length]));
  const usual = known.length === 0 ? 1 : known.reduce((sum, one) => sum + one, 0) / known.length;
  const lengths = sections.map(({ link }) => link.length ?? usual);
  const sum = lengths.reduce((total, one) => total + one, 0) || 1;
  const free = Math.max(0, all - least * sections.length);
  let x = plot.left;
  return sections.map((leg, i) => {
    const x0 = x;
    x += least + (free * (lengths[i] ?? 0)) / sum;
    return { leg, x0, x1: x };
  });
}

/** A line as thick as its pipe: an inch is 5 pixels. */
export function thicknessOf(bore: number | undefined): number {
  return bore === undefined ? 3 : Math.min(16, Math.max(2.5, (bore / 0.0254) * 5));
}

interface Walked {
  readonly lines: readonly StairLine[];
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  readonly points: readonly (readonly [number, number])[];
  readonly unknownFrom?: number;
}

class Walker {
  readonly #columns: readonly StairColumn[];
  readonly #left: number;
  readonly #y: (index: number, value: number) => number;

  constructor(columns: readonly StairColumn[], left: number, y: (index: number, value: number) => number) {
    this.#columns = columns;
    this.#left = left;
    this.#y = y;
  }

  walk(way: readonly GasLeg[], state: GasState, low: number): Walked {
    const lines: StairLine[] = [];
    const dots: { x: number; y: number }[] = [];
    const points: [number, number][] = [];
    let x = this.#left;
    for (const [index, leg] of way.entries()) {
      const [from, to] = [leg.from[state], leg.to[state]];
      if (from === undefined || to === undefined) return { lines, dots, points, unknownFrom: x };
      const column = this.#columns.find((one) => one.leg === leg);
      const x1 = column?.x1 ?? x;
      // A regulator's outlet stands in the zone behind it.
      const end = leg.link.type === 'regulator' && index + 1 === low ? low : index;
      const [y0, y1] = [this.#y(index, from), this.#y(end, to)];
      if (points.length === 0) {
        points.push([x, y0]);
        dots.push({ x, y: y0 });
      }
      points.push([x1, y1]);
      dots.push({ x: x1, y: y1 });
      lines.push({ leg, x0: x, y0, x1, y1, thickness: thicknessOf(leg.link.bore) });
      x = x1;
    }
    return { lines, dots, points };
  }
}
