/**
 * A rule: what a code, a nameplate or the trade asks, as data, with a check of about ten lines beside it.
 */
import type { quantity, Source } from '@firstfire/engine';
import type { FactName, Scope } from './fact.ts';

export const LINES = ['heat', 'gas', 'air', 'water', 'power', 'place'] as const;

export type Line = (typeof LINES)[number];

/** What a check found, before it is judged. All values SI. */
export type Outcome =
  | {
      readonly sense: 'at-least' | 'at-most';
      readonly required: number;
      readonly found: number;
      readonly kind: quantity.Kind;
      /** What the distance to the limit is divided by; the rule says why in its comment. */
      readonly yardstick: number;
      readonly because?: Because;
    }
  | {
      readonly sense: 'within';
      readonly low: number;
      readonly high: number;
      readonly found: number;
      readonly kind: quantity.Kind;
      readonly because?: Because;
    }
  | { readonly sense: 'holds'; readonly holds: boolean; readonly because?: Because }
  | { readonly sense: 'does-not-apply'; readonly because?: Because }
  /** An optional fact that nobody has read is needed after all. */
  | { readonly sense: 'unread' };

/** Why it came out so, where the figures do not say it: a reason of `words`, and whom it is about. */
export interface Because {
  readonly reason: string;
  /** The figure that decided whether it applies, and what it was held against. */
  readonly figures?: { readonly found: number; readonly limit: number; readonly kind: quantity.Kind };
  /** Ids of subjects of `scope`. */
  readonly scope?: Scope;
  readonly ids?: readonly string[];
}

/** What a finding of a rule puts people in danger of: its duties come before its mending. */
export type Hazard = 'gas' | 'electricity';

export type NumbersOf<N extends string> = Readonly<Record<N, number>>;
export type WordsOf<W extends string> = Readonly<Record<W, string>>;

/** Figures of a rule in one edition. */
export interface Edition<V> {
  /** Edition as the profile names it, such as `IFGC 2018`; `any` for nameplates and practice. */
  readonly edition: string;
  /** First day on which the edition could be in force, ISO date. */
  readonly from: string;
  readonly source: Source;
  readonly values: V;
}

export interface Rule<N extends string = string, W extends string = string, V = unknown> {
  /** `line.name`, the key of its words. */
  readonly id: string;
  readonly line: Line;
  readonly scope: Scope;
  /** Number facts by the name the check uses. */
  readonly numbers: Readonly<Record<N, FactName>>;
  /** Word facts by the name the check uses. */
  readonly words: Readonly<Record<W, FactName>>;
  /** Share of the yardstick below which a met limit is called tight; 10 % unless the rule says otherwise. */
  readonly guard?: number;
  /** A finding that stops all work until a named licensee clears it. */
  readonly stops?: true;
  /** Missed, it is an immediate hazard: see `dutyOf`. */
  readonly hazard?: Hazard;
  /**
   * Facts that are asked for only where the others leave the question open. Unread, or of no meaning here, a word is
   * empty and a number NaN; a check that cannot do without answers `unread`.
   */
  readonly optional?: readonly NoInfer<N | W>[];
  readonly editions: readonly Edition<V>[];
  readonly check: (n: NumbersOf<N>, w: WordsOf<W>, values: V) => Outcome;
}

/** A rule whose names have been checked against its own check, ready to stand in a list. */
export interface AnyRule extends Omit<Rule, 'check'> {
  readonly check: (
    n: Readonly<Record<string, number>>,
    w: Readonly<Record<string, string>>,
    values: unknown,
  ) => Outcome;
}

/**
 * Checks a rule by its types and forgets them, so that rules of all shapes stand in one list.
 *
 * Errors: throws on a rule that cites nothing, which is a bug that no build gets past.
 */
export function defineRule<N extends string, W extends string, V>(rule: Rule<N, W, V>): AnyRule {
  const uncited = rule.editions.find(({ source }) => source.document.trim() === '');
  if (rule.editions.length === 0 || uncited !== undefined)
    throw new Error(`rule ${rule.id} cites nothing${uncited === undefined ? '' : ` in ${uncited.edition}`}`);
  return {
    ...rule,
    check: (n, w, values) => rule.check(n as NumbersOf<N>, w as WordsOf<W>, values as V),
  };
}
