/** A table of a million cases through the command line: rows a second, and whether memory stays flat. */
import { mebibytes, runChild } from './child.ts';
import type { BenchRow } from './measure.ts';

/** Flat: twice the rows may need this much more memory; what is left is how lazily garbage is collected. */
const FLAT = 1.15;
const WORDS = ['sum', 'gas-capacity', '--csv', '-'];

function* rows(count: number): Generator<string> {
  yield 'gas,equation,inside-diameter [in],length [ft],pressure-drop [in w.c.]\n';
  for (let i = 0; i < count; i += 1)
    yield `natural,low,${(0.5 + (i % 300) / 100).toFixed(2)},${10 + (i % 190)},0.5\n`;
}

export async function sumTableBench(count = 1_000_000): Promise<readonly BenchRow[]> {
  const small = await runChild(WORDS, rows(count / 2));
  const large = await runChild(WORDS, rows(count));
  if (large.lines !== count + 1) throw new Error(`${large.lines} lines came back for ${count} rows`);
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
