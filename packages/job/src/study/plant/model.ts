/**
 * A model: one part of the plant, as a function of named parameters.
 *
 * Findings, expected readings, faults and repairs all run the same model with other parameter values; the ± of a
 * result is what the ± of each reading does to it.
 */
import type { Issue, quantity, Step } from '@firstfire/engine';
import type { FactKey } from '../facts/book.ts';
import type { ReadingPath } from '../facts/view.ts';

/** A known number the model stands on. */
export interface Parameter {
  readonly reading: ReadingPath;
  readonly value: number;
  readonly kind: quantity.Kind;
  /** 95 % half-width, SI. */
  readonly plusMinus: number;
  readonly assumed: boolean;
}

/** Parameter values by reading; what the model was built with unless another is given. */
export type Values = (reading: ReadingPath) => number;

/** A fact that a run gives: a number, a word, that it does not apply, or that these values do not give it. */
export type Output = (
  | { readonly value: number; readonly kind: quantity.Kind }
  | { readonly word: string }
  | { readonly notApplicable: true }
  | { readonly unknown: readonly ReadingPath[] }
) & {
  readonly fact: FactKey;
  /** Assumed readings it stands on, where those are not all that the model has. */
  readonly assumed?: readonly ReadingPath[];
};

export type Run =
  | {
      readonly ok: true;
      readonly outputs: readonly Output[];
      /** What kept some of its facts from being known. */
      readonly issues?: readonly Issue[];
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** A part of the plant, whether or not enough is known to run it. */
export interface Model {
  readonly id: string;
  /** Every fact it gives when it runs. */
  readonly provides: readonly FactKey[];
  readonly parameters: readonly Parameter[];
  /** Readings without which it cannot run. */
  readonly missing: readonly ReadingPath[];
  /** What is wrong with readings it looked at. */
  readonly wrong: readonly Issue[];
  readonly run: (values: Values) => Run;
  /** The working of one fact it gives: the same kernels run again with a recorder. */
  readonly explain: (fact: FactKey, values: Values) => readonly Step[];
}

/** The values a model was built with. */
export function ownValues(model: Model): Values {
  return ownValuesOf(model.parameters);
}

export function ownValuesOf(parameters: readonly Parameter[]): Values {
  const values = new Map<ReadingPath, number>();
  for (const { reading, value } of parameters) values.set(reading, value);
  return (reading) => values.get(reading) ?? Number.NaN;
}
