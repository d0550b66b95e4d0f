/** The study of a job: the quick one that a screen repaints with, the full one with the ± of every reading. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { jobViewOf, readJobFile, study } from '@firstfire/job';
import { type BenchRow, microseconds, time } from './measure.ts';

const FILE = join(dirname(dirname(fileURLToPath(import.meta.url))), 'examples', 'house-pool.job.json');
const QUICK_GOAL = 1000;

export function studyBench(): readonly BenchRow[] {
  const text = readFileSync(FILE, 'utf8');
  const read = readJobFile(text);
  if (!read.ok) throw new Error('the example cannot be read');
  const view = jobViewOf(read.value.document);
  const today = '2026-10-01';
  const quick = time(() => study(view, { today, uncertainty: false }), 4000);
  const full = time(() => study(view, { today }), 1500);
  const reading = time(() => readJobFile(text));
  return [
    {
      name: 'quick study of the house example',
      ours: `${microseconds(quick.median)} (95 %: ${microseconds(quick.p95)})`,
      goal: '1 ms median',
      met: quick.median <= QUICK_GOAL,
      ...(quick.median <= QUICK_GOAL
        ? {}
        : {
            note: 'two networks laid out and about 30 solves, each counted from the folded document; nothing of the last study is kept',
          }),
    },
    {
      name: 'full study of the same, with the ± of every reading',
      ours: microseconds(full.median),
      against: `${microseconds(quick.median)} quick`,
      ratio: (full.median / quick.median).toFixed(0),
    },
    { name: 'reading and folding its file', ours: microseconds(reading.median) },
  ];
}

if (import.meta.main) console.table(studyBench());
