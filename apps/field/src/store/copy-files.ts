/** The files of the second copy: a handful of named texts. The browser's are reached through a worker of their own. */

export interface CopyFiles {
  names(): Promise<readonly string[]>;
  /** Empty for a file that is not there. */
  read(name: string): Promise<string>;
  /** Adds to the end of a file, on a line of its own. */
  append(name: string, text: string): Promise<void>;
  remove(name: string): Promise<void>;
}

export type Asked =
  | { readonly kind: 'names' }
  | { readonly kind: 'read' | 'remove'; readonly name: string }
  | { readonly kind: 'append'; readonly name: string; readonly text: string };

export interface Answer {
  readonly id: number;
  readonly value?: unknown;
  /** Name of the error. */
  readonly error?: string;
}

interface Waiting {
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/** Files in the origin's private file system. The worker starts with the first question. */
export class PrivateFiles implements CopyFiles {
  #worker: Worker | undefined;
  readonly #waiting = new Map<number, Waiting>();
  #last = 0;

  names(): Promise<readonly string[]> {
    return this.#ask({ kind: 'names' }) as Promise<readonly string[]>;
  }

  read(name: string): Promise<string> {
    return this.#ask({ kind: 'read', name }) as Promise<string>;
  }

  async append(name: string, text: string): Promise<void> {
    await this.#ask({ kind: 'append', name, text });
  }

  async remove(name: string): Promise<void> {
    await this.#ask({ kind: 'remove', name });
  }

  #ask(asked: Asked): Promise<unknown> {
    if (globalThis.Worker === undefined || globalThis.navigator?.storage?.getDirectory === undefined)
      return Promise.reject(new DOMException('no private files here', 'NotSupportedError'));
    this.#worker ??= this.#start();
    const id = ++this.#last;
    const answer = new Promise<unknown>((resolve, reject) => this.#waiting.set(id, { resolve, reject }));
    this.#worker.postMessage({ id, ...asked });
    return answer;
  }

  #start(): Worker {
    const worker = new Worker(new URL('./copy-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      const waiting = this.#waiting.get(data.id);
      this.#waiting.delete(data.id);
      if (data.error === undefined) waiting?.resolve(data.value);
      else waiting?.reject(new DOMException('the second copy', data.error));
    });
    worker.addEventListener('error', () => {
      for (const { reject } of this.#waiting.values())
        reject(new DOMException('the second copy', 'UnknownError'));
      this.#waiting.clear();
    });
    return worker;
  }
}
