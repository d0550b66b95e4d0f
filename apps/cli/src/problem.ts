/** What ends a command early: a message that says what, where, and what would be right; and the exit status. */
import { type Dictionary, fill, type Slots } from '@firstfire/words';

/** A text in whatever language the reader has. */
export type Said = (words: Dictionary) => string;

export class Problem extends Error {
  readonly said: Said;
  readonly status: number;

  constructor(said: Said, status = 2) {
    super('a problem to be told');
    this.said = said;
    this.status = status;
  }
}

/** A problem that one phrase tells. */
export function problem(phrase: string, slots: Slots = {}): Problem {
  return new Problem(({ phrases }) => fill(phrases[phrase] ?? phrase, slots));
}

/** Lines of several that are wrong, under each other behind `firstfire: `. */
export function underEachOther(lines: readonly string[]): string {
  return lines.join('\n           ');
}

/** Exit statuses, the same for every command. */
export const STATUS = {
  /** Nothing fails. */
  good: 0,
  /** Something fails. */
  fails: 1,
  /** Bad use, or a file that cannot be read. */
  badUse: 2,
  /** Nothing fails, but something is unknown. */
  unknown: 3,
} as const;
