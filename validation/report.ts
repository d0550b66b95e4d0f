/**
 * Runs every suite and writes docs/validation.md: `npm run validate`. With `--check` it only compares, so that a
 * change which moves a figure shows up in the test run.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deviation, type Suite } from './suite.ts';
import { SUITES } from './suites.ts';

export const PAGE = join(dirname(dirname(fileURLToPath(import.meta.url))), 'docs', 'validation.md');

/** No one document may make up more than this share of the count. */
const GREATEST_SHARE = 0.25;

interface Row {
  readonly suite: Suite;
  readonly cases: number;
  readonly misfits: number;
  /** Worst deviation over the band, among the cases that count: 1 is its edge. */
  readonly worst: number;
  readonly outside: number;
}

export function runSuite(suite: Suite): Row {
  const misfits = new Set(suite.misfits?.flatMap((misfit) => misfit.cases));
  const counted = suite.cases.filter((one) => !misfits.has(one.id)).map((one) => deviation(suite, one));
  return {
    suite,
    cases: counted.length,
    misfits: misfits.size,
    worst: counted.reduce((most, one) => Math.max(most, one.ofBand), 0),
    outside: counted.filter((one) => !(one.ofBand <= 1)).length,
  };
}

export interface Count {
  /** Published figures inside their band, by document, largest first. */
  readonly byDocument: readonly (readonly [document: string, cases: number])[];
  readonly total: number;
  /** The same with every document held to a quarter of what then remains. */
  readonly fair: number;
}

export function countPublished(rows: readonly Row[]): Count {
  const byDocument = new Map<string, number>();
  for (const { suite, cases, outside } of rows) {
    if (suite.kind !== 'published') continue;
    byDocument.set(suite.document, (byDocument.get(suite.document) ?? 0) + cases - outside);
  }
  const sorted = [...byDocument].sort((a, b) => b[1] - a[1]);
  const total = sorted.reduce((sum, [, cases]) => sum + cases, 0);
  return {
    byDocument: sorted,
    total,
    fair: fairCount(
      sorted.map(([, cases]) => cases),
      total,
    ),
  };
}

/** The largest total in which no part exceeds its share of the whole: parts above it are cut down to it. */
function fairCount(parts: readonly number[], total: number): number {
  let fair = total;
  for (let round = 0; round < 100; round += 1) {
    const cap = Math.floor(fair * GREATEST_SHARE);
    const next = parts.reduce((sum, part) => sum + Math.min(part, cap), 0);
    if (next === fair) return fair;
    fair = next;
  }
  return fair;
}

export function page(rows: readonly Row[]): string {
  const { byDocument, total, fair } = countPublished(rows);
  const published = rows.filter((row) => row.suite.kind === 'published');
  const stored = rows.filter((row) => row.suite.kind === 'stored');
  const figures = stored.reduce((sum, { cases, outside }) => sum + cases - outside, 0);
  const parts = [
    '# Validation',
    'Made by `npm run validate` from the suites under `validation/`; the test run compares it. Each row is one published table or example (or one library) against the figures this project computes. The band is what the source itself claims or prints to; a misfit is left standing and told in a sentence below its table.',
    `**${total} published figures** from ${byDocument.length} documents agree inside their band; with no document counted for more than a quarter, **${fair}**. Not counted, and run as well: ${figures} figures worked out once by independent programs, or from a standard’s own constants, and kept here; general-purpose libraries run beside ours, and figures of the trade without a source.`,
    '## By document',
    table(
      ['document', 'figures'],
      byDocument.map(([document, cases]) => [document, String(cases)]),
    ),
    '## Published figures',
    suiteTable(published),
    misfitList(published),
    '## Worked out once by independent programs',
    suiteTable(stored),
    misfitList(stored),
    '## Libraries run beside ours',
    suiteTable(rows.filter((row) => row.suite.kind === 'library')),
    misfitList(rows.filter((row) => row.suite.kind === 'library')),
    '## Common practice and figures from memory',
    suiteTable(rows.filter((row) => row.suite.kind === 'practice')),
    misfitList(rows.filter((row) => row.suite.kind === 'practice')),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function suiteTable(rows: readonly Row[]): string {
  if (rows.length === 0) return 'None.';
  return table(
    ['source', 'what', 'cases', 'band', 'worst, of the band', 'because', 'verdict'],
    rows.map(({ suite, cases, worst, outside, misfits }) => [
      `${suite.document}, ${suite.at}`,
      suite.quantity,
      misfits > 0 ? `${cases} + ${misfits} misfits` : String(cases),
      bandText(suite),
      worstText(worst),
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
  if ('absolute' in band) parts.push(`± ${band.absolute}`);
  return parts.join(' or ');
}

/** Whole per cents, so that the last bits of another machine do not change the page. */
function worstText(ofBand: number): string {
  return `${Math.round(ofBand * 100)} %`;
}

/** Two digits, so that the last bits of another machine do not change the page. */
function percent(share: number): string {
  if (share < 1e-9) return '0 %';
  return `${Number((share * 100).toPrecision(2))} %`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

if (import.meta.main) {
  const text = page(SUITES.map(runSuite));
  if (process.argv.includes('--check')) {
    const same = readFileSync(PAGE, 'utf8') === text;
    console.log(
      same
        ? 'docs/validation.md is what the suites give'
        : 'docs/validation.md is out of date: npm run validate',
    );
    process.exitCode = same ? 0 : 1;
  } else writeFileSync(PAGE, text);
}
