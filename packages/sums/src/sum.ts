/**
 * A sum: one calculation with named inputs and outputs, units, ranges, source and a worked example, declared once.
 * The declaration alone makes it available on the command line, in the app and in the documentation.
 */
import type { quantity, Result, Source } from '@firstfire/engine';
import { failTyped } from './engine-names.ts';

type Kind = quantity.Kind;

export interface NumberInput {
  readonly type: 'number';
  readonly kind: Kind;
  /** The unit a person in the trade would write, and the one a bare number is refused for. */
  readonly unit: string;
  readonly optional?: true;
  /** SI value taken when an optional input is left out; absent means the sum decides. */
  readonly fallback?: number;
  readonly min?: number;
  readonly max?: number;
}

export interface ChoiceInput {
  readonly type: 'choice';
  readonly choices: readonly string[];
  readonly optional?: true;
  readonly fallback?: string;
}

export type SumInput = NumberInput | ChoiceInput;

export interface SumOutput {
  readonly kind: Kind;
  /** Unit shown when none is asked for. */
  readonly unit: string;
}

export type SumInputs = Readonly<Record<string, SumInput>>;
export type SumOutputs = Readonly<Record<string, SumOutput>>;

type ValueOf<I extends SumInput> = I extends {
  readonly type: 'choice';
  readonly choices: readonly (infer C)[];
}
  ? C
  : number;

/** What `run` receives: SI numbers and chosen words; optional inputs may be missing. */
export type Given<I extends SumInputs> = {
  readonly [K in keyof I]: I[K] extends { readonly optional: true }
    ? ValueOf<I[K]> | undefined
    : ValueOf<I[K]>;
};

export interface SumExample {
  /** Inputs as a person types them. */
  readonly given: Readonly<Record<string, string>>;
  /** Outputs as the source prints them. */
  readonly gives: Readonly<Record<string, string>>;
  /** Relative tolerance that the source's own rounding allows. */
  readonly within: number;
  readonly source: Source;
}

export interface Sum<I extends SumInputs = SumInputs, O extends SumOutputs = SumOutputs> {
  readonly name: string;
  readonly inputs: I;
  readonly outputs: O;
  readonly source: Source;
  readonly example: SumExample;
  /** Inputs are already inside their declared ranges; formula ranges may still refuse them. */
  readonly run: (x: Given<I>) => Result<{ readonly [K in keyof O]: number }>;
}

/** A sum whose input and output types have been checked against its declaration, ready to stand in a list. */
export interface AnySum {
  readonly name: string;
  readonly inputs: SumInputs;
  readonly outputs: SumOutputs;
  readonly source: Source;
  readonly example: SumExample;
  readonly run: (
    x: Readonly<Record<string, number | string | undefined>>,
  ) => Result<Readonly<Record<string, number>>>;
}

/**
 * Checks a declaration by its types and forgets them, so that sums of all shapes stand in one list. Issues of the
 * engine come out under the names that a person typed.
 */
export function defineSum<const I extends SumInputs, const O extends SumOutputs>(sum: Sum<I, O>): AnySum {
  return {
    ...sum,
    run: (x) => {
      const answer = sum.run(x as Given<I>);
      return answer.ok ? answer : failTyped(answer.issues);
    },
  };
}

/** Declares a number input. */
export function number<const X extends Omit<NumberInput, 'type' | 'kind' | 'unit'>>(
  kind: Kind,
  unit: string,
  more?: X,
): { readonly type: 'number'; readonly kind: Kind; readonly unit: string } & X {
  return { type: 'number', kind, unit, ...(more as X) };
}

/** Declares a choice input. */
export function choice<const C extends readonly string[]>(
  choices: C,
): { readonly type: 'choice'; readonly choices: C } {
  return { type: 'choice', choices };
}
