/**
 * A problem as data: a code from a closed set, where it is, and what would be right.
 * The wording belongs to `words`; the engine never speaks a human language.
 */
import type { Kind } from '../quantity/kinds.ts';

export const ISSUE_CODES = [
  /** A value outside the range in which the formula or the world allows it. */
  'out-of-range',
  /** Not a number, or infinite. */
  'not-finite',
  /** Two values that cannot both hold, such as an outlet pressure above the inlet. */
  'contradiction',
  /** The equations have no solution for these values. */
  'no-solution',
  /** An iteration stopped before its tolerance. */
  'not-converged',
  /** A text that is not a quantity, or not one of the kind asked for. */
  'not-understood',
  /** A structure that cannot be computed: no source, an unconnected part, an unknown name. */
  'ill-formed',
] as const;

export type IssueCode = (typeof ISSUE_CODES)[number];

export interface Issue {
  readonly code: IssueCode;
  /** The quantity or element it is about, by its name in the call, such as `insideDiameter`. */
  readonly where: string;
  readonly found?: number | string;
  readonly min?: number;
  readonly max?: number;
  readonly kind?: Kind;
  /** A finer reason, itself a code, such as `pump-curve-rises`. */
  readonly reason?: string;
  readonly expected?: readonly string[];
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** A result that holds a value: ok(3).value = 3. */
export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

/** A result that failed, with everything that is wrong. */
export function fail(...issues: readonly Issue[]): { readonly ok: false; readonly issues: readonly Issue[] } {
  return { ok: false, issues };
}

/** The value of a result that cannot fail here; a failure is a bug and throws. For tests and constants only. */
export function expectOk<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(`unexpected issue: ${JSON.stringify(result.issues)}`);
}
