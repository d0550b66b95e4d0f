/**
 * Runs every suite and writes docs/validation.md with its drawing, and docs/published-figures.md: `npm run validate`.
 * With `--check` it only compares, so that a change which moves a figure shows up in the test run.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { countPublished } from './count.ts';
import { bandsDrawing } from './plot.ts';
import { registerPage } from './register/page.ts';
import { type Row, runSuite } from './run.ts';
import type { Suite, SuiteKind } from './suite.ts';
import { SUITES } from './suites.ts';
import { summary, tenWorst } from './summary.ts';
import { percent, table, wholePercent } from './table.ts';

const DOCS = join(dirname(dirname(fileURLToPath(import.meta.url))), 'docs');

const INTRODUCTION =
  'Made by `npm run validate` from the suites under `validation/`; the test run compares it. Each row is one published table or example (or one library) against the figures this project computes. The band is what the source itself claims or prints to; a misfit is left standing and told in a sentence below its table. Which tables and examples were looked for, and which of them are not answered and why, stands in [published figures](published-figures.md).';

const SECTIONS: readonly (readonly [SuiteKind, string])[] = [
  ['published', 'Published figures'],
  ['stored', 'Worked out once by independent programs'],
  ['library', 'Libraries run beside ours'],
  ['estimate', 'Estimates of ours beside published figures'],
  ['practice', 'Common practice and figures from memory'],
];

export function page(rows: readonly Row[]): string {
  const parts = [
    '# Validation',
    INTRODUCTION,
    summary(rows),
    tenWorst(rows),
    '## By document',
    table(
      ['document', 'figures'],
      countPublished(rows).byDocument.map(([document, cases]) => [document, String(cases)]),
    ),
    ...SECTIONS.flatMap(([kind, title]) => section(title, ofKind(rows, kind))),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

const ofKind = (rows: readonly Row[], kind: SuiteKind): readonly Row[] =>
  rows.filter((row) => row.suite.kind === kind);

const section = (title: string, rows: readonly Row[]): readonly string[] => [
  `## ${title}`,
  suiteTable(rows),
  misfitList(rows),
];

function suiteTable(rows: readonly Row[]): string {
  if (rows.length === 0) return 'None.';
  return table(
    ['source', 'what', 'cases', 'band', 'worst, of the band', 'because', 'verdict'],
    rows.map(({ suite, cases, worst, outside, misfits }) => [
      `${suite.document}, ${suite.at}`,
      suite.quantity,
      misfits > 0 ? `${cases} + ${misfits} misfits` : String(cases),
      bandText(suite),
      wholePercent(worst),
      suite.bandBecause,
      outside > 0 ? `${outside} outside` : 'inside',
    ]),
  );
}

function misfitList(rows: readonly Row[]): string {
  return rows
    .flatMap(({ suite }) =>
      (suite.misfits ?? []).map(
        (misfit) => `- *${suite.document}, ${suite.at}* (${misfit.cases.length}): ${misfit.because}`,
      ),
    )
    .join('\n');
}

function bandText({ band }: Suite): string {
  const parts: string[] = [];
  if ('relative' in band) parts.push(percent(band.relative));
  if ('absolute' in band) parts.push(`± ${Number(band.absolute.toPrecision(3))}`);
  return parts.join(' or ');
}

export interface MadeFile {
  readonly path: string;
  readonly text: string;
}

/** Every page that a run makes. */
export function madeFiles(rows: readonly Row[]): readonly MadeFile[] {
  return [
    { path: join(DOCS, 'validation.md'), text: page(rows) },
    { path: join(DOCS, 'validation-bands.svg'), text: bandsDrawing(rows) },
    { path: join(DOCS, 'published-figures.md'), text: registerPage(rows) },
  ];
}

if (import.meta.main) {
  for (const { path, text } of madeFiles(SUITES.map(runSuite))) {
    if (!process.argv.includes('--check')) writeFileSync(path, text);
    else if (readFileSync(path, 'utf8') !== text) {
      console.log(`${path} is out of date: npm run validate`);
      process.exitCode = 1;
    }
  }
}
