/** The facts that a rule asks for, as its check takes them; or what is missing of them. */
import type { Fact, FactBook, FactName, Subject } from './fact.ts';
import type { AnyRule } from './rule.ts';

export interface Gathered {
  readonly numbers: Record<string, number>;
  readonly words: Record<string, string>;
  /** ± of the numbers that have one. */
  readonly spreads: readonly (readonly [name: string, plusMinus: number])[];
  /** Readings, sorted. */
  readonly missing: readonly string[];
  /** Readings behind optional facts that nobody has read, sorted. */
  readonly unread: readonly string[];
  readonly assumed: readonly string[];
  readonly applies: boolean;
  readonly complete: boolean;
}

export const NONE: readonly never[] = [];

export interface Asked {
  readonly rule: AnyRule;
  readonly subject: Subject;
  readonly book: FactBook;
}

/** What the book has of all that a rule asks for, in the order in which it asks. */
export function factsFor({ rule, subject, book }: Asked): readonly Fact[] {
  const { numbers, words } = namesOf(rule);
  const facts: Fact[] = [];
  for (const { name } of numbers) facts.push(book.fact(subject, name));
  for (const { name } of words) facts.push(book.fact(subject, name));
  return facts;
}

/** `facts` as `factsFor` gives them. */
export function gather(rule: AnyRule, facts: readonly Fact[]): Gathered {
  const basket = new Basket(rule.id);
  const { numbers, words } = namesOf(rule);
  for (const [i, fact] of facts.entries()) {
    const asked = numbers[i] ?? words[i - numbers.length];
    if (asked !== undefined) basket.take(asked, fact, i < numbers.length ? 'number' : 'word');
  }
  return basket;
}

/** Lists are made only where there is something to put in: most rules have all they ask for. */
class Basket implements Gathered {
  readonly numbers: Record<string, number> = {};
  readonly words: Record<string, string> = {};
  applies = true;
  complete = true;
  readonly #rule: string;
  #spreads: (readonly [string, number])[] | undefined;
  #missing: Set<string> | undefined;
  #assumed: Set<string> | undefined;
  #unread: Set<string> | undefined;

  constructor(rule: string) {
    this.#rule = rule;
  }

  get spreads(): Gathered['spreads'] {
    return this.#spreads ?? NONE;
  }

  get missing(): readonly string[] {
    return sorted(this.#missing);
  }

  get assumed(): readonly string[] {
    return sorted(this.#assumed);
  }

  get unread(): readonly string[] {
    return sorted(this.#unread);
  }

  take({ key, optional }: Name, fact: Fact, wanted: 'number' | 'word'): void {
    if (optional && fact.state !== wanted) this.#leaveOut(key, fact, wanted);
    else if (fact.state === 'not-applicable') this.applies = false;
    else if (fact.state === 'unknown') {
      this.complete = false;
      this.#missing = joined(this.#missing, fact.missing);
    } else if (fact.state !== wanted)
      throw new Error(`rule ${this.#rule}: ${key} is a ${fact.state}, not a ${wanted}`);
    else {
      if (fact.assumed !== undefined) this.#assumed = joined(this.#assumed, fact.assumed);
      if (fact.state === 'word') this.words[key] = fact.value;
      else this.#takeNumber(key, fact.value, fact.plusMinus ?? 0);
    }
  }

  #leaveOut(key: string, fact: Fact, wanted: 'number' | 'word'): void {
    if (wanted === 'word') this.words[key] = '';
    else this.numbers[key] = Number.NaN;
    if (fact.state === 'unknown') this.#unread = joined(this.#unread, fact.missing);
  }

  #takeNumber(key: string, value: number, plusMinus: number): void {
    this.numbers[key] = value;
    if (plusMinus === 0) return;
    this.#spreads ??= [];
    this.#spreads.push([key, plusMinus]);
  }
}

function joined(all: Set<string> | undefined, more: readonly string[]): Set<string> {
  const set = all ?? new Set<string>();
  for (const one of more) set.add(one);
  return set;
}

function sorted(all: ReadonlySet<string> | undefined): readonly string[] {
  return all === undefined ? NONE : [...all].sort();
}

interface Name {
  readonly key: string;
  readonly name: FactName;
  readonly optional: boolean;
}

interface Names {
  readonly numbers: readonly Name[];
  readonly words: readonly Name[];
}

const names = new WeakMap<AnyRule, Names>();

/** What a rule asks for, as lists: a rule does not change. */
function namesOf(rule: AnyRule): Names {
  const known = names.get(rule);
  if (known !== undefined) return known;
  const optional = new Set<string>(rule.optional);
  const made = { numbers: listed(rule.numbers, optional), words: listed(rule.words, optional) };
  names.set(rule, made);
  return made;
}

function listed(asked: Readonly<Record<string, FactName>>, optional: ReadonlySet<string>): Name[] {
  return Object.entries(asked).map(([key, name]) => ({ key, name, optional: optional.has(key) }));
}
