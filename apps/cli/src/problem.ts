/** What ends a command early: a message that says what, where, and what would be right; and the exit status. */
export class Problem extends Error {
  readonly status: number;

  constructor(message: string, status = 2) {
    super(message);
    this.status = status;
  }
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
