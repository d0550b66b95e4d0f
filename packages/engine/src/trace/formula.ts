/**
 * A formula: a kernel of plain SI numbers, with what a reader needs beside it.
 *
 * The kernel is the one place where the equation stands. `evaluate` is its public door (ranges checked once),
 * `traced` its explaining door (the same kernel, with a recorder), and a study on its fast path calls the kernel.
 */
import type { Kind } from '../quantity/kinds.ts';
import { fail, type Issue, ok, type Result } from './issue.ts';
import type { Recorder } from './recorder.ts';

/** How a figure or an equation is known. */
export type HowKnown =
  | 'read in the code'
  | 'read in a public copy'
  | 'from memory'
  | 'common practice, no source'
  /** Stands on the equipment or in the instructions that came with it. */
  | 'stated by the maker'
  /** An amendment of the place, as somebody entered it for the job. */
  | 'local amendment, as entered'
  /** Follows from a definition or a law of physics. */
  | 'physics';

export interface Source {
  readonly document: string;
  /** Section, equation, table or page. */
  readonly at?: string;
  readonly known: HowKnown;
}

export interface Variable {
  readonly symbol: string;
  readonly kind: Kind;
  /** Smallest and largest value for which the formula may be used; the ends belong to the range. */
  readonly min?: number;
  readonly max?: number;
}

export type Inputs = Readonly<Record<string, number>>;

export interface Formula<I extends { readonly [K in keyof I]: number }> {
  /** `discipline.name`, the key of its words. */
  readonly id: string;
  /** The equation in symbols, language-neutral. */
  readonly equation: string;
  readonly inputs: { readonly [K in keyof I]-?: Variable };
  readonly result: Variable;
  readonly source: Source;
  readonly kernel: (x: I, recorder?: Recorder) => number;
}

/** The issues of inputs outside their ranges; empty when all are inside. */
export function rangeIssues<I extends { readonly [K in keyof I]: number }>(
  formula: Formula<I>,
  x: I,
): Issue[] {
  const issues: Issue[] = [];
  for (const name in formula.inputs) {
    const issue = variableIssue(name, x[name], formula.inputs[name]);
    if (issue) issues.push(issue);
  }
  return issues;
}

/** The issue of one value against its declared range, if any. */
export function variableIssue(where: string, value: number, variable: Variable): Issue | undefined {
  const { kind, min, max } = variable;
  if (!Number.isFinite(value)) return { code: 'not-finite', where, found: String(value), kind };
  if ((min === undefined || value >= min) && (max === undefined || value <= max)) return undefined;
  return {
    code: 'out-of-range',
    where,
    found: value,
    kind,
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
  };
}

/** The public door: ranges checked, then the kernel; never a clamp, a NaN or a throw. */
export function evaluate<I extends { readonly [K in keyof I]: number }>(
  formula: Formula<I>,
  x: I,
  recorder?: Recorder,
): Result<number> {
  const issues = rangeIssues(formula, x);
  if (issues.length > 0) return fail(...issues);
  const value = traced(formula, x, recorder);
  if (Number.isFinite(value)) return ok(value);
  return fail({ code: 'no-solution', where: formula.id, found: String(value), kind: formula.result.kind });
}

/** The kernel, recorded as a step when there is a recorder. */
export function traced<I extends { readonly [K in keyof I]: number }>(
  formula: Formula<I>,
  x: I,
  recorder?: Recorder,
): number {
  if (recorder === undefined) return formula.kernel(x);
  recorder.open();
  const value = formula.kernel(x, recorder);
  recorder.closeFormula(formula, x, value);
  return value;
}
