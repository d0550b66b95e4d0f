/**
 * What a survey asks first: the readings of the few rules in each line that carry the most. Found from the job as it was
 * before anything was read, so that the round does not change under the hands of who walks it.
 */
import { type JobView, study } from '@firstfire/job';
import { type Finding, RULES } from '@firstfire/reference';
import { today } from '../session/today.ts';
import { blankView, structureOf } from './blank-view.ts';

/**
 * A question of the book, answered by one look, says less of a heater's chances than a figure worked out of several
 * readings. *Common practice, no source*: a quarter.
 */
const OF_A_LOOK = 0.25;

/** Readings after which a line has been given enough of the first round. *Common practice, no source.* */
const ENOUGH = 7;

const FIGURED = new Set(RULES.filter(({ numbers }) => Object.keys(numbers).length > 0).map(({ id }) => id));

let known: { readonly structure: string; readonly rules: ReadonlySet<string> } | undefined;

/** Rules whose readings come first, by id. */
export function keyRules(view: JobView): ReadonlySet<string> {
  const structure = structureOf(view);
  if (known?.structure === structure) return known.rules;
  const { lines } = study(blankView(view), { today: today(), uncertainty: false });
  const rules = new Set(lines.flatMap(({ findings }) => keyOfLine(findings)));
  known = { structure, rules };
  return rules;
}

function worthOf({ rule, missing }: Finding): number {
  return FIGURED.has(rule) && missing.length > 1 ? 1 : OF_A_LOOK;
}

interface Asking {
  readonly rule: string;
  readonly paths: ReadonlySet<string>;
  readonly score: number;
}

/** Rules by what their readings do: how many findings one serves on average, times how many they settle together. */
function keyOfLine(findings: readonly Finding[]): readonly string[] {
  const waiting = findings.filter(({ missing }) => missing.length > 0);
  const reach = new Map<string, number>();
  for (const finding of waiting) {
    for (const path of finding.missing) reach.set(path, (reach.get(path) ?? 0) + worthOf(finding));
  }
  const ranked = [...new Set(waiting.map(({ rule }) => rule))]
    .map((rule) => asking(rule, waiting, reach))
    .sort((a, b) => b.score - a.score || (a.rule < b.rule ? -1 : 1));
  const asked = new Set<string>();
  for (const { paths } of ranked) {
    if (asked.size >= ENOUGH) break;
    for (const path of paths) asked.add(path);
  }
  // What is settled along with them counts too: it stays when a word shows that the first of them does not apply.
  return ranked.filter(({ paths }) => [...paths].every((path) => asked.has(path))).map(({ rule }) => rule);
}

function asking(rule: string, waiting: readonly Finding[], reach: ReadonlyMap<string, number>): Asking {
  const paths = new Set(waiting.filter((one) => one.rule === rule).flatMap(({ missing }) => missing));
  const served = sum([...paths].map((path) => reach.get(path) ?? 0)) / paths.size;
  const settled = waiting.filter(({ missing }) => missing.every((path) => paths.has(path)));
  return { rule, paths, score: served * sum(settled.map(worthOf)) };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, one) => all + one, 0);
}
