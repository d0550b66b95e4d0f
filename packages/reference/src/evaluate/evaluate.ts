/**
 * Holds facts against the rules in force at a place and date.
 *
 * It knows no job: facts come in by name, and a missing one comes back as the readings that would supply it.
 */
import { editionChain } from './editions.ts';
import type { Fact, FactBook, Subject } from './fact.ts';
import type { Finding, Verdict } from './finding.ts';
import { factsFor, type Gathered, gather, NONE } from './gather.ts';
import { marginOf } from './margin.ts';
import type { Profile } from './profile.ts';
import type { AnyRule, Edition, Outcome } from './rule.ts';

const DEFAULT_GUARD = 0.1;

/** Every rule in force, for each of its subjects; in the order of the rules. */
export function evaluateRules(rules: readonly AnyRule[], book: FactBook, profile: Profile): Finding[] {
  return findingsOf(rules, { book, profile, judge: (question) => judge(question, factsFor(question)) });
}

export interface Under {
  readonly book: FactBook;
  readonly profile: Profile;
  readonly judge: (question: Question) => Finding;
}

export function findingsOf(rules: readonly AnyRule[], { book, profile, judge: judged }: Under): Finding[] {
  const findings: Finding[] = [];
  for (const rule of rules) {
    const edition = editionInForce(rule, profile);
    for (const subject of book.subjects(rule.scope)) {
      if (edition !== undefined) findings.push(judged({ rule, edition, subject, book, profile }));
      else findings.push(...unplaced({ rule, subject, book, profile }));
    }
  }
  return findings;
}

/** What a code asks cannot be looked up before anyone says where the job is: unknown, never passed over. */
function unplaced(question: Omit<Question, 'edition'>): Finding[] {
  const { rule, profile } = question;
  const { missing = NONE } = profile;
  const [edition] = rule.editions;
  if (missing.length === 0 || edition === undefined) return [];
  const {
    outcome: _o,
    margin: _m,
    plusMinus: _p,
    tightBy: _t,
    between: _b,
    ...judged
  } = judge({ ...question, edition }, factsFor(question));
  if (judged.verdict === 'does not apply') return [judged];
  return [{ ...judged, verdict: 'unknown', missing: [...new Set([...judged.missing, ...missing])].sort() }];
}

/** Rules that an amendment changed are new in every study, and must not be kept. */
const inForce = new WeakMap<Profile, WeakMap<AnyRule, Edition<unknown> | undefined>>();

/**
 * The entry of a rule that holds under a profile: of the nearest edition in the chain of one that the profile names,
 * else that of any edition. A dated entry of any edition holds from its day on.
 */
export function editionInForce(rule: AnyRule, profile: Profile): Edition<unknown> | undefined {
  const known = inForce.get(profile) ?? new WeakMap<AnyRule, Edition<unknown> | undefined>();
  // Neither profile nor rule changes.
  if (known.has(rule)) return known.get(rule);
  const found = nearest(rule, profile);
  inForce.set(profile, known.set(rule, found));
  return found;
}

