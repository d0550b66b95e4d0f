/** What the spots of a grid lie in: scanned row by row, so that no spot asks every edge of every ring. */
import type { Point } from '../plane/index.ts';
import { standingOf } from './parts.ts';
import { boundsOf, type YardQuestion } from './question.ts';

export interface Grid {
  /** Middle of the first spot. */
  readonly x: number;
  readonly y: number;
  readonly step: number;
  readonly columns: number;
  readonly rows: number;
}

/** Spots a step apart over the box around the yard. */
export function gridOf({ yard, step }: YardQuestion): Grid {
  const { x, y, width, height } = boundsOf(yard);
  const columns = Math.max(1, Math.ceil(width / step - 1e-9));
  const rows = Math.max(1, Math.ceil(height / step - 1e-9));
  return { x: x + step / 2, y: y + step / 2, step, columns, rows };
}

/**
 * The best margin a spot can have for what it lies in: infinite in the open yard, NaN where the heater's middle cannot
 * be at all, less under a roof or inside a boundary.
 */
export function groundOf(asked: YardQuestion, grid: Grid): Float64Array {
  const ground = new Float64Array(grid.columns * grid.rows).fill(Number.NaN);
  forEachInside(asked.yard, grid, (spot) => {
    ground[spot] = Number.POSITIVE_INFINITY;
  });
  for (const one of asked.things) {
    if (!one.closed) continue;
    const { apart, overhead, solid } = standingOf(asked, one);
    const margin = one.least > 0 ? apart / one.least - 1 : Number.POSITIVE_INFINITY;
    const most = solid ? Number.NaN : Math.min(margin, overhead);
    forEachInside(one.corners, grid, (spot) => {
      ground[spot] = Math.min(ground[spot] ?? Number.NaN, most);
    });
  }
  return ground;
}

/** How many spots of a grid lie within a ring. */
export function spotsWithin(ring: readonly Point[], grid: Grid): number {
  let count = 0;
  forEachInside(ring, grid, () => {
    count += 1;
  });
  return count;
}

function forEachInside(ring: readonly Point[], grid: Grid, call: (spot: number) => void): void {
  for (let row = 0; row < grid.rows; row += 1) {
    const crossings = crossingsAt(ring, grid.y + row * grid.step);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = Math.max(0, Math.ceil(((crossings[i] ?? 0) - grid.x) / grid.step));
      const to = Math.min(grid.columns - 1, Math.floor(((crossings[i + 1] ?? 0) - grid.x) / grid.step));
      for (let column = from; column <= to; column += 1) call(row * grid.columns + column);
    }
  }
}

function crossingsAt(ring: readonly Point[], y: number): readonly number[] {
  const found: number[] = [];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    if (a.y > y !== b.y > y) found.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
  });
  return found.sort((p, q) => p - q);
}
