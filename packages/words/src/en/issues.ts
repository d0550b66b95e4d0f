/** What an issue says: what was found, and what would be right. */
import { REASONS } from './reasons.ts';

export const ISSUES: Readonly<Record<string, string>> = {
  'out-of-range': '{where}: {found} is outside the range {range}{because}.',
  'out-of-range.open': '{where}: {found} cannot be{because}.',
  'not-finite': '{where}: {found} is not a number that can be computed with.',
  contradiction: '{where}: {reason}.',
  'contradiction.bare': '{where}: {was}does not go with the other values; allowed: {range}.',
  because: ': {reason}',
  limit: 'at most {max}',
  'no-solution': '{where}: no solution exists for these values{because}.',
  'not-converged':
    '{where}: the calculation did not settle; the values may lie at the edge of what is physical.',
  'not-understood': '{where}: “{found}” was not understood{because}.{expected}',
  'ill-formed': '{where}: {reason}.{expected}',
  'ill-formed.bare': '{where}: “{found}” cannot stand here.{expected}',
  expected: ' Expected: {list}.',

  // A survey that cannot become a log.
  'survey.not-a-collection':
    '{where}: an object is expected for a single thing, a list of objects for several.',
  'survey.bad-name': '{where}: a name the log cannot hold; letters, digits and hyphens can stand in one.',
  'survey.repeated-id': '{where}: this id stands twice in the list.',
  'survey.not-json': '{where}: the value is not JSON.',

  // An edit that is refused.
  'write.bad-name': '{where}: a name the log cannot hold.',
  'write.not-json': '{where}: the value is not JSON.',
  'write.element-exists': '{where}: this is there already.',
  'write.element-missing': '{where}: this is not there.',
  'write.element-removed': '{where}: this was removed; restore it first.',
  'write.document-exists': '{where}: the job was created already.',
  'write.other-document': '{where}: this was written for another job.',
  'write.replica-cloned': '{where}: two devices wrote under this name; one must go on under a new one.',
  'write.group-missing': '{where}: the change to undo is not in the log, or not whole.',
  'write.not-own-group': '{where}: somebody else made this change; only they can undo it.',
  'write.moved-on': '{where}: this was changed since, so that the change cannot be undone.',
  'write.not-undoable': '{where}: a creation and an entry of a record stand for good.',
  ...REASONS,
};
