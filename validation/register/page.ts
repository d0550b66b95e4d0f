/** docs/published-figures.md: every table, example and group of rules that was looked for, and what answers it. */
import { inside, type Row } from '../run.ts';
import { table } from '../table.ts';
import { type Chapter, type Entry, REGISTER } from './index.ts';

const LINK = '[validation](validation.md)';

export function registerPage(rows: readonly Row[]): string {
  const entries = REGISTER.flatMap((chapter) => chapter.entries);
  const unanswered = entries.filter(({ by }) => by.length === 0);
  const inPart = entries.filter(({ by, not }) => by.length > 0 && not !== undefined);
  const parts = [
    '# Published figures, answered or not',
    `Made by \`npm run validate\`. Each row is a published table, example or group of rules that the project looked for. *Answered by* names the suite of ${LINK} with the figures that agree of those it holds, the rule (held just under, at and over its limit by the tests of the rules), or the test file. What is not answered says why.`,
    `**${entries.length} groups: ${entries.length - unanswered.length - inPart.length} answered, ${inPart.length} answered in part, ${unanswered.length} not answered.**`,
    '## Not answered',
    table(
      ['what', 'source', 'why'],
      unanswered.map(({ what, source, not }) => [what, source, not ?? '']),
    ),
    ...REGISTER.flatMap((chapter) => [`## ${chapter.title}`, chapterTable(chapter, rows)]),
    '## Suites beyond these',
    `Run and told on the validation page, from sources found later: ${beyond(entries, rows).join(', ')}.`,
  ];
  return `${parts.join('\n\n')}\n`;
}

function chapterTable({ entries }: Chapter, rows: readonly Row[]): string {
  const answered = entries.filter(({ by }) => by.length > 0);
  return table(
    ['what', 'source', 'answered by', 'not answered'],
    answered.map(({ what, source, by, not }) => [
      what,
      source,
      by.map((one) => answer(one, rows)).join(', '),
      not ?? '',
    ]),
  );
}

function answer(one: string, rows: readonly Row[]): string {
  const row = rows.find(({ suite }) => suite.id === one);
  return row ? `${one} (${inside(row)}/${row.cases + row.misfits})` : `\`${one}\``;
}

function beyond(entries: readonly Entry[], rows: readonly Row[]): readonly string[] {
  const named = new Set(entries.flatMap(({ by }) => by));
  return rows.map(({ suite }) => suite.id).filter((id) => !named.has(id));
}
