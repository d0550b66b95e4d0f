/** What an issue says: what was found, and what would be right. */
export const ISSUES: Readonly<Record<string, string>> = {
  'out-of-range': '{where}: {found} is outside the range {range}.',
  'not-finite': '{where}: {found} is not a number that can be computed with.',
  contradiction: '{where}: {reason}.',
  'no-solution': '{where}: no solution exists for these values.{because}',
  'not-converged':
    '{where}: the calculation did not settle; the values may lie at the edge of what is physical.',
  'not-understood': '{where}: “{found}” was not understood.{expected}',
  'ill-formed': '{where}: {reason}.',
  expected: ' Expected: {list}.',
  'reason.curve-rises': 'the head rises with the flow; a pump’s curve falls from its shut-off head',
  'reason.curve-falls': 'the loss falls with the flow; check the order of the points',
  'reason.points-not-in-order': 'the points must stand in rising order of flow',
  'reason.too-few-points': 'a curve needs at least two points',
  'reason.number-expected': 'a number with its unit is expected',
  'reason.text-expected': 'a word is expected',
  'reason.points-expected': 'pairs of values are expected',
};
