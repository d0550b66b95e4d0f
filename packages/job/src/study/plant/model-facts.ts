/** Runs a model and writes what it gives into the book: numbers with their ±, or what is missing. */
import type { Issue } from '@firstfire/engine';
import type { Fact } from '@firstfire/reference';
import { NOT_APPLICABLE } from '@firstfire/reference';
import type { Book, FactKey } from '../facts/book.ts';
import type { ReadingPath } from '../facts/view.ts';
import type { KeptModels } from './kept-models.ts';
import { type Model, type Output, ownValues } from './model.ts';
import { plusMinusOf } from './uncertainty.ts';

export interface ModelOptions {
  /** Carry the ± of every reading through the model: many runs instead of one. */
  readonly uncertainty: boolean;
  /** What was found before, of models that have not changed. */
  readonly kept?: KeptModels | undefined;
}

/** What a model gives. */
export interface ModelFacts {
  readonly facts: readonly (readonly [FactKey, Fact])[];
  /** What kept it, or a part of it, from running; none when readings are only missing. */
  readonly issues: readonly Issue[];
}

/** The issues that kept the model from running; none when it ran or when readings are only missing. */
export function addModelFacts(
  book: Book,
  model: Model,
  { uncertainty, kept }: ModelOptions,
): readonly Issue[] {
  const work = (): ModelFacts => modelFacts(model, uncertainty);
  const { facts, issues } = kept?.facts(model, uncertainty, work) ?? work();
  for (const [key, fact] of facts) book.set(key, fact);
  return issues;
}

function modelFacts(model: Model, uncertainty: boolean): ModelFacts {
  if (model.missing.length > 0 || model.wrong.length > 0) {
    const missing = [...model.missing, ...model.wrong.map((issue) => issue.where)];
    return { facts: unknown(model, missing), issues: model.wrong };
  }
  const values = ownValues(model);
  const run = model.run(values);
  if (!run.ok) {
    const where = run.issues.map((issue) => issue.where);
    return { facts: unknown(model, where), issues: run.issues };
  }
  const spreads = uncertainty ? plusMinusOf(model, run.outputs, values) : NO_SPREADS;
  const assumed = assumedReadings(model);
  const facts = run.outputs.map(
    (output) => [output.fact, factOf(output, spreads.get(output.fact), output.assumed ?? assumed)] as const,
  );
  return { facts, issues: run.issues ?? NO_ISSUES };
}

const NO_SPREADS: ReadonlyMap<string, number> = new Map();
const NO_ISSUES: readonly Issue[] = [];
const NOTHING_ASSUMED: readonly ReadingPath[] = [];

function assumedReadings({ parameters }: Model): readonly ReadingPath[] {
  if (!parameters.some((one) => one.assumed)) return NOTHING_ASSUMED;
  return parameters.filter((one) => one.assumed).map((one) => one.reading);
}

function factOf(output: Output, plusMinus: number | undefined, assumed: readonly string[]): Fact {
  if ('notApplicable' in output) return NOT_APPLICABLE;
  if ('unknown' in output) return { state: 'unknown', missing: [...new Set(output.unknown)] };
  if ('word' in output) {
    const { word: value } = output;
    return assumed.length > 0 ? { state: 'word', value, assumed } : { state: 'word', value };
  }
  const { value, kind } = output;
  const fact =
    assumed.length > 0
      ? ({ state: 'number', value, kind, assumed } as const)
      : ({ state: 'number', value, kind } as const);
  return plusMinus === undefined ? fact : { ...fact, plusMinus };
}

function unknown(model: Model, missing: readonly string[]): ModelFacts['facts'] {
  const fact: Fact = { state: 'unknown', missing: [...new Set(missing)] };
  return model.provides.map((key) => [key, fact] as const);
}
