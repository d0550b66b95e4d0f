/**
 * Holds a rule against its proof: just under, at and just over each limit, every answer, every fact missing in turn.
 * Gives what does not fit, so that a rule made wrong on purpose can be held against the same proof.
 */
import type { AnyRule, FactName, Finding, Outcome, Verdict } from '../../evaluate/index.ts';
import { type Asked, findingOn, findingOnDay } from './facts-book.ts';
import type { Case, Facts, Moved, Proof } from './proof.ts';

/** What a source’s figure may differ by from the one the rule carries: seven digits, as conversions are printed. */
const PRINTED = 1e-6;
const A_DAY = 86_400_000;

/** What of a rule's edition does not fit its proof; empty where all does. */
export function faultsOf(asked: Asked, proof: Proof): readonly string[] {
  const [first] = proof.cases;
  if (first === undefined) return ['no case'];
  return [
    ...proof.cases.flatMap((one) => namesWrong(asked.rule, one)),
    ...optionalUntold(asked.rule, proof),
    ...proof.cases.flatMap((one) => caseFaults(asked, proof, one)),
    ...missingInTurn(asked, goodFacts(first)),
    ...beforeItsDay(asked, goodFacts(first)),
  ];
}

function caseFaults(asked: Asked, proof: Proof, one: Case): readonly string[] {
  if (one.sense === 'answer') return answerFaults(asked, one);
  if (one.sense !== 'within')
    return limitFaults(asked, proof, { ...one, yardstick: one.yardstick ?? one.limit });
  const half = (one.high - one.low) / 2;
  const end = { moved: one.moved, also: one.also ?? {}, yardstick: half, band: true };
  return [
    ...limitFaults(asked, proof, { ...end, sense: 'at-least', limit: one.low }),
    ...limitFaults(asked, proof, { ...end, sense: 'at-most', limit: one.high }),
  ];
}

function answerFaults(asked: Asked, one: Extract<Case, { sense: 'answer' }>): readonly string[] {
  const found = findingOn(asked, one.facts);
  const because =
    found?.outcome !== undefined && 'because' in found.outcome ? found.outcome.because : undefined;
  const what = JSON.stringify(one.facts);
  const faults = [];
  if (found?.verdict !== one.verdict) faults.push(`${what}: ${found?.verdict}, not ${one.verdict}`);
  if (one.reason !== undefined && (because?.reason ?? '') !== one.reason)
    faults.push(`${what}: for ${because?.reason}, not for ${one.reason}`);
  return faults;
}

interface Limit {
  readonly sense: 'at-least' | 'at-most';
  readonly moved: Moved;
  readonly limit: number;
  readonly yardstick: number;
  readonly also?: Facts;
  readonly band?: boolean;
}

/** Shares of the yardstick at which a limit is looked at: far and just under, at, inside the guard, just out of it. */
function sharesOf(guard: number): readonly number[] {
  const near = [-0.5, -1e-3, -1e-6, 0, 1e-6, 1e-3, 0.5, 0.9];
  return guard === 0 ? near : [...near, 0.99 * guard, 1.01 * guard];
}

function limitFaults(asked: Asked, { guard }: Proof, limit: Limit): readonly string[] {
  return [...sharesOf(guard), ...LAST_BITS].flatMap((share) => {
    const over = limit.sense === 'at-least' ? 1 : -1;
    const figure = figureAt(limit, share, over);
    const found = findingOn(asked, factsAt(limit.moved, figure, limit.also));
    const fault = shareFault(found, { share: LAST_BITS.includes(share) ? 0 : share, guard, limit });
    return fault === undefined ? [] : [`${limit.limit} ${share < 0 ? '' : '+'}${share}: ${fault}`];
  });
}

/** At the limit to a person, under and over it by the last bit of the figure: other units round otherwise. */
const LAST_BITS: readonly number[] = [-(2 ** -51), 2 ** -51];

function figureAt({ limit, yardstick }: Limit, share: number, over: number): number {
  return LAST_BITS.includes(share) ? limit * (1 + share) : limit + over * share * yardstick;
}

interface Wanted {
  readonly share: number;
  readonly guard: number;
  readonly limit: Limit;
}

