/**
 * Filling of missing hours, openly: whoever fills counts what was filled.
 *
 * What changes slowly (temperature, dew point, wind, pressure) is drawn straight between the hours on either side, up
 * to a day and a half; sunshine takes the same hour of the day before, or after, up to three days away. The year closes on
 * itself. A longer gap is not filled.
 *
 * Source: common practice, no source.
 */
import { HOURS_A_DAY } from '../calendar.ts';

export const LONGEST_GAP = 36;
export const FARTHEST_DAY = 3;

export interface Filling {
  /** Hours that were missing and have a value now. */
  readonly filled: number;
  /** First hour of a gap that was too long; absent when all are filled. */
  readonly left?: number;
}

/** Draws straight lines over gaps, in place. */
export function fillStraight(values: Float64Array): Filling {
  const n = values.length;
  const known = values.findIndex((x) => !Number.isNaN(x));
  if (known < 0) return { filled: 0, left: 0 };
  let filled = 0;
  let last = known;
  for (let step = 1; step <= n; step++) {
    const i = (known + step) % n;
    if (Number.isNaN(values[i])) continue;
    const gap = (i - last + n) % n || n;
    if (gap > 1 && gap - 1 <= LONGEST_GAP) {
      draw(values, last, gap);
      filled += gap - 1;
    } else if (gap > 1 && n > 1) return { filled, left: (last + 1) % n };
    last = i;
  }
  return { filled };
}

function draw(values: Float64Array, from: number, gap: number): void {
  const n = values.length;
  const [a, b] = [values[from] ?? 0, values[(from + gap) % n] ?? 0];
  for (let k = 1; k < gap; k++) values[(from + k) % n] = a + ((b - a) * k) / gap;
}

/** Takes the same hour of a near day, in place. */
export function fillFromNearDays(values: Float64Array): Filling {
  const given = values.slice();
  const n = values.length;
  let filled = 0;
  for (let i = 0; i < n; i++) {
    if (!Number.isNaN(given[i])) continue;
    const found = nearDay(given, i);
    if (found === undefined) return { filled, left: i };
    values[i] = found;
    filled++;
  }
  return { filled };
}

function nearDay(values: Float64Array, at: number): number | undefined {
  const n = values.length;
  for (let day = 1; day <= FARTHEST_DAY; day++)
    for (const shift of [-day, day]) {
      const value = values[(at + shift * HOURS_A_DAY + n) % n] ?? Number.NaN;
      if (!Number.isNaN(value)) return value;
    }
  return undefined;
}
