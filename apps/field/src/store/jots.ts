/**
 * What is written and not yet kept, jotted down at once. The database answers later, and a tab that dies meanwhile takes
 * a half-done transaction along; what stands here is taken in by whoever opens the app next. It is no place to keep
 * work: the browser may drop it, it holds little, and nothing counts as saved for standing here.
 */
import { inspectOperation, type StoredOperation, unite } from '@firstfire/job';
import type { Outbox } from '../session/outbox.ts';

/** As `localStorage` has it. */
export type JotStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

export interface Jot {
  readonly key: string;
  readonly text: string;
  readonly doc: string;
  readonly operations: readonly StoredOperation[];
}

const PREFIX = 'firstfire-jot/';
const VERSION = 1;
/** Characters. A whole job taken in from a file is not jotted down: its file is still there. */
const MOST = 500_000;

export class Jots {
  readonly #storage: JotStorage | undefined;
  /** Each tab writes its own. */
  readonly #tab: string;

  constructor(storage: JotStorage | undefined, tab: string) {
    this.#storage = storage;
    this.#tab = tab;
  }

  /** In the place of what was jotted before; nothing where nothing waits. */
  put(doc: string, waiting: readonly StoredOperation[]): void {
    const key = `${PREFIX}${doc}/${this.#tab}`;
    try {
      const text = waiting.length === 0 ? '' : JSON.stringify({ v: VERSION, doc, operations: waiting });
      if (text === '' || text.length > MOST) this.#storage?.removeItem(key);
      else this.#storage?.setItem(key, text);
    } catch {
      // Full or denied: the database is the place where work is kept, and says so itself when it is not.
    }
  }

  /** What any tab has left. What cannot be read is left where it is, and is nobody's work that could be. */
  found(): readonly Jot[] {
    try {
      const keys = Array.from({ length: this.#storage?.length ?? 0 }, (_, i) => this.#storage?.key(i) ?? '');
      return keys
        .filter((key) => key.startsWith(PREFIX))
        .flatMap((key) => jotOf(key, this.#storage?.getItem(key) ?? ''));
    } catch {
      return [];
    }
  }

  /** Once it is kept; unless its tab lives and has written more since. */
  drop({ key, text }: Jot): void {
    try {
      if (this.#storage?.getItem(key) === text) this.#storage.removeItem(key);
    } catch {
      // It is taken in once more next time, which changes nothing.
    }
  }
}

type Waits = Pick<Outbox, 'send' | 'waiting'>;

/** What a tab wrote down and did not live to store. One that lives stores the same, which changes nothing. */
export async function takeIn(jots: Jots, outboxOf: (doc: string) => Waits): Promise<void> {
  for (const jot of jots.found()) {
    const outbox = outboxOf(jot.doc);
    await outbox.send(jot.operations);
    if (outbox.waiting().length === 0) jots.drop(jot);
  }
}

/** The browser's own, where it has one: some throw when it is only looked at. */
export function localJots(tab: string): Jots {
  try {
    return new Jots(globalThis.localStorage, tab);
  } catch {
    return new Jots(undefined, tab);
  }
}

/** Judged like anything that comes from outside: what is no operation is passed over. */
function jotOf(key: string, text: string): readonly Jot[] {
  try {
    const { v, doc, operations } = JSON.parse(text) as Partial<Record<string, unknown>>;
    if (v !== VERSION || typeof doc !== 'string' || !Array.isArray(operations)) return [];
    const sound = operations
      .map(inspectOperation)
      .flatMap((one) => (one.state === 'bad' ? [] : [one.stored]));
    const own = sound.filter((one) => one.doc === doc);
    return own.length === 0 ? [] : [{ key, text, doc, operations: unite(own) }];
  } catch {
    return [];
  }
}
