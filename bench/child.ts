/** A command of the program run as a process of its own: how long, how much memory at the peak, how many lines. */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';

const MAIN = join(dirname(dirname(fileURLToPath(import.meta.url))), 'apps', 'cli', 'src', 'main.ts');

export interface ChildRun {
  readonly seconds: number;
  /** Bytes at the peak, where the system tells; 0 elsewhere. */
  readonly peak: number;
  readonly lines: number;
}

/** Runs `firstfire` with these words; `input` goes to its standard input, its progress is not shown. */
export async function runChild(words: readonly string[], input?: Iterable<string>): Promise<ChildRun> {
  const start = performance.now();
  const child = spawn(process.execPath, [MAIN, ...words], { stdio: ['pipe', 'pipe', 'ignore'] });
  let lines = 0;
  let peak = 0;
  const watch = setInterval(() => {
    peak = Math.max(peak, residentOf(child.pid));
  }, 20);
  child.stdout.on('data', (chunk: Buffer) => {
    for (const byte of chunk) if (byte === 10) lines += 1;
  });
  Readable.from(input ?? []).pipe(child.stdin);
  await new Promise((resolve) => child.on('close', resolve));
  clearInterval(watch);
  return { seconds: (performance.now() - start) / 1000, peak, lines };
}

function residentOf(pid: number | undefined): number {
  try {
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) * 1024;
  } catch {
    return 0;
  }
}

export function mebibytes(bytes: number): string {
  return `${Math.round(bytes / 2 ** 20)} MiB`;
}
