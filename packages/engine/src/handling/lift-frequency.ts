/**
 * How often: the frequency multiplier of the revised lifting equation.
 *
 * Straight between the rows; at 0.2 lifts a minute and fewer the first row holds, above 15 nothing may be lifted. The
 * table jumps to zero where a duration does not allow a frequency; just under the jump the row before it holds.
 *
 * Source: NIOSH 94-110, Table 5 (from memory).
 */
import { INCH } from '../quantity/index.ts';

/** For how long a day, recovery between included. */
export type LiftDuration = 'short' | 'moderate' | 'long';

/** Seconds up to which a duration counts: an hour, two, eight. */
export const DURATIONS: Readonly<Record<LiftDuration, number>> = {
  short: 3600,
  moderate: 7200,
  long: 28_800,
};

/** Hands under 30 in at the start, and at or above. */
type Pair = readonly [low: number, high: number];

interface Row {
  readonly perMinute: number;
  readonly short: Pair;
  readonly moderate: Pair;
  readonly long: Pair;
}

function row(perMinute: number, short: Pair, ...[moderate, long]: readonly [Pair, Pair]): Row {
  return { perMinute, short, moderate, long };
}

/** Lifts a minute, then the multiplier for short, moderate and long work. */
export const FREQUENCY_TABLE: readonly Row[] = [
  row(0.2, [1.0, 1.0], [0.95, 0.95], [0.85, 0.85]),
  row(0.5, [0.97, 0.97], [0.92, 0.92], [0.81, 0.81]),
  row(1, [0.94, 0.94], [0.88, 0.88], [0.75, 0.75]),
  row(2, [0.91, 0.91], [0.84, 0.84], [0.65, 0.65]),
  row(3, [0.88, 0.88], [0.79, 0.79], [0.55, 0.55]),
  row(4, [0.84, 0.84], [0.72, 0.72], [0.45, 0.45]),
  row(5, [0.8, 0.8], [0.6, 0.6], [0.35, 0.35]),
  row(6, [0.75, 0.75], [0.5, 0.5], [0.27, 0.27]),
  row(7, [0.7, 0.7], [0.42, 0.42], [0.22, 0.22]),
  row(8, [0.6, 0.6], [0.35, 0.35], [0.18, 0.18]),
  row(9, [0.52, 0.52], [0.3, 0.3], [0, 0.15]),
  row(10, [0.45, 0.45], [0.26, 0.26], [0, 0.13]),
  row(11, [0.41, 0.41], [0, 0.23], [0, 0]),
  row(12, [0.37, 0.37], [0, 0.21], [0, 0]),
  row(13, [0, 0.34], [0, 0], [0, 0]),
  row(14, [0, 0.31], [0, 0], [0, 0]),
  row(15, [0, 0.28], [0, 0], [0, 0]),
];

/** Height of the hands at which the column changes: 30 in. */
export const WAIST = 30 * INCH;

export interface LiftPace {
  readonly perMinute: number;
  readonly duration: LiftDuration;
  /** Height of the hands at the start, m. */
  readonly vertical: number;
}

/** FM, 0 to 1. Worked example: 3 a minute for an hour → 0.88. Beyond 15 a minute 0. */
export function frequencyMultiplier({ perMinute, duration, vertical }: LiftPace): number {
  const of = (one: Row): number => one[duration][vertical < WAIST ? 0 : 1];
  const after = FREQUENCY_TABLE.findIndex((one) => one.perMinute >= perMinute);
  if (after < 0) return 0;
  const next = FREQUENCY_TABLE[after] as Row;
  const before = FREQUENCY_TABLE[after - 1];
  if (before === undefined || next.perMinute === perMinute) return of(next);
  if (of(next) === 0) return of(before);
  const part = (perMinute - before.perMinute) / (next.perMinute - before.perMinute);
  return of(before) + part * (of(next) - of(before));
}
