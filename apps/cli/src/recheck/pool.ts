/**
 * Rows of many files over all cores, in the order of the files. Only a few files a core are under way at once, so
 * memory does not grow with their number.
 */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { RowOptions } from './row.ts';
import type { Done, Task } from './worker.ts';

/** Files handed to a worker ahead of its answers. */
const AHEAD = 4;

export interface PoolOptions extends RowOptions {
  readonly row: (row: readonly string[]) => void | Promise<void>;
}

/** Checks every file that comes; gives how many there were. */
export async function recheckAll(
  files: AsyncIterable<{ path: string; name: string }>,
  { row, ...options }: PoolOptions,
): Promise<number> {
  const workers = Array.from(
    { length: availableParallelism() },
    () => new Worker(new URL('./worker.ts', import.meta.url), { workerData: options }),
  );
  try {
    return await feed(files, workers, row);
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}

async function feed(
  files: AsyncIterable<{ path: string; name: string }>,
  workers: readonly Worker[],
  write: PoolOptions['row'],
): Promise<number> {
  const order = new RowOrder(write);
  const free = new Slots(workers.length * AHEAD);
  const failed = new Promise<never>((_resolve, reject) => {
    for (const worker of workers) worker.once('error', reject);
  });
  for (const worker of workers) {
    worker.on('message', ({ index, row }: Done) => {
      order.put(index, row);
      free.give();
    });
  }
  let index = 0;
  for await (const { path, name } of files) {
    await Promise.race([free.take(), failed]);
    workers[index % workers.length]?.postMessage({ index, path, name } satisfies Task);
    index += 1;
  }
  await Promise.race([free.all(), failed]);
  await order.written();
  return index;
}

/** Holds rows back until those before them have come. */
class RowOrder {
  readonly #write: PoolOptions['row'];
  readonly #waiting = new Map<number, readonly string[]>();
  #next = 0;
  #writing: Promise<void> = Promise.resolve();

  constructor(write: PoolOptions['row']) {
    this.#write = write;
  }

  put(index: number, row: readonly string[]): void {
    this.#waiting.set(index, row);
    for (
      let ready = this.#waiting.get(this.#next);
      ready !== undefined;
      ready = this.#waiting.get(this.#next)
    ) {
      const one = ready;
      this.#waiting.delete(this.#next);
      this.#next += 1;
      this.#writing = this.#writing.then(() => this.#write(one));
    }
  }

  written(): Promise<void> {
    return this.#writing;
  }
}

/** A number of places, taken and given back. */
class Slots {
  readonly #size: number;
  #free: number;
  #wanted: (() => void)[] = [];

  constructor(size: number) {
    this.#size = size;
    this.#free = size;
  }

  async take(): Promise<void> {
    while (this.#free === 0) await this.#change();
    this.#free -= 1;
  }

  give(): void {
    this.#free += 1;
    const wanted = this.#wanted;
    this.#wanted = [];
    for (const wake of wanted) wake();
  }

  async all(): Promise<void> {
    while (this.#free < this.#size) await this.#change();
  }

  #change(): Promise<void> {
    return new Promise((resolve) => this.#wanted.push(resolve));
  }
}
