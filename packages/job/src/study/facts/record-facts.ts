/**
 * What the readings of a record mean, worked out once for as long as the record stands as it is: an edit of another
 * record leaves them alone, and every model that asks for one is given the same.
 */
import type { Issue } from '@firstfire/engine';
import { RECORD_BY_COLLECTION } from '../../schema/index.ts';
import type { Parameter } from '../plant/model.ts';
import { type FieldFact, fieldFact } from './field-fact.ts';
import { type ReadingPath, type RecordView, readingPath } from './view.ts';

export interface Known {
  readonly path: ReadingPath;
  readonly fact: FieldFact;
  /** Of a number: the same as a parameter of models. */
  readonly parameter: Parameter | undefined;
}

export class RecordFacts {
  readonly collection: string;
  readonly #record: RecordView;
  readonly #known = new Map<string, Known>();
  #wrong: readonly Issue[] | undefined;

  constructor(collection: string, record: RecordView) {
    this.collection = collection;
    this.#record = record;
  }

  at(field: string): Known {
    return this.#known.get(field) ?? this.#workOut(field);
  }

  /** Of every field of the record, whether or not a model looks at it. */
  get wrong(): readonly Issue[] {
    this.#wrong ??= Object.keys(RECORD_BY_COLLECTION.get(this.collection)?.fields ?? {}).flatMap((field) =>
      issuesOf(this.at(field)),
    );
    return this.#wrong;
  }

  #workOut(field: string): Known {
    const path = readingPath(this.collection, this.#record.id, field);
    const fact = fieldFact(this.collection, field, this.#record.reading(field));
    const known = { path, fact, parameter: parameterOf(path, fact) };
    this.#known.set(field, known);
    return known;
  }
}

function parameterOf(reading: ReadingPath, fact: FieldFact): Parameter | undefined {
  if (fact.state !== 'number') return undefined;
  const { value, kind, plusMinus, assumed } = fact;
  return { reading, value, kind, plusMinus, assumed };
}

/** What is wrong with a reading, by its path; none where nothing is. */
export function issuesOf({ fact, path }: Known): readonly Issue[] {
  return fact.state === 'wrong' ? fact.issues.map((issue) => ({ ...issue, where: path })) : [];
}

const kept = new WeakMap<RecordView, RecordFacts>();

/** The facts of a record, kept with it. */
export function recordFacts(collection: string, record: RecordView): RecordFacts {
  const known = kept.get(record);
  if (known !== undefined && known.collection === collection) return known;
  const made = new RecordFacts(collection, record);
  kept.set(record, made);
  return made;
}
