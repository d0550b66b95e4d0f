/** A worker of the soak: runs the parts it is handed until none is left. */
import { parentPort } from 'node:worker_threads';
import { exampleRecords } from './random-jobs.ts';
import { runRandomJobs } from './random-run.ts';

export interface Part {
  readonly firstSeed: number;
  readonly jobs: number;
}

const examples = exampleRecords();

parentPort?.on('message', ({ firstSeed, jobs }: Part) => {
  parentPort?.postMessage(runRandomJobs(firstSeed, jobs, examples));
});
