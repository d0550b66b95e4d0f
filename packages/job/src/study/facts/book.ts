/** The facts of a job by name, as rules ask for them. */
import {
  type Fact,
  type FactBook,
  type FactName,
  SCOPES,
  type Scope,
  type Subject,
} from '@firstfire/reference';
import { type Key, keyOfParts } from './key.ts';

const SINGLE: ReadonlySet<string> = new Set(['job', 'site']);
const UNKNOWN: Fact = { state: 'unknown', missing: [] };

/** `scope/id/name`: how a model names a fact it gives. */
export type FactKey = Key;

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
  const { scope, own } = partsOf(name);
  return keyOfParts(scope, SINGLE.has(scope) ? '-' : subject.id, own);
}

interface NameParts {
  readonly scope: string;
  /** What follows the dot. */
  readonly own: string;
}

/** Names stand in the rules: there are as many as those ask for, and no more. */
const parts = new Map<FactName, NameParts>();

function partsOf(name: FactName): NameParts {
  const known = parts.get(name);
  if (known !== undefined) return known;
  const dot = name.indexOf('.');
  const made = { scope: name.slice(0, dot), own: name.slice(dot + 1) };
  parts.set(name, made);
  return made;
}
