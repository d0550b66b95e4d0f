/** A table of a million cases through the command line: rows a second, and whether memory stays flat. */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import type { BenchRow } from './measure.ts';

const MAIN = join(dirname(dirname(fileURLToPath(import.meta.url))), 'apps', 'cli', 'src', 'main.ts');
/** Flat: twice the rows may need this much more memory; what is left is how lazily garbage is collected. */
const FLAT = 1.15;

function* rows(count: number): Generator<string> {
  yield 'gas,equation,inside-diameter [in],length [ft],pressure-drop [in w.c.]\n';
  for (let i = 0; i < count; i += 1)
    yield `natural,low,${(0.5 + (i % 300) / 100).toFixed(2)},${10 + (i % 190)},0.5\n`;
}

interface TableRun {
  readonly seconds: number;
  /** Bytes at the peak, where the system tells. */
  readonly peak: number;
  readonly lines: number;
}

async function run(count: number): Promise<TableRun> {
  const start = performance.now();
  const child = spawn(process.execPath, [MAIN, 'sum', 'gas-capacity', '--csv', '-'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  let lines = 0;
  let peak = 0;
  const watch = setInterval(() => {
    peak = Math.max(peak, residentOf(child.pid));
  }, 20);
  child.stdout.on('data', (chunk: Buffer) => {
    for (const byte of chunk) if (byte === 10) lines += 1;
  });
  Readable.from(rows(count)).pipe(child.stdin);
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

export async function sumTableBench(count = 1_000_000): Promise<readonly BenchRow[]> {
  const small = await run(count / 2);
  const large = await run(count);
  if (large.lines !== count + 1) throw new Error(`${large.lines} lines came back for ${count} rows`);
  const mebibytes = (bytes: number): string => `${Math.round(bytes / 2 ** 20)} MiB`;
  return [
    {
      name: `sum gas-capacity --csv, ${count.toLocaleString('en')} rows`,
      ours: `${Math.round(count / large.seconds).toLocaleString('en')} rows/s`,
    },
    {
      name: 'peak memory of that, against half the rows',
      ours: mebibytes(large.peak),
      against: mebibytes(small.peak),
      ratio: (large.peak / small.peak).toFixed(2),
      goal: `at most ${FLAT}`,
      met: large.peak <= small.peak * FLAT,
    },
  ];
}

if (import.meta.main) console.table(await sumTableBench());
