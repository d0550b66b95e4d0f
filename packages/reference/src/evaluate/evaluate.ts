/**
 * Holds facts against the rules in force at a place and date.
 *
 * It knows no job: facts come in by name, and a missing one comes back as the readings that would supply it.
 */
import { editionChain } from './editions.ts';
import type { Fact, FactBook, FactName, Subject } from './fact.ts';
import type { Finding, Verdict } from './finding.ts';
import { marginOf } from './margin.ts';
import type { Profile } from './profile.ts';
import type { AnyRule, Edition, Outcome } from './rule.ts';

const DEFAULT_GUARD = 0.1;

/** Every rule in force, for each of its subjects; in the order of the rules. */
export function evaluateRules(rules: readonly AnyRule[], book: FactBook, profile: Profile): Finding[] {
  const findings: Finding[] = [];
  for (const rule of rules) {
    const edition = editionInForce(rule, profile);
    if (edition === undefined) continue;
    for (const subject of book.subjects(rule.scope))
      findings.push(judge({ rule, edition, subject, book, profile }));
  }
  return findings;
}

/**
 * The entry of a rule that holds under a profile: of the nearest edition in the chain of one that the profile names,
 * else that of any edition. A dated entry of any edition holds from its day on.
 */
export function editionInForce(rule: AnyRule, profile: Profile): Edition<unknown> | undefined {
  const lookups = chainsOf(profile);
  const distance = ({ edition }: Edition<unknown>): number => {
    if (edition === 'any') return Number.MAX_SAFE_INTEGER;
    const places = lookups.map((chain) => chain.indexOf(edition)).filter((place) => place >= 0);
    return places.length === 0 ? Number.POSITIVE_INFINITY : Math.min(...places);
  };
  return rule.editions
    .filter((entry) => entry.from <= profile.date && distance(entry) < Number.POSITIVE_INFINITY)
    .sort((a, b) => distance(a) - distance(b) || (a.from < b.from ? 1 : -1))[0];
}

const chains = new WeakMap<Profile, readonly (readonly string[])[]>();

/** A profile does not change, and every rule asks for its chains. */
function chainsOf(profile: Profile): readonly (readonly string[])[] {
  const known = chains.get(profile);
  if (known !== undefined) return known;
  const made = profile.editions.map(editionChain);
  chains.set(profile, made);
  return made;
}

interface Question {
  readonly rule: AnyRule;
  readonly edition: Edition<unknown>;
  readonly subject: Subject;
  readonly book: FactBook;
  readonly profile: Profile;
}

function isOlder({ edition }: Edition<unknown>, profile: Profile): boolean {
  return edition !== 'any' && !profile.editions.includes(edition);
}

interface Gathered {
  readonly numbers: Record<string, number>;
  readonly spreads: readonly (readonly [name: string, plusMinus: number])[];
  readonly words: Record<string, string>;
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
  readonly applies: boolean;
  readonly complete: boolean;
}

function judge(question: Question): Finding {
  const { rule, edition, subject } = question;
  const gathered = gather(question);
  const base = {
    rule: rule.id,
    line: rule.line,
    subject,
    source: edition.source,
    edition: edition.edition,
    // Read in an earlier edition than the one in force, or in none.
    checkTheBook: edition.source.known === 'from memory' || isOlder(edition, question.profile),
    missing: gathered.missing,
    assumed: gathered.assumed,
    stops: rule.stops ?? false,
  };
  if (!gathered.applies) return { ...base, missing: [], verdict: 'does not apply' };
  if (!gathered.complete) return { ...base, verdict: 'unknown' };
  const outcome = rule.check(gathered.numbers, gathered.words, edition.values);
  if (outcome.sense === 'does-not-apply') return { ...base, verdict: 'does not apply', outcome };
  const about = between(question, outcome);
  if (outcome.sense === 'holds')
    return { ...base, ...about, verdict: outcome.holds ? 'meets' : 'fails', outcome };
  const margin = marginOf(outcome) ?? Number.NaN;
  const plusMinus = spreadOfMargin(question, gathered, margin);
  return {
    ...base,
    ...about,
    outcome,
    margin,
    plusMinus,
    ...verdictOf(margin, plusMinus, rule.guard ?? DEFAULT_GUARD),
  };
}

