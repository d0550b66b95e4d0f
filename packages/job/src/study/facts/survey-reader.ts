/**
 * Takes readings for a model and keeps account: what it took and how sure it is, what was missing, what was wrong.
 * A model asks for everything it needs before it gives up, so that one look names all that is missing.
 */
import type { Issue, quantity } from '@firstfire/engine';
import type { Parameter } from '../plant/model.ts';
import type { FieldFact } from './field-fact.ts';
import { issuesOf, type Known, recordFacts } from './record-facts.ts';
import { usualPlusMinus } from './usual-plus-minus.ts';
import { type JobView, type ReadingPath, readingPath } from './view.ts';

/** A field of a record: `heaters`, `h1`, `input`. */
export interface Where {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
}

export class SurveyReader {
  readonly view: JobView;
  readonly parameters: Parameter[] = [];
  readonly missing: ReadingPath[] = [];
  readonly wrong: Issue[] = [];
  /** Readings whose issues are noted already. */
  readonly #noted: ReadingPath[] = [];

  constructor(view: JobView) {
    this.view = view;
  }

  /** A reader that has already taken what this one took: for models that share their structure. */
  fork(): SurveyReader {
    const reader = new SurveyReader(this.view);
    reader.parameters.push(...this.parameters);
    reader.missing.push(...this.missing);
    reader.wrong.push(...this.wrong);
    reader.#noted.push(...this.#noted);
    return reader;
  }

  /** A number that is needed; NaN, and an entry in `missing`, when it is not known. */
  number(where: Where): number {
    return this.#take(where, true) ?? Number.NaN;
  }

  /** A number that may be left out, and what stands for it then. */
  numberOr(where: Where, otherwise: number): number {
    return this.#take(where, false) ?? otherwise;
  }

  /** A number that the trade has a usual value for: that value, marked as assumed, when nobody read it. */
  numberOrUsual(where: Where, usual: { readonly value: number; readonly kind: quantity.Kind }): number {
    const taken = this.#take(where, false);
    if (taken !== undefined) return taken;
    const plusMinus = usualPlusMinus('assumed', usual.kind, usual.value);
    const { value, kind } = usual;
    const reading = pathOf(where);
    if (!this.parameters.some((one) => one.reading === reading))
      this.parameters.push({ reading, value, kind, plusMinus, assumed: true });
    return value;
  }

  /** A word that is needed; empty when it is not known. */
  word(where: Where): string {
    const fact = this.fact(where);
    if (fact.state === 'word') return fact.value;
    this.#lacks(where);
    return '';
  }

  wordOr(where: Where, otherwise: string): string {
    const fact = this.fact(where);
    return fact.state === 'word' ? fact.value : otherwise;
  }

  counts(where: Where): Readonly<Record<string, number>> {
    const fact = this.fact(where);
    return fact.state === 'counts' ? fact.value : {};
  }

  /** Points in SI; empty, and an entry in `missing`, when they are not known. */
  curve(where: Where): readonly (readonly [number, number])[] {
    const fact = this.fact(where);
    if (fact.state === 'curve') return fact.value;
    this.#lacks(where);
    return [];
  }

  /** A word that is none of those that can stand there. */
  refuse(where: Where, what: { readonly found: string; readonly expected: readonly string[] }): void {
    this.wrong.push({ code: 'not-understood', where: pathOf(where), ...what });
  }

  has(where: Where): boolean {
    return this.fact(where).state !== 'unknown';
  }

  fact(where: Where): FieldFact {
    const known = this.#known(where);
    if (known.fact.state !== 'wrong') return known.fact;
    if (this.#noted.includes(known.path)) return UNKNOWN;
    this.#noted.push(known.path);
    this.wrong.push(...issuesOf(known));
    return UNKNOWN;
  }

  #known({ collection, id, field }: Where): Known {
    return recordFacts(collection, this.view.record(collection, id)).at(field);
  }

  #take(where: Where, needed: boolean): number | undefined {
    const { parameter } = this.#known(where);
    if (parameter !== undefined) {
      if (!this.parameters.includes(parameter)) this.parameters.push(parameter);
      return parameter.value;
    }
    // Takes note of what is wrong with it.
    this.fact(where);
    if (needed) this.#lacks(where);
    return undefined;
  }

  #lacks(where: Where): void {
    const path = pathOf(where);
    if (!this.missing.includes(path)) this.missing.push(path);
  }
}

const UNKNOWN: FieldFact = { state: 'unknown' };

function pathOf({ collection, id, field }: Where): ReadingPath {
  return readingPath(collection, id, field);
}
