/**
 * A piping system as the code's sizing methods see it: sections that branch away from the point of delivery.
 *
 * What every method needs of it: the load each section carries (all that is connected beyond it) and the length of
 * run from the point of delivery to the end of each section.
 *
 * Source: IFGC 2018 Appendix A.3 (terms). Range: lengths and loads not negative.
 * Errors: `ill-formed` for an id used twice, an upstream section that is not there, a circle, or no section at all;
 * range issues of a negative length or load.
 */
import { fail, type Issue, ok, type Result, variableIssue } from '../../trace/index.ts';

export interface Section {
  readonly id: string;
  /** The section that feeds this one; absent at the point of delivery. */
  readonly upstream?: string;
  /** Measured, m. */
  readonly length: number;
  /** Load connected at the downstream end, standard m3/s; 0 where only further sections follow. */
  readonly load: number;
  /** Sum of L/D over the section's fittings, where they are to be counted. */
  readonly fittings?: number;
}

export interface PipingTree {
  /** Upstream before downstream. */
  readonly sections: readonly Section[];
  /** Index of the feeding section, −1 at the point of delivery. */
  readonly upstream: readonly number[];
  /** Everything connected at or beyond a section, standard m3/s. */
  readonly loads: readonly number[];
}

/** Orders the sections and adds up their loads. */
export function pipingTree(sections: readonly Section[]): Result<PipingTree> {
  const issues = sections.flatMap(sectionIssues);
  const byId = new Map(sections.map((section) => [section.id, section]));
  if (byId.size < sections.length || sections.length === 0)
    issues.push({ code: 'ill-formed', where: 'sections', reason: sections.length ? 'id-twice' : 'none' });
  for (const { id, upstream } of sections)
    if (upstream !== undefined && !byId.has(upstream))
      issues.push({
        code: 'ill-formed',
        where: `${id}.upstream`,
        found: upstream,
        reason: 'unknown-section',
      });
  if (issues.length > 0) return fail(...issues);
  const ordered = order(sections);
  if (ordered.length < sections.length)
    return fail({ code: 'ill-formed', where: 'sections', reason: 'circle' });
  const index = new Map(ordered.map((section, i) => [section.id, i]));
  const upstream = ordered.map((section) => index.get(section.upstream ?? '') ?? -1);
  return ok({ sections: ordered, upstream, loads: addUp(ordered, upstream) });
}

function sectionIssues({ id, length, load, fittings = 0 }: Section): Issue[] {
  const found = [
    variableIssue(`${id}.length`, length, { symbol: 'L', kind: 'length', min: 0, max: 1e5 }),
    variableIssue(`${id}.load`, load, { symbol: 'Q', kind: 'standard-gas-flow', min: 0, max: 100 }),
    variableIssue(`${id}.fittings`, fittings, { symbol: 'L/D', kind: 'ratio', min: 0, max: 1e5 }),
  ];
  return found.filter((issue) => issue !== undefined);
}

/** Upstream first; sections in or behind a circle are left out. */
function order(sections: readonly Section[]): Section[] {
  const children = new Map<string | undefined, Section[]>();
  for (const section of sections) {
    const siblings = children.get(section.upstream);
    if (siblings === undefined) children.set(section.upstream, [section]);
    else siblings.push(section);
  }
  const ordered = [...(children.get(undefined) ?? [])];
  for (const section of ordered) ordered.push(...(children.get(section.id) ?? []));
  return ordered;
}

function addUp(sections: readonly Section[], upstream: readonly number[]): number[] {
  const loads = sections.map((section) => section.load);
  for (let i = sections.length - 1; i >= 0; i -= 1) {
    const feeder = upstream[i] ?? -1;
    if (feeder >= 0) loads[feeder] = (loads[feeder] ?? 0) + (loads[i] ?? 0);
  }
  return loads;
}

/** Length of run (m) from the point of delivery to the end of each section, given each section's own length. */
export function runLengths(tree: PipingTree, lengths: readonly number[]): number[] {
  const runs: number[] = [];
  tree.upstream.forEach((feeder, i) => {
    runs.push((lengths[i] ?? 0) + (feeder < 0 ? 0 : (runs[feeder] ?? 0)));
  });
  return runs;
}

/** Run (m) to the most remote outlet that each section serves. */
export function farthestRuns(tree: PipingTree, runs: readonly number[]): number[] {
  const farthest = [...runs];
  for (let i = farthest.length - 1; i >= 0; i -= 1) {
    const feeder = tree.upstream[i] ?? -1;
    if (feeder >= 0) farthest[feeder] = Math.max(farthest[feeder] ?? 0, farthest[i] ?? 0);
  }
  return farthest;
}
