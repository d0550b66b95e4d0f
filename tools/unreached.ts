/** Verdicts that random jobs do not reach, each with the reason; the coverage page lists them. */

/** `rule: verdict` or `rule in edition` → why no random job comes there. */
export const UNREACHED: Readonly<Record<string, string>> = {
  'air.one-opening-room: tight':
    'few jobs have one opening alone, and then a clearance has to lie within a tenth of an inch; proved beside the rule',
  'air.condensate-capacity: tight':
    'few jobs condense into a pump, whose flow has to lie within a tenth of what it must lift; proved beside the rule',
};

/** Those for which nobody gave a reason. */
export function unexplained(names: readonly string[]): readonly string[] {
  return names.filter((name) => !(name in UNREACHED));
}
