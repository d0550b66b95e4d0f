/** What changes between two editions, for a terminal. */
import type { Change } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { fill, marginText, outcomeText, type Reader, sourceText, unitsOf } from '@firstfire/words';
import { wrap } from './table.ts';

export interface ChangesContext {
  readonly from: string;
  readonly to: string;
  readonly reader: Reader;
}

export function printChanges(changes: readonly Change[], { from, to, reader }: ChangesContext): string {
  const { words } = reader.speech;
  const head = fill(words.phrases['editions.head'] ?? '', { from, to, count: changes.length });
  const rows = changes.map((change) =>
    [
      `  ${change.id}`,
      `    ${from}: ${side(change.before, reader)}`,
      `    ${to}: ${side(change.after, reader)}`,
    ]
      .map((line) => wrap(line.trim(), 100, line.startsWith('    ') ? '    ' : '  '))
      .join('\n'),
  );
  return [head, ...rows].join('\n');
}

function side(finding: Finding | undefined, reader: Reader): string {
  const { words } = reader.speech;
  if (finding === undefined) return words.phrases['editions.no-rule'] ?? '';
  const { source, checkTheBook } = finding;
  const parts = [
    `${words.verdicts[finding.verdict]} ${marginText(finding, reader.speech)}`.trim(),
    outcomeText(finding, unitsOf(finding, reader)),
    sourceText(source, reader.speech),
    checkTheBook ? `[${words.phrases['check-the-book']}]` : '',
  ];
  return parts.filter((part) => part !== '').join(' · ');
}
