/**
 * A second copy of every log beside the database, an operation a line, so that a database that is damaged or gone is not
 * the end of the work. It is written after a save, in the background.
 *
 * A job has a file that is only ever added to, and the one before it: a new one is begun, whole, when the last is damaged
 * or has grown to twice the one before. The oldest goes only after the new one has been read back and holds all of it, so
 * that no empty or damaged state ever takes the place of a good one.
 */
import {
  contentText,
  readOperationLines,
  type StoredOperation,
  unite,
  writeOperationLines,
} from '@firstfire/job';
import type { CopyFiles } from './copy-files.ts';
import { type Ill, illOf } from './health.ts';
import { alone } from './locks.ts';
import { Signal } from './signal.ts';

export interface Copied {
  readonly operations: readonly StoredOperation[];
  readonly damaged: number;
}

interface Generation extends Copied {
  readonly number: number;
}

const NAME = /^(.+)\.(\d{1,9})\.log$/;

export class SecondCopy {
  /** Why there is none; undefined where it is kept, or has not been asked for yet. */
  readonly ill = new Signal<Ill | undefined>(undefined);
  readonly #files: CopyFiles;
  /** What the file of a job is known to hold, by content. */
  readonly #held = new Map<string, Set<string>>();

  constructor(files: CopyFiles) {
    this.#files = files;
  }

  /** The jobs it holds; none where there is no such place. */
  async documents(): Promise<readonly string[]> {
    const names = await this.#noting(() => this.#files.names(), []);
    return [...new Set(names.flatMap((name) => NAME.exec(name)?.[1] ?? []))].sort();
  }

  /** All generations of a job together. */
  async read(doc: string): Promise<Copied> {
    const reading = async (): Promise<Copied> => {
      const found = joined(await this.#generations(doc));
      this.#held.set(doc, new Set(found.operations.map(contentText)));
      return found;
    };
    return this.#noting(reading, { operations: [], damaged: 0 });
  }

  /** Adds operations to a job's file; those it is known to hold are left out. False where it cannot. */
  add(doc: string, operations: readonly StoredOperation[]): Promise<boolean> {
    const held = this.#held.get(doc) ?? new Set<string>();
    const fresh = operations.filter((one) => !held.has(contentText(one)));
    if (fresh.length === 0) return Promise.resolve(true);
    return this.#noting(
      () =>
        alone(`firstfire-copy-${doc}`, async () => {
          const last = Math.max(1, ...(await this.#numbers(doc)));
          await this.#files.append(nameOf(doc, last), writeOperationLines(fresh));
          for (const one of fresh) held.add(contentText(one));
          this.#held.set(doc, held);
          return true;
        }),
      false,
    );
  }

  /**
   * Brings the copy in step with what the database has; gives what only the copy has. A damaged last file, or one that
   * has outgrown the one before it, is followed by a new one.
   */
  bringInStep(doc: string, stored: readonly StoredOperation[]): Promise<readonly StoredOperation[]> {
    return this.#noting(() => alone(`firstfire-copy-${doc}`, () => this.#inStep(doc, stored)), []);
  }

  async remove(doc: string): Promise<void> {
    this.#held.delete(doc);
    await this.#noting(
      () =>
        alone(`firstfire-copy-${doc}`, async () => {
          for (const number of await this.#numbers(doc)) await this.#files.remove(nameOf(doc, number));
        }),
      undefined,
    );
  }

  async #inStep(doc: string, stored: readonly StoredOperation[]): Promise<readonly StoredOperation[]> {
    const generations = await this.#generations(doc);
    const { operations } = joined(generations);
    const all = unite(operations, stored);
    const last = generations.at(-1);
    if (isOutgrown(generations)) await this.#begin(doc, all, generations);
    else if (last === undefined || last.operations.length < all.length)
      await this.#files.append(
        nameOf(doc, last?.number ?? 1),
        writeOperationLines(lacking(all, last?.operations ?? [])),
      );
    this.#held.set(doc, new Set(all.map(contentText)));
    return lacking(operations, stored);
  }

  /** A new file with everything; older ones than the one before it go once it has been read back whole. */
  async #begin(doc: string, all: readonly StoredOperation[], before: readonly Generation[]): Promise<void> {
    const number = (before.at(-1)?.number ?? 0) + 1;
    await this.#files.append(nameOf(doc, number), writeOperationLines(all));
    const { operations, damaged } = readOperationLines(await this.#files.read(nameOf(doc, number)));
    if (damaged > 0 || operations.length !== all.length) throw new DOMException('not whole', 'DataError');
    for (const old of before.slice(0, -1)) await this.#files.remove(nameOf(doc, old.number));
  }

  async #generations(doc: string): Promise<readonly Generation[]> {
    const generations: Generation[] = [];
    for (const number of await this.#numbers(doc))
      generations.push({ number, ...readOperationLines(await this.#files.read(nameOf(doc, number))) });
    return generations;
  }

  async #numbers(doc: string): Promise<readonly number[]> {
    const names = await this.#files.names();
    return names
      .flatMap((name) => {
        const [, of, number] = NAME.exec(name) ?? [];
        return of === doc ? [Number(number)] : [];
      })
      .sort((a, b) => a - b);
  }

  async #noting<T>(work: () => Promise<T>, otherwise: T): Promise<T> {
    try {
      const done = await work();
      this.ill.set(undefined);
      return done;
    } catch (error) {
      this.ill.set(illOf(error));
      return otherwise;
    }
  }
}

function nameOf(doc: string, number: number): string {
  return `${doc}.${number}.log`;
}

function joined(generations: readonly Copied[]): Copied {
  return {
    operations: unite(...generations.map(({ operations }) => operations)),
    damaged: generations.reduce((sum, { damaged }) => sum + damaged, 0),
  };
}

/** Worked example: files of 40 and 80 operations, or one alone of 10: a new one is begun. */
function isOutgrown(generations: readonly Generation[]): boolean {
  const last = generations.at(-1);
  if (last === undefined || last.operations.length === 0) return false;
  if (last.damaged > 0) return true;
  return last.operations.length >= 2 * (generations.at(-2)?.operations.length ?? 0);
}

/** Those of `all` that are not among `others`. */
function lacking(
  all: readonly StoredOperation[],
  others: readonly StoredOperation[],
): readonly StoredOperation[] {
  const there = new Set(others.map(contentText));
  return all.filter((one) => !there.has(contentText(one)));
}
