/** A rule made wrong on purpose in one place at a time: whoever proves rules has to notice each. */
import type { AnyRule, Edition, Outcome } from '../../evaluate/index.ts';
import type { Asked } from './facts-book.ts';

export interface Mutant extends Asked {
  readonly what: string;
}

/** Every figure of the edition 2 % up and down, every yes and no turned, and the outcome and guard bent. */
export function mutantsOf({ rule, edition }: Asked): readonly Mutant[] {
  const values = changesOf(edition.values).map(({ path, value }) => ({
    what: `${rule.id} ${edition.edition} ${path}`,
    ...withEdition(rule, edition, { ...edition, values: value }),
  }));
  const later = { ...edition, from: '2999-01-01' };
  return [
    ...values,
    ...BENDS.map(([what, bend]) => bent({ rule, edition }, what, bend)),
    { what: `${rule.id} guard`, rule: { ...rule, guard: (rule.guard ?? 0.1) + 0.03 }, edition },
    { what: `${rule.id} day`, rule: withEdition(rule, edition, later).rule, edition },
  ];
}

function withEdition(rule: AnyRule, old: Edition<unknown>, edition: Edition<unknown>): Asked {
  return { rule: { ...rule, editions: rule.editions.map((one) => (one === old ? edition : one)) }, edition };
}

type Bend = (outcome: Outcome) => Outcome;

const BENDS: readonly (readonly [what: string, bend: Bend])[] = [
  ['limit', (o) => ('required' in o ? { ...o, required: o.required * 1.001 + 1e-9 } : o)],
  ['yardstick', (o) => ('yardstick' in o ? { ...o, yardstick: o.yardstick * 1.001 } : o)],
  ['low end', (o) => ('low' in o ? { ...o, low: o.low - 0.001 * (o.high - o.low) } : o)],
  ['high end', (o) => ('high' in o ? { ...o, high: o.high + 0.001 * (o.high - o.low) } : o)],
  ['answer', (o) => (o.sense === 'holds' ? { ...o, holds: !o.holds } : o)],
  ['sense', (o) => (o.sense === 'at-least' ? { ...o, sense: 'at-most' } : o)],
  ['other sense', (o) => (o.sense === 'at-most' ? { ...o, sense: 'at-least' } : o)],
  ['unread', (o) => (o.sense === 'unread' ? { sense: 'does-not-apply' } : o)],
  ['not asked', (o) => (o.sense === 'does-not-apply' ? { sense: 'holds', holds: true } : o)],
];

/** `what` is empty where the bend touches nothing that the rule ever gives; known only after it was asked. */
function bent({ rule, edition }: Asked, what: string, bend: Bend): Mutant {
  const mutant = {
    what: `${rule.id} ${edition.edition} ${what}`,
    touched: false,
    edition,
    rule: {
      ...rule,
      check: (...given: Parameters<AnyRule['check']>): Outcome => {
        const outcome = rule.check(...given);
        const other = bend(outcome);
        // An older edition may hold on the eve of this one.
        if (other !== outcome && given[2] === edition.values) mutant.touched = true;
        return other;
      },
    },
  };
  return mutant;
}

/** Whether the mutant ever said anything else than the rule; one of the values always does. */
export function isOther(mutant: Mutant): boolean {
  return !('touched' in mutant) || mutant.touched === true;
}

interface Change {
  readonly path: string;
  readonly value: unknown;
}

/** The values with one leaf changed, for each leaf. */
function changesOf(values: unknown): readonly Change[] {
  if (typeof values === 'boolean') return [{ path: '', value: !values }];
  if (typeof values === 'string') return [{ path: '', value: `${values}~` }];
  if (typeof values === 'number') return Number.isFinite(values) ? moved(values) : [];
  if (Array.isArray(values))
    return values.flatMap((one, at) =>
      changesOf(one).map(({ path, value }) => ({ path: `[${at}]${path}`, value: values.with(at, value) })),
    );
  if (typeof values !== 'object' || values === null) return [];
  return Object.entries(values).flatMap(([key, one]) =>
    changesOf(one).map(({ path, value }) => ({ path: `.${key}${path}`, value: { ...values, [key]: value } })),
  );
}

/** Whole numbers may be counts. */
function moved(value: number): readonly Change[] {
  const step = Number.isInteger(value) ? 1 : 0.02 * value;
  return [
    { path: ' up', value: value + step },
    { path: ' down', value: value - step },
  ];
}
