/** Verdicts that random jobs do not reach, each with the reason; the coverage page lists them. */

/** `rule: verdict` or `rule in edition` → why no random job comes there. */
export const UNREACHED: Readonly<Record<string, string>> = {};

/** Those for which nobody gave a reason. */
export function unexplained(names: readonly string[]): readonly string[] {
  return names.filter((name) => !(name in UNREACHED));
}