/** The subjects that an outcome names by their ids. */
function between({ book }: Question, outcome: Outcome): Pick<Finding, 'between'> {
  const because = 'because' in outcome ? outcome.because : undefined;
  if (because?.scope === undefined || because.ids === undefined) return {};
  const subjects = book.subjects(because.scope);
  return { between: because.ids.flatMap((id) => subjects.find((one) => one.id === id) ?? []) };
}

function verdictOf(margin: number, plusMinus: number, guard: number): Pick<Finding, 'verdict' | 'tightBy'> {
  if (!(margin >= 0)) return { verdict: 'fails' };
  if (margin < plusMinus) return { verdict: 'tight', tightBy: 'uncertainty' };
  if (margin < guard) return { verdict: 'tight', tightBy: 'guard' };
  return { verdict: 'meets' };
}

function gather({ rule, subject, book }: Question): Gathered {
  const numbers: Record<string, number> = {};
  const words: Record<string, string> = {};
  const spreads: (readonly [string, number])[] = [];
  const missing = new Set<string>();
  const assumed = new Set<string>();
  let applies = true;
  let complete = true;
  const take = (key: string, fact: Fact, wanted: 'number' | 'word'): void => {
    if (fact.state === 'not-applicable') applies = false;
    else if (fact.state === 'unknown') {
      complete = false;
      for (const name of fact.missing) missing.add(name);
    } else if (fact.state !== wanted)
      throw new Error(`rule ${rule.id}: ${key} is a ${fact.state}, not a ${wanted}`);
    else {
      for (const name of fact.assumed ?? []) assumed.add(name);
      if (fact.state === 'word') words[key] = fact.value;
      else {
        numbers[key] = fact.value;
        if (fact.plusMinus) spreads.push([key, fact.plusMinus]);
      }
    }
  };
  for (const [key, name] of entries(rule.numbers)) take(key, book.fact(subject, name), 'number');
  for (const [key, name] of entries(rule.words)) take(key, book.fact(subject, name), 'word');
  return {
    numbers,
    words,
    spreads,
    missing: [...missing].sort(),
    assumed: [...assumed].sort(),
    applies,
    complete,
  };
}

function entries(names: Readonly<Record<string, FactName>>): (readonly [string, FactName])[] {
  return Object.entries(names);
}

/** Root sum of squares of what each fact's ± does to the margin; independent readings, 95 %. */
function spreadOfMargin({ rule, edition }: Question, gathered: Gathered, margin: number): number {
  let sum = 0;
  for (const [name, plusMinus] of gathered.spreads) {
    const moved = { ...gathered.numbers, [name]: (gathered.numbers[name] ?? 0) + plusMinus };
    const other = marginOf(rule.check(moved, gathered.words, edition.values));
    if (other !== undefined && Number.isFinite(other)) sum += (other - margin) ** 2;
  }
  return Math.sqrt(sum);
}

/** Worst first: fails, unknown, tight, meets, does not apply; inside a verdict the smallest margin. */
export function byUrgency(a: Finding, b: Finding): number {
  const rank: Readonly<Record<Verdict, number>> = {
    fails: 0,
    unknown: 1,
    tight: 2,
    meets: 3,
    'does not apply': 4,
  };
  const byVerdict = rank[a.verdict] - rank[b.verdict];
  if (byVerdict !== 0) return byVerdict;
  return (a.margin ?? (a.verdict === 'fails' ? -1 : 1)) - (b.margin ?? (b.verdict === 'fails' ? -1 : 1));
}
