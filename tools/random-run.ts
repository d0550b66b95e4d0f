/** Runs random jobs and keeps what went wrong, and which verdicts each rule reached. */
import { plainView, study } from '@firstfire/job';
import { type Finding, RULES } from '@firstfire/reference';
import { exampleRecords, randomFrom, randomJob } from './random-jobs.ts';

export interface RandomRun {
  readonly jobs: number;
  /** What no job may ever do, with the seed that brings it back. */
  readonly faults: readonly string[];
  /** Rule → verdicts reached. */
  readonly reached: ReadonlyMap<string, ReadonlySet<Finding['verdict']>>;
}

/** `jobs` random jobs, of seeds from `firstSeed` on. */
export function runRandomJobs(firstSeed: number, jobs: number): RandomRun {
  const examples = exampleRecords();
  const reached = new Map<string, Set<Finding['verdict']>>(RULES.map((rule) => [rule.id, new Set()]));
  const faults: string[] = [];
  for (let seed = firstSeed; seed < firstSeed + jobs && faults.length < 20; seed += 1) {
    try {
      const job = randomJob(examples, randomFrom(seed * 2654435761));
      const found = study(plainView(job), { today: '2026-11-25', uncertainty: false });
      for (const finding of found.lines.flatMap((line) => line.findings)) {
        reached.get(finding.rule)?.add(finding.verdict);
        const fault = faultOf(finding);
        if (fault !== undefined) faults.push(`seed ${seed}: ${finding.rule}: ${fault}`);
      }
    } catch (error) {
      faults.push(`seed ${seed}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
    }
  }
  return { jobs, faults, reached };
}

function faultOf({ outcome, margin, source, verdict }: Finding): string | undefined {
  if (source.document === '') return 'a verdict without a source';
  if (margin !== undefined && !Number.isFinite(margin)) return `margin ${margin}`;
  const numbers = Object.values(outcome ?? {}).filter((value) => typeof value === 'number');
  if (numbers.some((value) => !Number.isFinite(value))) return `${verdict} of a number that is none`;
  return undefined;
}

/** Rules that did not reach every verdict they can give: a yes or no is never tight. */
export function notReached({ reached }: RandomRun): readonly string[] {
  return [...reached].flatMap(([rule, verdicts]) => {
    const wanted: readonly Finding['verdict'][] = ['fails', 'meets', 'unknown'];
    const lacking = wanted.filter((verdict) => !verdicts.has(verdict));
    return lacking.length === 0 ? [] : [`${rule}: never ${lacking.join(', ')}`];
  });
}
