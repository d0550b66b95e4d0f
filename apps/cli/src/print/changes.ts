/** What changes between two editions, for a terminal. */
import type { Change } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { fill, wordsOf } from '@firstfire/words';
import { marginText, outcomeText, type System, unitsOf } from './finding-text.ts';
import { wrap } from './table.ts';

export interface ChangesContext {
  readonly from: string;
  readonly to: string;
  readonly system: System;
}

const words = wordsOf('en');

export function printChanges(changes: readonly Change[], { from, to, system }: ChangesContext): string {
  const head = fill(words.phrases['editions.head'] ?? '', { from, to, count: changes.length });
  const rows = changes.map((change) =>
    [
      `  ${change.id}`,
      `    ${from}: ${side(change.before, system)}`,
      `    ${to}: ${side(change.after, system)}`,
    ]
      .map((line) => wrap(line.trim(), 100, line.startsWith('    ') ? '    ' : '  '))
      .join('\n'),
  );
  return [head, ...rows].join('\n');
}

function side(finding: Finding | undefined, system: System): string {
  if (finding === undefined) return words.phrases['editions.no-rule'] ?? '';
  const { source, checkTheBook } = finding;
  const parts = [
    `${words.verdicts[finding.verdict]} ${marginText(finding)}`.trim(),
    outcomeText(finding, unitsOf(finding, system)),
    [source.document, source.at].filter(Boolean).join(', '),
    checkTheBook ? `[${words.phrases['check-the-book']}]` : '',
  ];
  return parts.filter((part) => part !== '').join(' · ');
}
