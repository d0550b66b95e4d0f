/**
 * What each rule is held against: the limit as its source prints it, in the source's own units, and the verdict either
 * side of it. A proof is written from the source the rule cites, never read from the rule.
 */
import { quantity } from '@firstfire/engine';
import type { FactName, Verdict } from '../../evaluate/index.ts';

/** Facts as a rule asks for them: numbers SI, words as they are. */
export type Facts = Readonly<Partial<Record<FactName, number | string>>>;

/** The fact that is moved across the limit, or how the facts follow from the figure that is. */
export type Moved = FactName | ((found: number) => Facts);

export type Case =
  | {
      readonly sense: 'at-least' | 'at-most';
      readonly moved: Moved;
      readonly limit: number;
      /** What the distance is divided by, where it is not the limit itself. */
      readonly yardstick?: number;
      readonly also?: Facts;
    }
  | {
      readonly sense: 'within';
      readonly moved: Moved;
      readonly low: number;
      readonly high: number;
      readonly also?: Facts;
    }
  | {
      readonly sense: 'answer';
      readonly facts: Facts;
      readonly verdict: Verdict;
      /** Why, where the rule says it; empty where it says nothing. */
      readonly reason?: string;
    };

export interface Proof {
  readonly rule: string;
  /** `any` for nameplates, practice and physics. */
  readonly edition: string;
  /** Share of the yardstick under which a met limit is tight. */
  readonly guard: number;
  readonly cases: readonly Case[];
}

const TENTH = 0.1;

/** The cases of a rule in the editions that ask the same; a tenth is its guard unless told. */
export function proofs(
  rule: string,
  cases: readonly Case[],
  {
    editions = ['any'],
    guard = TENTH,
  }: { readonly editions?: readonly string[]; readonly guard?: number } = {},
): readonly Proof[] {
  return editions.map((edition) => ({ rule, edition, guard, cases }));
}

interface Beside {
  readonly also?: Facts;
  readonly yardstick?: number;
}

/** Met at the limit and above it. */
export function atLeast(moved: Moved, limit: number, beside: Beside = {}): Case {
  return { sense: 'at-least', moved, limit, ...beside };
}

/** Met at the limit and below it. */
export function atMost(moved: Moved, limit: number, beside: Beside = {}): Case {
  return { sense: 'at-most', moved, limit, ...beside };
}

/** Met between two limits and at either. */
export function within(moved: Moved, [low, high]: readonly [number, number], also: Facts = {}): Case {
  return { sense: 'within', moved, low, high, also };
}

/** The verdict on given facts. */
export function answer(facts: Facts, verdict: Verdict, reason?: string): Case {
  return reason === undefined
    ? { sense: 'answer', facts, verdict }
    : { sense: 'answer', facts, verdict, reason };
}

/** One word fact of which some answers are right and the others wrong. */
export function words(
  fact: FactName,
  { meets, fails }: { readonly meets: readonly string[]; readonly fails: readonly string[] },
  also: Facts = {},
): readonly Case[] {
  return [
    ...meets.map((word) => answer({ ...also, [fact]: word }, 'meets')),
    ...fails.map((word) => answer({ ...also, [fact]: word }, 'fails')),
  ];
}

/** A figure as its source prints it, read the way a job's readings are. */
export function said(kind: quantity.Kind, text: string): number {
  const parsed = quantity.parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`${text} is no ${kind}`);
  return parsed.value.si;
}

/** The same for one kind. */
export function saying(kind: quantity.Kind): (text: string) => number {
  return (text) => said(kind, text);
}
