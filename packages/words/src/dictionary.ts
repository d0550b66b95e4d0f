/** What one language must have: a sentence or a name for every code the tool can speak. */
import type { Verdict } from '@firstfire/reference';

export interface RuleWords {
  /** What is checked, in a few words. */
  readonly title: string;
  /** What it asks and why, for a person in the field. */
  readonly asks: string;
  /** What to do when it fails; people first where someone could be hurt. */
  readonly mend?: string;
}

export interface Dictionary {
  readonly lines: Readonly<Record<string, string>>;
  readonly verdicts: Readonly<Record<Verdict | 'not built', string>>;
  /** By rule id. */
  readonly rules: Readonly<Record<string, RuleWords>>;
  /** By `collection` and `collection.field`. */
  readonly readings: Readonly<Record<string, string>>;
  /** By formula id, and by `variable.NAME` for the names of inputs. */
  readonly formulas: Readonly<Record<string, string>>;
  /** By issue code, and by `reason.NAME`. */
  readonly issues: Readonly<Record<string, string>>;
  /** By sum name, and by `input.NAME`. */
  readonly sums: Readonly<Record<string, string>>;
  /** Everything else, by key. */
  readonly phrases: Readonly<Record<string, string>>;
}
