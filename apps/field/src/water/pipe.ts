/** A pipe as it is drawn: its way on the picture, its flow, and where along it an arrow stands. */
export type Point = readonly [x: number, y: number];

export interface Pipe {
  readonly id: string;
  readonly points: readonly Point[];
  /** m3/s; undefined where it is not known. */
  readonly flow: number | undefined;
  /** A valve keeps the water out. */
  readonly shut: boolean;
  /** Share of its way at which the arrow stands; none where it is left out. */
  readonly arrow?: number;
}

/** The point and direction at a share of a pipe's way. */
export function pointAlong(points: readonly Point[], share: number): { x: number; y: number; angle: number } {
  const lengths = points
    .slice(1)
    .map(([x, y], i) => Math.hypot(x - (points[i]?.[0] ?? 0), y - (points[i]?.[1] ?? 0)));
  let left = share * lengths.reduce((all, one) => all + one, 0);
  for (const [i, length] of lengths.entries()) {
    const [from, to] = [points[i] as Point, points[i + 1] as Point];
    if (left <= length || i === lengths.length - 1) {
      const part = length === 0 ? 0 : left / length;
      const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
      return { x: from[0] + (to[0] - from[0]) * part, y: from[1] + (to[1] - from[1]) * part, angle };
    }
    left -= length;
  }
  return { x: 0, y: 0, angle: 0 };
}
