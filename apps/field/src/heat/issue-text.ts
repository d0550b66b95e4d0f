/** An issue as a sentence, its place by name. */
import type { Issue } from '@firstfire/engine';
import { issueSentence } from '@firstfire/words';
import type { AppText } from '../text/app-text.ts';

export function issueText(
  issue: Issue,
  text: AppText,
  name: (where: string) => string = (where) => where,
): string {
  const { words } = text.reader.speech;
  return issueSentence(issue, {
    words,
    show: (value, kind) => (kind === undefined ? String(value) : text.show(value, kind)),
    name: (where) => (where.split('/').length === 3 ? text.path(where) : name(where)),
  });
}
