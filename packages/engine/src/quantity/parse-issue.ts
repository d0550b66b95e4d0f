/** What a text could not be read for, and where in it. */
import type { Issue } from '../trace/issue.ts';

export const PARSE_REASONS = [
  'empty',
  'too-long',
  'number-expected',
  /** More than one sign before a number. */
  'two-signs',
  'division-by-zero',
  /** Larger than any number the machine holds, or so small that it would become zero. */
  'number-beyond-range',
  /** Digits parted in a way that is no number: `1,23,456`. */
  'digits-misplaced',
  /** `1,234` where both signs are in use; `expected` holds the two readings. */
  'decimal-sign-unclear',
  /** `11/2`, which may be a lost space; `expected` holds the two readings. */
  'fraction-unclear',
  'unit-missing',
  'unit-unknown',
  /** A unit, but of another kind; `otherKinds` names them. */
  'unit-of-another-kind',
  /** Capitals carry meaning here (mW, MW); `expected` holds the units that may be meant. */
  'letter-case-matters',
  /** A unit of a standard volume, with a base that was not understood. */
  'gas-base-unknown',
  /** A part as large as the unit before it: `5 ft 14 in`. */
  'part-too-large',
  /** A whole number had to stand before a smaller unit: `5.5 ft 2 in`. */
  'part-not-whole',
  /** No such wire gauge. */
  'gauge-unknown',
  /** Colder than absolute zero, or less than no pressure at all. */
  'below-absolute-zero',
] as const;

export type ParseReason = (typeof PARSE_REASONS)[number];

export interface ParseIssue extends Issue {
  readonly reason: ParseReason;
  /** Where the part that was not understood begins in the text, from 0. */
  readonly position: number;
  readonly otherKinds?: readonly string[];
}

/** A fault found while scanning, before it is known which quantity it is about. */
export interface Fault {
  readonly reason: ParseReason;
  readonly position: number;
  readonly found: string;
  readonly expected?: readonly string[];
  readonly otherKinds?: readonly string[];
}
