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
  /** Where a reading is found and how it is taken, by `collection.field`. */
  readonly help: Readonly<Record<string, string>>;
  /** By the id of a formula, of a group of steps, and of a value that enters a working. */
  readonly formulas: Readonly<Record<string, string>>;
  /** By issue code, by `reason.NAME`, and by `survey.NAME` and `write.NAME` for what the log refuses. */
  readonly issues: Readonly<Record<string, string>>;
  /** By the name of a sum, and by `input.NAME` for inputs and outputs alike. */
  readonly sums: Readonly<Record<string, string>>;
  /** By the word that was chosen for a reading, as it stands in a job file. */
  readonly choices: Readonly<Record<string, string>>;
  /** Words in the labels of units, by the label or the word as English has it. */
  readonly units: Readonly<Record<string, string>>;
  /** Ordinary words of citations, by the phrase as English has it; titles stay as they are printed. */
  readonly sources: Readonly<Record<string, string>>;
  /** By `fact.SCOPE.NAME`, `file.CODE` and `log.CODE`, and everything else by its key. */
  readonly phrases: Readonly<Record<string, string>>;
}
