/** One subject, and the facts a case gives it. */
import { type AnyRule, type Edition, evaluateRules, type Fact, type Finding } from '../../evaluate/index.ts';
import type { Facts } from './proof.ts';

export interface Asked {
  readonly rule: AnyRule;
  readonly edition: Edition<unknown>;
}

/** What a fact is instead of its value. */
export type Instead = Readonly<Record<string, Fact>>;

/** The finding of one rule in one edition on its first day; nothing where it is not in force. */
export function findingOn(asked: Asked, facts: Facts, instead: Instead = {}): Finding | undefined {
  return findingOnDay(asked, facts, { instead, date: asked.edition.from });
}

interface On {
  readonly instead: Instead;
  readonly date: string;
}

/** The finding of one rule in one edition on a day. */
export function findingOnDay({ rule, edition }: Asked, facts: Facts, on: On): Finding | undefined {
  const editions = edition.edition === 'any' ? [] : [edition.edition];
  return evaluateRules(
    [rule],
    {
      subjects: (scope) => [{ scope, id: '1', label: '' }],
      fact: (_subject, name) => on.instead[name] ?? factOf(name, facts[name]),
    },
    { place: { country: '-' }, date: on.date, editions, uncovered: [] },
  )[0];
}

function factOf(name: string, value: number | string | undefined): Fact {
  if (value === undefined) return { state: 'unknown', missing: [name] };
  // Rules take numbers by name; no kind is looked at.
  return typeof value === 'string' ? { state: 'word', value } : { state: 'number', value, kind: 'ratio' };
}
