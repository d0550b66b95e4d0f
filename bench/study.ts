/** The study of a job: the quick one that a screen repaints with, the full one with the ± of every reading. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type JobView, jobViewOf, KeptStudy, readJobFile, study } from '@firstfire/job';
import { trialView } from '../apps/field/src/entry/trial.ts';
import { type BenchRow, microseconds, time } from './measure.ts';

const EXAMPLES = join(dirname(dirname(fileURLToPath(import.meta.url))), 'examples');
const TODAY = '2026-10-01';

/** The jobs that have a goal, ms, all six lines. */
const GOALS = [
  { name: 'house-pool', called: 'the house pool', goal: 1.5 },
  { name: 'public-pool', called: 'the public pool', goal: 8 },
] as const;

export function studyBench(): readonly BenchRow[] {
  return GOALS.flatMap(rowsOf);
}

function rowsOf({ name, called, goal }: (typeof GOALS)[number]): readonly BenchRow[] {
  const text = readFileSync(join(EXAMPLES, `${name}.job.json`), 'utf8');
  const read = readJobFile(text);
  if (!read.ok) throw new Error(`${name} cannot be read`);
  const view = jobViewOf(read.value.document);
  const quick = time(() => study(view, { today: TODAY, uncertainty: false }), 4000);
  const edited = time(again(view), 4000);
  const full = time(() => study(view, { today: TODAY }), 1500);
  const reading = time(() => readJobFile(text));
  return [
    {
      name: `quick study of ${called}, six lines`,
      ours: `${microseconds(quick.median)} (95 %: ${microseconds(quick.p95)})`,
      goal: `${goal} ms median`,
      met: quick.median <= goal * 1000,
    },
    {
      name: 'the same while the bypass is turned, a new opening each time',
      ours: microseconds(edited.median),
      against: `${microseconds(quick.median)} afresh`,
      ratio: (edited.median / quick.median).toFixed(2),
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

/** As a screen does it: one reading changes, and what does not hang on it is kept. */
function again(view: JobView): () => unknown {
  const kept = new KeptStudy();
  let turn = 0;
  return () => {
    turn = (turn + 1) % 100;
    const reading = { value: turn, unit: '%', how: 'drawing' } as const;
    const at = { collection: 'waterLoop', id: '-', field: 'bypassOpening' };
    return study(trialView(view, at, reading), { today: TODAY, uncertainty: false, kept });
  };
}

if (import.meta.main) console.table(studyBench());
