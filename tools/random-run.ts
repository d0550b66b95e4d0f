/** Runs random jobs and keeps what went wrong, and which verdicts each rule reached in which edition. */
import { plainView, study } from '@firstfire/job';
import { CODE_EDITIONS, type Finding, RULES, type Verdict } from '@firstfire/reference';
import { PROOFS } from '../packages/reference/src/codes/limits.table.ts';
import { type Examples, exampleRecords, randomJob } from './random-jobs.ts';
import { pick, randomFrom } from './random-values.ts';

/** `rule` or `rule in edition` → verdicts reached. */
export type Reached = Record<string, Verdict[]>;

export interface RandomRun {
  readonly jobs: number;
  /** What no job may ever do, with the seed that brings it back. */
  readonly faults: readonly string[];
  readonly reached: Reached;
  /** Entries of rules that were asked, as `rule in edition`. */
  readonly asked: readonly string[];
}

const MOST_FAULTS = 20;

/** `jobs` random jobs, of seeds from `firstSeed` on. */
export function runRandomJobs(firstSeed: number, jobs: number, examples = exampleRecords()): RandomRun {
  const reached = new Map<string, Set<Verdict>>();
  const asked = new Set<string>();
  const faults: string[] = [];
  for (let seed = firstSeed; seed < firstSeed + jobs && faults.length < MOST_FAULTS; seed += 1) {
    try {
      for (const finding of findingsOf(examples, seed)) {
        const verdicts = reached.get(finding.rule) ?? new Set();
        reached.set(finding.rule, verdicts.add(finding.verdict));
        asked.add(`${finding.rule} in ${finding.edition}`);
        const fault = faultOf(finding);
        if (fault !== undefined) faults.push(`seed ${seed}: ${finding.rule}: ${fault}`);
      }
    } catch (error) {
      faults.push(`seed ${seed}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
    }
  }
  const plain = Object.fromEntries([...reached].map(([rule, verdicts]) => [rule, [...verdicts]]));
  return { jobs, faults, reached: plain, asked: [...asked] };
}

/** What one random job is told; every two-hundredth with the ± of all it is told. */
export function findingsOf(examples: Examples, seed: number): readonly Finding[] {
  const random = randomFrom(seed * 2654435761);
  const job = randomJob(examples, random);
  // Now and then as if another edition had been adopted.
  const edition = random() < 0.1 ? { edition: pick(CODE_EDITIONS, random).id } : {};
  const found = study(plainView(job), { today: '2026-11-25', uncertainty: seed % 200 === 0, ...edition });
  return found.lines.flatMap((line) => line.findings);
}

function faultOf(finding: Finding): string | undefined {
  const { source, edition, verdict, missing, margin } = finding;
  if (source.document === '' || source.known === undefined || edition === '')
    return 'a verdict without a source';
  if (verdict === 'unknown' && missing.length === 0) return 'unknown, and nothing would settle it';
  if (margin !== undefined && verdict !== 'unknown' && margin < 0 !== (verdict === 'fails'))
    return `${verdict} at a margin of ${margin}`;
  return allFinite(finding) ? undefined : `${verdict} of a number that is none`;
}

function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  for (const one of Object.values(value)) if (!allFinite(one)) return false;
  return true;
}

/** Two runs as one. */
export function joined(one: RandomRun, other: RandomRun): RandomRun {
  const reached: Reached = { ...one.reached };
  for (const [rule, verdicts] of Object.entries(other.reached))
    reached[rule] = [...new Set([...(reached[rule] ?? []), ...verdicts])];
  return {
    jobs: one.jobs + other.jobs,
    faults: [...one.faults, ...other.faults],
    reached,
    asked: [...new Set([...one.asked, ...other.asked])].sort(),
  };
}

/** No job yet. */
export const NO_JOBS: RandomRun = { jobs: 0, faults: [], reached: {}, asked: [] };

/** Verdicts a rule can give, by what it is proved with: a yes or no is never tight, nor is what has no guard. */
export function verdictsOf(rule: string): ReadonlySet<Verdict> {
  const verdicts = new Set<Verdict>(['unknown']);
  for (const { guard, cases } of PROOFS.filter((proof) => proof.rule === rule))
    for (const one of cases) {
      if (one.sense === 'answer') verdicts.add(one.verdict);
      else for (const verdict of ['fails', 'meets'] as const) verdicts.add(verdict);
      if (one.sense !== 'answer' && guard > 0) verdicts.add('tight');
    }
  return verdicts;
}

/** Verdicts that a rule can give and did not, as `rule: verdict`. */
export function notReached({ reached }: RandomRun): readonly string[] {
  return RULES.flatMap(({ id }) => {
    const there = new Set<Verdict>(reached[id]);
    return [...verdictsOf(id)].filter((verdict) => !there.has(verdict)).map((verdict) => `${id}: ${verdict}`);
  });
}

/** Editions of rules in which none was ever asked, as `rule in edition`. */
export function notAsked({ asked }: RandomRun): readonly string[] {
  const there = new Set(asked);
  return RULES.flatMap(({ id, editions }) => editions.map(({ edition }) => `${id} in ${edition}`)).filter(
    (name) => !there.has(name),
  );
}
