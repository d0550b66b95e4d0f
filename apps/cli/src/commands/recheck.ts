import { once } from 'node:events';
import { opendir } from 'node:fs/promises';
import { join } from 'node:path';
import { fill } from '@firstfire/words';
import { stringify } from 'csv-stringify';
import { fileProblem } from '../job-file.ts';
import { onlyName, optionsOf } from '../options.ts';
import { problem, STATUS } from '../problem.ts';
import { recheckAll } from '../recheck/pool.ts';
import { COLUMNS } from '../recheck/row.ts';
import type { World } from '../world.ts';
import { editionNamed } from './editions.ts';

/** `recheck DIR`: every job file below a folder, a row each, over all cores. */
export async function recheck(args: readonly string[], world: World): Promise<number> {
  const { values, positionals } = optionsOf(args, { edition: { type: 'string' } });
  const folder = onlyName(positionals, problem('cli.usage.recheck'));
  const edition = values.edition === undefined ? {} : { edition: editionNamed('edition', values.edition) };
  const table = stringify({ header: true, columns: [...COLUMNS] });
  table.pipe(process.stdout, { end: false });
  const progress = new Progress(world);
  const count = await recheckAll(jobFiles(folder, world), {
    today: world.today,
    ...edition,
    row: async (row) => {
      progress.step();
      if (!table.write(row)) await once(table, 'drain');
    },
  });
  table.end();
  await once(table, 'end');
  progress.end(count);
  return STATUS.good;
}

/** Job files below a folder, as they come; nothing is kept of them. */
async function* jobFiles(folder: string, world: World): AsyncGenerator<{ path: string; name: string }> {
  const at = world.path(folder);
  try {
    for await (const entry of await opendir(at, { recursive: true })) {
      if (!entry.isFile() || !entry.name.endsWith('.job.json')) continue;
      const path = join(entry.parentPath, entry.name);
      yield { path, name: path.slice(at.length + 1) };
    }
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    throw fileProblem(folder, code === 'ENOENT' ? 'cli.no-folder' : 'cli.file-unreadable', { code });
  }
}

/** Says on the error output how far it is, once a second at most. */
class Progress {
  readonly #world: World;
  #done = 0;
  #said = Date.now();

  constructor(world: World) {
    this.#world = world;
  }

  step(): void {
    this.#done += 1;
    if (Date.now() - this.#said < 1000) return;
    this.#said = Date.now();
    this.#say('cli.recheck-progress', this.#done);
  }

  end(count: number): void {
    this.#say('cli.recheck-end', count);
  }

  #say(phrase: string, count: number): void {
    this.#world.error(fill(this.#world.speech.words.phrases[phrase] ?? '', { count }));
  }
}
