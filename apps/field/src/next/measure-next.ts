/** Missing readings, ranked by the findings each would settle: a finding counts for as much as it lacks few. */
import type { Study } from '@firstfire/job';

export interface Missing {
  readonly path: string;
  /** Findings that wait for it. */
  readonly settles: number;
  /** Findings it would settle, each shared among the readings it lacks. */
  readonly weight: number;
}

export function measureNext({ lines }: Study): readonly Missing[] {
  const found = new Map<string, { settles: number; weight: number }>();
  for (const finding of lines.flatMap((line) => line.findings)) {
    for (const path of finding.missing) {
      const one = found.get(path) ?? { settles: 0, weight: 0 };
      one.settles += 1;
      one.weight += 1 / finding.missing.length;
      found.set(path, one);
    }
  }
  return [...found]
    .map(([path, one]) => ({ path, ...one }))
    .sort((a, b) => b.weight - a.weight || (a.path < b.path ? -1 : 1));
}
