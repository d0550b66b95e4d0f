/**
 * A second copy of every log in the origin's private file system, an operation a line, so that a database that is
 * damaged or gone is not the end of the work. It is written after the database has kept an operation, never before,
 * and never made smaller by what the database says.
 */
import { inspectOperation, type StoredOperation, unite } from '@firstfire/job';

const FOLDER = 'logs';
const ENDING = '.log';

export class SecondCopy {
  #folder: Promise<FileSystemDirectoryHandle | undefined> | undefined;
  /** Writing follows writing: two at once would overtake each other. */
  #busy: Promise<unknown> = Promise.resolve();

  /** Adds operations to a job's file; false where the browser has no such place or refuses. */
  add(doc: string, operations: readonly StoredOperation[]): Promise<boolean> {
    const done = this.#busy.then(() => this.#append(doc, operations));
    this.#busy = done.catch(() => false);
    return done.catch(() => false);
  }

  async documents(): Promise<readonly string[]> {
    const folder = await this.#open();
    const found: string[] = [];
    if (folder === undefined) return found;
    for await (const name of folder.keys())
      if (name.endsWith(ENDING)) found.push(name.slice(0, -ENDING.length));
    return found.sort();
  }

  /** The operations of a job's file; a line that is none, such as one cut off by a lost battery, is left out. */
  async read(doc: string): Promise<readonly StoredOperation[]> {
    const folder = await this.#open();
    if (folder === undefined) return [];
    try {
      const handle = await folder.getFileHandle(doc + ENDING);
      return unite(operationsIn(await (await handle.getFile()).text()));
    } catch {
      return [];
    }
  }

  async erase(doc: string): Promise<void> {
    const folder = await this.#open();
    await folder?.removeEntry(doc + ENDING).catch(() => {});
  }

  async #append(doc: string, operations: readonly StoredOperation[]): Promise<boolean> {
    const folder = await this.#open();
    if (folder === undefined || operations.length === 0) return false;
    const handle = await folder.getFileHandle(doc + ENDING, { create: true });
    const { size } = await handle.getFile();
    const writable = await handle.createWritable({ keepExistingData: true });
    // A line break first: the last line may have been cut off.
    const lines = operations.map((operation) => JSON.stringify(operation)).join('\n');
    await writable.write({ type: 'write', position: size, data: `${size === 0 ? '' : '\n'}${lines}` });
    await writable.close();
    return true;
  }

  #open(): Promise<FileSystemDirectoryHandle | undefined> {
    this.#folder ??= openFolder();
    return this.#folder;
  }
}

async function openFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    const root = await navigator.storage.getDirectory();
    return await root.getDirectoryHandle(FOLDER, { create: true });
  } catch {
    return undefined;
  }
}

/** Worked example: two operations and half a line give the two. */
export function operationsIn(text: string): readonly StoredOperation[] {
  return text.split('\n').flatMap((line) => {
    const operation = parsed(line);
    return operation === undefined ? [] : [operation];
  });
}

function parsed(line: string): StoredOperation | undefined {
  if (line.trim() === '') return undefined;
  try {
    const raw = JSON.parse(line) as StoredOperation;
    return inspectOperation(raw).state === 'bad' ? undefined : raw;
  } catch {
    return undefined;
  }
}
