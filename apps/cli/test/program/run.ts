/** Runs the command line as a person does: a process of its own, its two outputs and its exit status. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const MAIN = fileURLToPath(new URL('../../src/main.ts', import.meta.url));
export const EXAMPLES = fileURLToPath(new URL('../../../../examples', import.meta.url));

export interface Answer {
  readonly out: string;
  readonly error: string;
  readonly status: number | null;
}

/** In English, whatever the machine that tests speaks. */
export function firstfire(args: readonly string[], input = '', locale = 'C'): Answer {
  const env = { ...process.env, LC_ALL: locale };
  const done = spawnSync(process.execPath, [MAIN, ...args], {
    encoding: 'utf8',
    input,
    env,
    maxBuffer: 1 << 28,
  });
  return { out: done.stdout, error: done.stderr, status: done.status };
}

export function example(name: string): string {
  return join(EXAMPLES, `${name}.job.json`);
}

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), 'firstfire-'));
}