function nearest(rule: AnyRule, profile: Profile): Edition<unknown> | undefined {
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

/** Every rule asks for the chains of a profile. */
function chainsOf(profile: Profile): readonly (readonly string[])[] {
  const known = chains.get(profile);
  if (known !== undefined) return known;
  const made = profile.editions.map(editionChain);
  chains.set(profile, made);
  return made;
}

/** One rule, asked of one subject. */
export interface Question {
  readonly rule: AnyRule;
  readonly edition: Edition<unknown>;
  readonly subject: Subject;
  readonly book: FactBook;
  readonly profile: Profile;
}

function isOlder({ edition }: Edition<unknown>, profile: Profile): boolean {
  return edition !== 'any' && !profile.editions.includes(edition);
}

/** `facts` as `factsFor` gives them. */
export function judge(question: Question, facts: readonly Fact[]): Finding {
  const { rule, edition, subject } = question;
  const gathered = gather(rule, facts);
  return {
    rule: rule.id,
    line: rule.line,
    subject,
    source: edition.source,
    edition: edition.edition,
    // Read in an earlier edition than the one in force, or in none.
    checkTheBook: edition.source.known === 'from memory' || isOlder(edition, question.profile),
    missing: gathered.applies ? gathered.missing : NONE,
    assumed: gathered.assumed,
    stops: rule.stops ?? false,
    ...(rule.hazard && { hazard: rule.hazard }),
    ...judgementOf(question, gathered),
  };
}

type Judgement = Pick<Finding, 'verdict' | 'outcome' | 'margin' | 'plusMinus' | 'tightBy' | 'between'> &
  Partial<Pick<Finding, 'missing'>>;

const NOT_ASKED: Judgement = { verdict: 'does not apply' };
const NOT_KNOWN: Judgement = { verdict: 'unknown' };

function judgementOf(question: Question, gathered: Gathered): Judgement {
  const { rule, edition } = question;
  if (!gathered.applies) return NOT_ASKED;
  if (!gathered.complete) return NOT_KNOWN;
  const outcome = rule.check(gathered.numbers, gathered.words, edition.values);
  if (outcome.sense === 'unread') return { verdict: 'unknown', missing: gathered.unread };
  if (outcome.sense === 'does-not-apply') return { verdict: 'does not apply', outcome };
  const about = between(question, outcome);
  if (outcome.sense === 'holds') {
    const verdict = outcome.holds ? 'meets' : 'fails';
    return about === undefined ? { verdict, outcome } : { between: about, verdict, outcome };
  }
  const margin = marginOf(outcome) ?? Number.NaN;
  const plusMinus = spreadOfMargin(question, gathered, margin);
  const tightBy = tightness(margin, plusMinus, rule.guard ?? DEFAULT_GUARD);
  const judged = { outcome, margin, plusMinus, verdict: verdictOf(margin, tightBy) };
  if (about === undefined && tightBy === undefined) return judged;
  return { ...judged, ...(about && { between: about }), ...(tightBy && { tightBy }) };
}

/** The subjects that an outcome names by their ids. */
function between({ book }: Question, outcome: Outcome): Finding['between'] {
  const because = 'because' in outcome ? outcome.because : undefined;
  if (because?.scope === undefined || because.ids === undefined) return undefined;
  const subjects = book.subjects(because.scope);
  return because.ids.flatMap((id) => subjects.find((one) => one.id === id) ?? []);
}

/** Why a limit that is met is met tightly; nothing where it is missed, or met with room. */
function tightness(margin: number, plusMinus: number, guard: number): Finding['tightBy'] {
  if (!(margin >= 0)) return undefined;
  if (margin < plusMinus) return 'uncertainty';
  return margin < guard ? 'guard' : undefined;
}

function verdictOf(margin: number, tightBy: Finding['tightBy']): Verdict {
  if (!(margin >= 0)) return 'fails';
  return tightBy === undefined ? 'meets' : 'tight';
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

const RANK: Readonly<Record<Verdict, number>> = {
  fails: 0,
  unknown: 1,
  tight: 2,
  meets: 3,
  'does not apply': 4,
};

/** Worst first: fails, unknown, tight, meets, does not apply; inside a verdict the smallest margin. */
export function byUrgency(a: Finding, b: Finding): number {
  const byVerdict = RANK[a.verdict] - RANK[b.verdict];
  return byVerdict === 0 ? byMargin(a, b) : byVerdict;
}

/** What has no margin stands at the end that its verdict says. */
function byMargin(a: Finding, b: Finding): number {
  const one = a.margin ?? (a.verdict === 'fails' ? -1 : 1);
  const other = b.margin ?? (b.verdict === 'fails' ? -1 : 1);
  return one < other ? -1 : one > other ? 1 : 0;
}
