/**
 * Findings kept from one evaluation to the next: a rule whose facts are the same objects as last time gives the same
 * object again. For whoever judges one job again and again while it is edited.
 */
import { findingsOf, judge, type Question } from './evaluate.ts';
import type { Fact, FactBook, Subject } from './fact.ts';
import type { Finding } from './finding.ts';
import { factsFor } from './gather.ts';
import type { Profile } from './profile.ts';
import type { AnyRule } from './rule.ts';

interface Kept {
  /** Without the book, of which nothing else is needed again. */
  readonly question: Omit<Question, 'book'>;
  readonly facts: readonly Fact[];
  readonly finding: Finding;
}

export class KeptFindings {
  /** By subject. Rules that an amendment changed are new each time, and go with the study that made them. */
  readonly #kept = new WeakMap<AnyRule, Map<string, Kept>>();

  /** What `evaluateRules` gives. */
  evaluate(rules: readonly AnyRule[], book: FactBook, profile: Profile): Finding[] {
    return findingsOf(rules, { book, profile, judge: (question) => this.#judge(question) });
  }

  #judge(question: Question): Finding {
    const { book: _, ...asked } = question;
    const { rule, subject } = question;
    const bySubject = this.#kept.get(rule) ?? new Map<string, Kept>();
    this.#kept.set(rule, bySubject);
    const facts = factsFor(question);
    const last = bySubject.get(subject.id);
    if (last !== undefined && isSame(last.question, question) && areSame(last.facts, facts))
      return last.finding;
    const finding = judge(question, facts);
    // Names of other subjects are looked up beside the facts.
    if (finding.between === undefined) bySubject.set(subject.id, { question: asked, facts, finding });
    else bySubject.delete(subject.id);
    return finding;
  }
}

function isSame(one: Kept['question'], other: Question): boolean {
  return (
    one.edition === other.edition &&
    one.profile === other.profile &&
    isSameSubject(one.subject, other.subject)
  );
}

function isSameSubject(one: Subject, other: Subject): boolean {
  if (one.scope !== other.scope || one.id !== other.id || one.label !== other.label) return false;
  return one.said === other.said || JSON.stringify(one.said) === JSON.stringify(other.said);
}

function areSame(one: readonly Fact[], other: readonly Fact[]): boolean {
  return one.length === other.length && one.every((fact, i) => fact === other[i]);
}
