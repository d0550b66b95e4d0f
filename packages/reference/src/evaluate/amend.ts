/**
 * Local amendments: what a town or county asks in the place of the edition's own figure, as entered for a job.
 *
 * An amended rule is the same rule with one entry, whose source is the citation that was entered: its check runs as it
 * is, and then the figure asked is replaced. A rule of which no edition is in force here is asked all the same, once
 * an amendment names it; one that the place does not ask does not apply.
 */
import { fail, type Issue, ok, quantity, type Result } from '@firstfire/engine';
import { editionInForce, evaluateRules } from './evaluate.ts';
import type { FactBook } from './fact.ts';
import type { Profile } from './profile.ts';
import type { AnyRule, Edition, Outcome } from './rule.ts';

export interface Amendment {
  /** Where its issues are told: in front of `/rule` and `/required`. */
  readonly where: string;
  readonly rule: string;
  /** False where the place does not ask the rule. */
  readonly asked: boolean;
  /** A figure with its unit, or two with `to` between them; absent where the figure of the edition stands. */
  readonly required?: string;
  readonly citation: string;
}

export interface Amended {
  readonly rules: readonly AnyRule[];
  readonly issues: readonly Issue[];
}

export interface AskedOf {
  readonly book: FactBook;
  readonly profile: Profile;
}

/** The rules with every amendment that can be read in its place; the others are issues, and change nothing. */
export function amendedRules(
  rules: readonly AnyRule[],
  amendments: readonly Amendment[],
  asked: AskedOf,
): Amended {
  const changed = new Map<string, AnyRule>();
  const issues: Issue[] = [];
  for (const amendment of amendments) {
    const rule = rules.find((one) => one.id === amendment.rule);
    const made =
      rule === undefined || changed.has(rule.id) ? refused(amendment, rule) : amend(rule, amendment, asked);
    if (made.ok) changed.set(made.value.id, made.value);
    else issues.push(...made.issues);
  }
  return { rules: changed.size === 0 ? rules : rules.map((rule) => changed.get(rule.id) ?? rule), issues };
}

/** It names no rule, or one that another amendment has changed already. */
function refused({ where, rule: found }: Amendment, rule: AnyRule | undefined): Result<AnyRule> {
  const at = { where: `${where}/rule`, found };
  return rule === undefined
    ? fail({ code: 'not-understood', ...at, reason: 'no-such-rule' })
    : fail({ code: 'contradiction', ...at, reason: 'amended-twice' });
}

function amend(rule: AnyRule, amendment: Amendment, asked: AskedOf): Result<AnyRule> {
  const { required, citation } = amendment;
  const local = locally(rule, citation, asked.profile);
  if (!amendment.asked)
    return ok({
      ...local,
      check: () => ({ sense: 'does-not-apply', because: { reason: 'not-asked-here' } }),
    });
  if (required === undefined) return ok(local);
  const outcome = firstOutcome(local, asked);
  // Nothing is known of any subject: there is no figure to replace yet.
  if (outcome === undefined) return ok(local);
  const figures = figuresFor(outcome, amendment);
  if (!figures.ok) return figures;
  return ok({ ...local, check: (n, w, values) => replaced(local.check(n, w, values), figures.value) });
}

/** The rule with the citation of the place in front of the values in force, or of its first entry where none is. */
function locally(rule: AnyRule, citation: string, profile: Profile): AnyRule {
  const entry = editionInForce(rule, profile) ?? rule.editions[0];
  const local: Edition<unknown> = {
    edition: 'any',
    from: '1900-01-01',
    source: { document: citation, known: 'local amendment, as entered' },
    values: entry?.values,
  };
  return { ...rule, editions: [local] };
}

function firstOutcome(rule: AnyRule, { book, profile }: AskedOf): Outcome | undefined {
  return evaluateRules([rule], book, profile).find(
    ({ outcome }) => outcome !== undefined && outcome.sense !== 'does-not-apply',
  )?.outcome;
}

/** SI, in the order entered. */
type Figures = readonly number[];

function figuresFor(outcome: Outcome, { where, required = '' }: Amendment): Result<Figures> {
  const at = { where: `${where}/required`, found: required };
  if (!('kind' in outcome)) return fail({ code: 'contradiction', ...at, reason: 'rule-has-no-figure' });
  const { kind } = outcome;
  const texts = required.split(/\s+to\s+/);
  if (texts.length !== (outcome.sense === 'within' ? 2 : 1))
    return fail({
      code: 'not-understood',
      ...at,
      reason: outcome.sense === 'within' ? 'two-figures-expected' : 'one-figure-expected',
    });
  const figures: number[] = [];
  for (const text of texts) {
    const read = quantity.parseQuantity(text, kind);
    const si = read.ok ? quantity.valueInSi(read.value.value, read.value.unit, kind) : read;
    if (!si.ok) return fail(...si.issues.map((issue) => ({ ...issue, where: at.where })));
    figures.push(si.value);
  }
  const [low = 0, high = low] = figures;
  return high < low ? fail({ code: 'contradiction', ...at, reason: 'figures-not-in-order' }) : ok(figures);
}

/** A figure that was its own yardstick stays so; another yardstick is left as the rule has it. */
function replaced(outcome: Outcome, [first = 0, second = first]: Figures): Outcome {
  if (outcome.sense === 'within') return { ...outcome, low: first, high: second };
  if (outcome.sense !== 'at-least' && outcome.sense !== 'at-most') return outcome;
  const own = outcome.yardstick === outcome.required && first !== 0;
  return { ...outcome, required: first, yardstick: own ? first : outcome.yardstick };
}
