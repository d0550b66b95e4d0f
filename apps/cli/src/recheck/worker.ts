/** A worker of `recheck`: takes paths, gives rows. A file that cannot be read is a row like any other. */
import { readFileSync, statSync } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import { issueRow, type RowOptions, rowOf } from './row.ts';

/** A job of a whole working life stays far under this. */
const LONGEST_FILE = 64 * 1024 * 1024;

export interface Task {
  readonly index: number;
  readonly path: string;
  readonly name: string;
}

export interface Done {
  readonly index: number;
  readonly row: readonly string[];
}

const options = workerData as RowOptions;

parentPort?.on('message', ({ index, path, name }: Task) => {
  parentPort?.postMessage({ index, row: checked(path, name) } satisfies Done);
});

function checked(path: string, name: string): readonly string[] {
  try {
    const { size } = statSync(path);
    if (size > LONGEST_FILE) return issueRow(name, `too-large: ${size} bytes`);
    return rowOf(name, readFileSync(path, 'utf8'), options);
  } catch (error) {
    return issueRow(name, error instanceof Error ? error.message : String(error));
  }
}
