/**
 * npm run bench: every bench in one run, side by side with what it is held against, written to docs/benchmarks.md.
 * Goals are reported, never asserted: a missed one is stated with its reason.
 */
import { writeFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fieldBench } from './field.ts';
import type { BenchRow } from './measure.ts';
import { networkBench } from './network.ts';
import { recheckBench } from './recheck.ts';
import { studyBench } from './study.ts';
import { sumTableBench } from './sum-table.ts';
import { yardMapBench } from './yard-map.ts';
import { yearBench } from './year.ts';

const PAGE = join(dirname(dirname(fileURLToPath(import.meta.url))), 'docs', 'benchmarks.md');

const GROUPS: readonly (readonly [
  title: string,
  bench: () => readonly BenchRow[] | Promise<readonly BenchRow[]>,
])[] = [
  ['Water network, beside EPANET', networkBench],
  ['A year by the hour, beside a bare loop', yearRows],
  ['Study of a job', studyBench],
  ['Thousands of job files', recheckBench],
  ['Map of a yard', yardMapBench],
  ['Tables of sums', sumTableBench],
  ['The field app', fieldBench],
];

/** The year's rows: the march beside the bare loop, and what it leaves in memory. */
function yearRows(): readonly BenchRow[] {
  const rows = yearBench();
  const value = (name: string): number => rows.find((row) => row.name.startsWith(name))?.value ?? Number.NaN;
  const ratio = value('ratio');
  const growth = value('heap growth');
  return [
    {
      name: 'year by the hour, marched and booked',
      ours: `${value('year by the hour').toPrecision(3)} ms`,
      against: `${value('bare loop').toPrecision(3)} ms, a bare loop of the same formulas`,
      ratio: ratio.toFixed(2),
      goal: 'at most 2',
      met: ratio <= 2,
    },
    { name: 'whole question, weather to answer', ours: `${value('whole question').toPrecision(3)} ms` },
    {
      name: 'heap growth over 100 years',
      ours: `${Math.round(growth / 1024)} KiB`,
      goal: 'does not grow with the years',
      // Less than one number kept for each of the 876,000 hours.
      met: growth < 876_000,
    },
  ];
}

async function page(): Promise<string> {
  const parts = [
    '# Benchmarks',
    `Made by \`npm run bench\` in one run on ${cpus().length} × ${cpus()[0]?.model.trim()}, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.versions.node}. Times are medians on a machine that is shared with others; what counts is the ratio inside one run.`,
  ];
  for (const [title, bench] of GROUPS) {
    console.error(`${title} ...`);
    parts.push(`## ${title}`, table(await bench()));
  }
  return `${parts.join('\n\n')}\n`;
}

function table(rows: readonly BenchRow[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const body = rows.map(({ name, ours, against = '', ratio = '', goal = '', met, note = '' }) =>
    line([name, ours, against, ratio, goal, met === undefined ? '' : met ? 'met' : 'missed', note]),
  );
  const head = ['what', 'ours', 'against', 'ratio', 'goal', '', 'remark'];
  return [line(head), line(head.map(() => '---')), ...body].join('\n');
}

const text = await page();
writeFileSync(PAGE, text);
console.log(text);
