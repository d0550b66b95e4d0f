/** A published table, example or group of rules that was looked for, and what answers it. */

export interface Entry {
  /** The table, the example, the rules. */
  readonly what: string;
  readonly source: string;
  /**
   * Suites (`gas/ifgc-2018-a24`), rules (`gas.test-pressure`, held at its limit by the proofs of the rules) and test
   * files (`packages/…/x.test.ts`) that answer it. None: not answered.
   */
  readonly by: readonly string[];
  /** What of it is not answered, and why. */
  readonly not?: string;
}

export interface Chapter {
  readonly title: string;
  readonly entries: readonly Entry[];
}

/** One line of the register: what, its source, what answers it, what is left and why. */
export function entry(what: string, source: string, by: readonly string[], not?: string): Entry {
  return { what, source, by, ...(not === undefined ? {} : { not }) };
}
