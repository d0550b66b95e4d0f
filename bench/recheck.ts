/** Ten thousand job files checked again: against one file after another in one thread, and whether memory stays flat. */
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rowOf } from '../apps/cli/src/recheck/row.ts';
import { mebibytes, runChild } from './child.ts';
import { type BenchRow, time } from './measure.ts';

const EXAMPLES = join(dirname(dirname(fileURLToPath(import.meta.url))), 'examples');
const NAMES = ['house-pool', 'winter-propane', 'public-pool', 'swap', 'unfinished'];
const TODAY = '2026-10-01';
/** Of the single-file rate times the cores: the thread that hands out and writes shares them. */
const SHARE = 0.8;
const FLAT = 1.15;

/** A folder of copies of the examples, one subfolder a thousand. */
function folderOf(count: number): string {
  const folder = mkdtempSync(join(tmpdir(), 'firstfire-recheck-'));
  for (let i = 0; i < count; i += 1) {
    const below = join(folder, String(Math.floor(i / 1000)));
    if (i % 1000 === 0) mkdirSync(below);
    copyFileSync(join(EXAMPLES, `${NAMES[i % NAMES.length]}.job.json`), join(below, `${i}.job.json`));
  }
  return folder;
}

async function recheckOf(count: number): ReturnType<typeof runChild> {
  const folder = folderOf(count);
  try {
    const run = await runChild(['recheck', folder]);
    if (run.lines !== count + 1) throw new Error(`${run.lines} lines came back for ${count} files`);
    return run;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Seconds for the examples once each, read from the disk and checked in this thread. */
function single(): number {
  const round = (): void => {
    for (const name of NAMES)
      rowOf(name, readFileSync(join(EXAMPLES, `${name}.job.json`), 'utf8'), { today: TODAY });
  };
  return time(round, 4000).median / 1e6;
}

export async function recheckBench(count = 10_000): Promise<readonly BenchRow[]> {
  const rate = NAMES.length / single();
  const half = await recheckOf(count / 2);
  const whole = await recheckOf(count);
  const cores = availableParallelism();
  const reached = count / whole.seconds;
  const ratio = reached / (rate * cores);
  return [
    {
      name: `recheck of ${count.toLocaleString('en')} files on ${cores} cores, start included`,
      ours: `${Math.round(reached)} files/s`,
      against: `${Math.round(rate)} files/s, one after another in one thread`,
      ratio: `${ratio.toFixed(2)} of that times the cores`,
      goal: `at least ${SHARE}`,
      met: ratio >= SHARE,
    },
    {
      name: 'peak memory of that, against half the files',
      ours: mebibytes(whole.peak),
      against: mebibytes(half.peak),
      ratio: (whole.peak / half.peak).toFixed(2),
      goal: `at most ${FLAT}`,
      met: whole.peak <= half.peak * FLAT,
    },
  ];
}

if (import.meta.main) console.table(await recheckBench());
