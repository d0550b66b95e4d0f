/** An issue as a sentence. Values come in already written, so that words know nothing of units. */
import type { Issue, quantity } from '@firstfire/engine';
import type { Dictionary } from './dictionary.ts';
import { fill } from './fill.ts';

/** Writes a value of a kind in the reader's units. */
export type Show = (value: number, kind: quantity.Kind | undefined) => string;

export interface IssueContext {
  readonly words: Dictionary;
  readonly show: Show;
  /** What the issue's place is called, when it is a code rather than a path. */
  readonly name?: (where: string) => string;
}

export function issueSentence(issue: Issue, { words, show, name }: IssueContext): string {
  const where = name?.(issue.where) ?? issue.where;
  const text = (value: number | string | undefined): string =>
    typeof value === 'number' ? show(value, issue.kind) : (value ?? '');
  const reason = issue.reason === undefined ? '' : (words.issues[`reason.${issue.reason}`] ?? issue.reason);
  const found = text(issue.found);
  const sentence = fill(words.issues[sentenceKey(issue)] ?? issue.code, {
    where,
    found,
    was: found === '' ? '' : `${found} `,
    range: rangeText(issue, text),
    reason,
    because: `${reason === '' ? '' : fill(words.issues['because'] ?? '', { reason })}${limitText(issue, words, text)}`,
    expected: issue.expected?.length
      ? fill(words.issues['expected'] ?? '', { list: issue.expected.join(', ') })
      : '',
  });
  return sentence.replace(/^\s*: /, '');
}

/** Where there is no solution, how far it goes: the plateau of a warm-up, the most a table carries. */
function limitText({ code, max }: Issue, words: Dictionary, text: (value: number) => string): string {
  if (code !== 'no-solution' || max === undefined) return '';
  return ` (${fill(words.issues['limit'] ?? '', { max: text(max) })})`;
}

/** Some issues bear no reason or no range, and are said in another way. */
function sentenceKey({ code, found, reason, min, max }: Issue): string {
  // Nothing to quote: a unit or a text that is missing.
  if (code === 'not-understood' && found === '' && reason !== undefined) return 'ill-formed';
  if (code === 'out-of-range' && min === undefined && max === undefined) return `${code}.open`;
  if ((code === 'contradiction' || code === 'ill-formed') && reason === undefined) return `${code}.bare`;
  return code;
}

function rangeText({ min, max }: Issue, text: (value: number) => string): string {
  if (min === undefined) return max === undefined ? '' : `≤ ${text(max)}`;
  if (max === undefined) return `≥ ${text(min)}`;
  return `${text(min)} … ${text(max)}`;
}
