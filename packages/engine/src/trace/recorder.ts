/**
 * Records how a number was made, as a tree. A kernel is run again with a recorder when someone asks for its
 * working, so that the fast path stays fast and the working is never a second formula.
 */
import type { Kind } from '../quantity/kinds.ts';
import type { Formula, Source } from './formula.ts';

export interface TracedValue {
  /** Name in the call, the key of its words. */
  readonly name: string;
  readonly symbol: string;
  readonly value: number;
  readonly kind: Kind;
}

export interface FormulaStep {
  readonly step: 'formula';
  readonly id: string;
  readonly equation: string;
  readonly inputs: readonly TracedValue[];
  readonly result: TracedValue;
  readonly source: Source;
  readonly children: readonly Step[];
}

/** A value that enters the working from outside: a reading, a table cell, a constant. */
export interface GivenStep {
  readonly step: 'given';
  readonly id: string;
  readonly value: number | string;
  readonly kind?: Kind;
  /** Where it comes from: a reading's path, or a table's source. */
  readonly reading?: string;
  readonly source?: Source;
}

/** A named part of a larger working, with its own result: a pressure at a node, a case. */
export interface GroupStep {
  readonly step: 'group';
  readonly id: string;
  readonly value?: number;
  readonly kind?: Kind;
  /** Values of the words' slots, such as the name of a segment. */
  readonly about?: Readonly<Record<string, string | number>>;
  readonly children: readonly Step[];
}

export type Step = FormulaStep | GivenStep | GroupStep;

export interface GroupEnd {
  readonly id: string;
  readonly value?: number;
  readonly kind?: Kind;
  readonly about?: Readonly<Record<string, string | number>>;
}

/** Steps open and close like brackets; what is recorded between becomes the children of the step. */
export class Recorder {
  readonly #open: Step[][] = [[]];

  /** The finished steps at the top. */
  get steps(): readonly Step[] {
    return this.#open[0] ?? [];
  }

  open(): void {
    this.#open.push([]);
  }

  closeFormula<I extends { readonly [K in keyof I]: number }>(
    formula: Formula<I>,
    x: I,
    value: number,
  ): void {
    const children = this.#pop();
    const inputs: TracedValue[] = (Object.keys(formula.inputs) as (keyof I & string)[]).map((name) => ({
      name,
      symbol: formula.inputs[name].symbol,
      value: x[name],
      kind: formula.inputs[name].kind,
    }));
    const { id, equation, source } = formula;
    const result = { name: id, symbol: formula.result.symbol, value, kind: formula.result.kind };
    this.#add({ step: 'formula', id, equation, inputs, result, source, children });
  }

  closeGroup(end: GroupEnd): void {
    const children = this.#pop();
    this.#add({ step: 'group', ...end, children });
  }

  given(step: Omit<GivenStep, 'step'>): void {
    this.#add({ step: 'given', ...step });
  }

  #pop(): Step[] {
    const children = this.#open.pop();
    if (children === undefined || this.#open.length === 0)
      throw new Error('a step was closed that was never opened');
    return children;
  }

  #add(step: Step): void {
    this.#open.at(-1)?.push(step);
  }
}
