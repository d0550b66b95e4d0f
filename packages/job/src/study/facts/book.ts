/** The facts of a job by name, as rules ask for them. */
import {
  type Fact,
  type FactBook,
  type FactName,
  SCOPES,
  type Scope,
  type Subject,
} from '@firstfire/reference';

const SINGLE: ReadonlySet<string> = new Set(['job', 'site']);
const UNKNOWN: Fact = { state: 'unknown', missing: [] };

/** `scope/id/name`: how a model names a fact it gives. */
export type FactKey = `${string}/${string}/${string}`;

export class Book implements FactBook {
  readonly #subjects = new Map<Scope, Subject[]>(SCOPES.map((scope) => [scope, []]));
  readonly #facts = new Map<string, Fact>();

  constructor() {
    this.addSubject({ scope: 'job', id: '-', label: '' });
    this.addSubject({ scope: 'site', id: '-', label: '' });
  }

  addSubject(subject: Subject): void {
    this.#subjects.get(subject.scope)?.push(subject);
  }

  /** A later fact of the same name replaces the earlier one. */
  set(key: FactKey, fact: Fact): void {
    this.#facts.set(key, fact);
  }

  subjects(scope: Scope): readonly Subject[] {
    return this.#subjects.get(scope) ?? [];
  }

  fact(subject: Subject, name: FactName): Fact {
    return this.#facts.get(keyOf(subject, name)) ?? UNKNOWN;
  }
}

/** Key of the fact that a rule's name means for a subject. */
export function keyOf(subject: Subject, name: FactName): FactKey {
  const dot = name.indexOf('.');
  const scope = name.slice(0, dot);
  const id = SINGLE.has(scope) ? '-' : subject.id;
  return `${scope}/${id}/${name.slice(dot + 1)}`;
}