function shareFault(found: Finding | undefined, { share, guard, limit }: Wanted): string | undefined {
  const verdict = verdictAt(share, guard);
  if (found?.verdict !== verdict) return `${found?.verdict}, not ${verdict}`;
  if (!(Math.abs((found.margin ?? Number.NaN) - share) <= PRINTED * 2)) return `margin ${found.margin}`;
  return outcomeFault(found.outcome, limit);
}

function verdictAt(share: number, guard: number): Verdict {
  if (share < 0) return 'fails';
  return share < guard ? 'tight' : 'meets';
}

function outcomeFault(outcome: Outcome | undefined, limit: Limit): string | undefined {
  if (outcome === undefined || !('found' in outcome)) return 'no figure';
  if (limit.band !== true) {
    if (outcome.sense !== limit.sense) return `${outcome.sense}, not ${limit.sense}`;
    return near(outcome.required, limit.limit) ? undefined : `asks ${outcome.required}`;
  }
  if (outcome.sense !== 'within') return `${outcome.sense}, not within`;
  const end = limit.sense === 'at-least' ? outcome.low : outcome.high;
  return near(end, limit.limit) ? undefined : `asks ${end}`;
}

function near(one: number, other: number): boolean {
  return Math.abs(one - other) <= PRINTED * Math.max(Math.abs(other), 1e-9);
}

function factsAt(moved: Moved, found: number, also: Facts = {}): Facts {
  return typeof moved === 'function' ? { ...also, ...moved(found) } : { ...also, [moved]: found };
}

/** Facts of a case on which the rule says something. */
function goodFacts(one: Case): Facts {
  if (one.sense === 'answer') return one.facts;
  if (one.sense === 'within') return factsAt(one.moved, (one.low + one.high) / 2, one.also);
  return factsAt(one.moved, one.limit, one.also);
}

function namesOf(rule: AnyRule): readonly FactName[] {
  return [...Object.values(rule.numbers), ...Object.values(rule.words)];
}

/** Facts that a rule asks for only where the others leave the question open. */
function optionalOf(rule: AnyRule): readonly FactName[] {
  const names = { ...rule.numbers, ...rule.words };
  return (rule.optional ?? []).flatMap((key) => names[key] ?? []);
}

function namesWrong(rule: AnyRule, one: Case): readonly string[] {
  const given = Object.keys(goodFacts(one));
  const asked = namesOf(rule);
  const optional = optionalOf(rule);
  return [
    ...given.filter((name) => !(asked as readonly string[]).includes(name)).map((name) => `gives ${name}`),
    ...asked
      .filter((name) => !given.includes(name) && !optional.includes(name))
      .map((name) => `lacks ${name}`),
  ];
}

/** An optional fact stands in one case and is left out of another. */
function optionalUntold(rule: AnyRule, { cases }: Proof): readonly string[] {
  const given = cases.map((one) => Object.keys(goodFacts(one)));
  return optionalOf(rule)
    .filter(
      (name) => given.every((names) => names.includes(name)) || !given.some((names) => names.includes(name)),
    )
    .map((name) => `${name} is ${given.some((names) => names.includes(name)) ? 'never' : 'always'} left out`);
}

/** Each fact that is not known makes the answer unknown; each that does not apply makes the question none. */
function missingInTurn(asked: Asked, facts: Facts): readonly string[] {
  const optional = optionalOf(asked.rule);
  const needed = namesOf(asked.rule).filter((name) => !optional.includes(name));
  return needed.flatMap((name) => {
    const without = findingOn(asked, { ...facts, [name]: undefined });
    const beside = findingOn(asked, facts, { [name]: { state: 'not-applicable' } });
    const faults = [];
    if (without?.verdict !== 'unknown' || !without.missing.includes(name))
      faults.push(`without ${name}: ${without?.verdict}, missing ${without?.missing}`);
    if (beside?.verdict !== 'does not apply') faults.push(`where ${name} is none: ${beside?.verdict}`);
    return faults;
  });
}

/** No edition is asked before its day, and each finding cites the one it is of. */
function beforeItsDay(asked: Asked, facts: Facts): readonly string[] {
  const { edition } = asked;
  const found = findingOn(asked, facts);
  const eve = new Date(Date.parse(edition.from) - A_DAY).toISOString().slice(0, 10);
  const before = findingOnDay(asked, facts, { instead: {}, date: eve });
  const faults = [];
  if (found?.source !== edition.source) faults.push('cites another edition');
  if (before?.source === edition.source) faults.push(`in force before ${edition.from}`);
  return faults;
}
