/** Timing within one process: medians, because single runs on a shared machine say little. */

export interface Timing {
  /** µs. */
  readonly median: number;
  /** µs, 95th percentile. */
  readonly p95: number;
  readonly runs: number;
}

export interface BenchRow {
  readonly name: string;
  readonly ours: string;
  /** What it is held against, in the same run. */
  readonly against?: string;
  readonly ratio?: string;
  readonly goal?: string;
  readonly met?: boolean;
  /** The machine-readable reason of a missed goal, in a sentence. */
  readonly note?: string;
}

/** Runs `work` for about `milliseconds` after a warm-up of as long: a large call graph takes seconds to be compiled. */
export function time(work: () => void, milliseconds = 500): Timing {
  const warm = performance.now() + milliseconds;
  while (performance.now() < warm) work();
  const times: number[] = [];
  const end = performance.now() + milliseconds;
  while (performance.now() < end) {
    const start = performance.now();
    work();
    times.push((performance.now() - start) * 1000);
  }
  times.sort((a, b) => a - b);
  return {
    median: times[Math.floor(times.length / 2)] ?? Number.NaN,
    p95: times[Math.floor(times.length * 0.95)] ?? Number.NaN,
    runs: times.length,
  };
}

export function microseconds(value: number): string {
  if (value >= 1000) return `${(value / 1000).toPrecision(3)} ms`;
  return `${value.toPrecision(3)} µs`;
}
