/**
 * npm run soak [-- JOBS [FIRST-SEED [CORES]]]: random jobs over all cores, a million unless told. What is done is kept
 * in .cache, so that a run that was broken off goes on where it stood. Says which verdicts were never reached, after a
 * long one in tools/soaked.json too; fails where a job threw, gave a number that is none or a verdict without a source,
 * or where a verdict is missing that nobody gave a reason for.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { filesIn, textOf } from '../checks/tree.ts';
import { joined, NO_JOBS, notAsked, notReached, type RandomRun } from './random-run.ts';
import type { Part } from './soak-worker.ts';
import { entriesNow, LEAST_SOAK, writeSoaked } from './soaked.ts';
import { unexplained } from './unreached.ts';

const CACHE = join(dirname(dirname(fileURLToPath(import.meta.url))), '.cache');
const PART = 2_000;

const [jobs = 1_000_000, firstSeed = 1, cores = availableParallelism()] = process.argv.slice(2).map(Number);
if (![jobs, firstSeed, cores].every((one) => Number.isInteger(one) && one > 0)) {
  console.error('npm run soak -- JOBS [FIRST-SEED [CORES]]: whole numbers are expected.');
  process.exit(2);
}

const KEPT = join(CACHE, `soak-${firstSeed}.json`);

/** What was done of this very soak; parts that were under way when it broke off are run again. */
interface Kept {
  /** Digest of everything that runs: what was done by other code does not count. */
  readonly code: string;
  readonly jobs: number;
  readonly firstSeed: number;
  readonly done: readonly number[];
  readonly run: RandomRun;
}

function kept(): Kept {
  const none: Kept = { code: codeDigest(), jobs, firstSeed, done: [], run: NO_JOBS };
  if (!existsSync(KEPT)) return none;
  const before = JSON.parse(readFileSync(KEPT, 'utf8')) as Kept;
  const same = before.code === none.code && before.jobs === jobs && before.firstSeed === firstSeed;
  return same ? before : none;
}

function codeDigest(): string {
  const digest = createHash('sha256');
  const folders = ['packages/engine/src', 'packages/reference/src', 'packages/job/src', 'tools'];
  const files = folders.flatMap((folder) => filesIn(folder, '.ts'));
  for (const path of [...files, ...filesIn('examples', '.survey.json')]) digest.update(textOf(path));
  return digest.digest('hex');
}

function keep(state: Kept): void {
  mkdirSync(CACHE, { recursive: true });
  writeFileSync(KEPT, JSON.stringify(state));
}

function partsLeft(done: readonly number[]): Part[] {
  const there = new Set(done);
  const parts: Part[] = [];
  for (let seed = firstSeed; seed < firstSeed + jobs; seed += PART)
    if (!there.has(seed)) parts.push({ firstSeed: seed, jobs: Math.min(PART, firstSeed + jobs - seed) });
  return parts;
}

/** Hands parts to one worker until none is left or something went wrong. */
function runWorker(parts: Part[], over: (part: Part, run: RandomRun) => boolean): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./soak-worker.ts', import.meta.url));
    let part: Part | undefined;
    const next = (): void => {
      part = parts.shift();
      if (part === undefined) worker.terminate().then(() => resolve(), reject);
      else worker.postMessage(part);
    };
    worker.on('error', reject);
    worker.on('message', (run: RandomRun) => {
      if (part !== undefined && !over(part, run)) parts.length = 0;
      next();
    });
    next();
  });
}

let state = kept();
const before = state.run.jobs;
const started = performance.now();
const parts = partsLeft(state.done);
const over = (part: Part, run: RandomRun): boolean => {
  state = { ...state, done: [...state.done, part.firstSeed], run: joined(state.run, run) };
  if (run.faults.length > 0) return false;
  keep(state);
  const rate = (state.run.jobs - before) / ((performance.now() - started) / 1000);
  console.error(`${state.run.jobs} of ${jobs} jobs, ${rate.toFixed(0)} a second`);
  return true;
};
await Promise.all(Array.from({ length: cores }, () => runWorker(parts, over)));

if (state.run.faults.length > 0) {
  console.log(state.run.faults.join('\n'));
  process.exit(1);
}
rmSync(KEPT, { force: true });
const never = [...notReached(state.run), ...notAsked(state.run)];
if (jobs >= LEAST_SOAK) writeSoaked({ jobs: state.run.jobs, firstSeed, entries: entriesNow(), never });
console.log(
  `${state.run.jobs} jobs, none with an exception, a number that is none or a verdict without a source.`,
);
for (const name of never) console.log(`never: ${name}`);
const open = unexplained(never);
if (open.length > 0) {
  console.log(`without a reason in tools/unreached.ts:\n${open.join('\n')}`);
  process.exit(1);
}
