/** Missing readings, ranked: those of the first round first, then by the findings each would settle. */
import type { Study } from '@firstfire/job';

export interface Missing {
  readonly path: string;
  /** A rule of the first round waits for it. */
  readonly first: boolean;
  /** Findings that wait for it. */
  readonly settles: number;
  /** Findings it would settle, each shared among the readings it lacks. */
  readonly weight: number;
}

/** `keys` are the rules of the first round. A finding counts for as much as it lacks few. */
export function measureNext({ lines }: Study, keys: ReadonlySet<string> = new Set()): readonly Missing[] {
  const found = new Map<string, Omit<Missing, 'path'>>();
  for (const { rule, missing } of lines.flatMap((line) => line.findings)) {
    for (const path of missing) {
      const { first = false, settles = 0, weight = 0 } = found.get(path) ?? {};
      found.set(path, {
        first: first || keys.has(rule),
        settles: settles + 1,
        weight: weight + 1 / missing.length,
      });
    }
  }
  return [...found]
    .map(([path, one]) => ({ path, ...one }))
    .sort((a, b) => Number(b.first) - Number(a.first) || b.weight - a.weight || (a.path < b.path ? -1 : 1));
}
