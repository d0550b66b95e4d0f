/** The worker beside the app that writes the second copy: a file is added to in place, and flushed before it answers. */
import type { Answer, Asked } from './copy-files.ts';

const FOLDER = 'second-copy';
const LINE_BREAK = 10;

/** A file open for writing, which only a worker may have. */
interface OpenFile {
  getSize(): number;
  read(into: Uint8Array, at: { readonly at: number }): number;
  write(from: Uint8Array, at: { readonly at: number }): number;
  flush(): void;
  close(): void;
}

type Openable = FileSystemFileHandle & { createSyncAccessHandle(): Promise<OpenFile> };

const port = globalThis as unknown as {
  postMessage(answer: Answer): void;
  addEventListener(
    type: 'message',
    listener: (event: MessageEvent<Asked & { readonly id: number }>) => void,
  ): void;
};

/** One after the other: two at once would overtake each other. */
let busy: Promise<void> = Promise.resolve();

port.addEventListener('message', ({ data }) => {
  busy = busy.then(async () => {
    try {
      port.postMessage({ id: data.id, value: await answer(data) });
    } catch (error) {
      port.postMessage({ id: data.id, error: error instanceof Error ? error.name : 'UnknownError' });
    }
  });
});

async function answer(asked: Asked): Promise<unknown> {
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle(FOLDER, { create: true });
  if (asked.kind === 'names') return names(folder);
  if (asked.kind === 'read') return read(folder, asked.name);
  if (asked.kind === 'append') return append(folder, asked.name, asked.text);
  return folder.removeEntry(asked.name).catch(ignoreMissing);
}

async function names(folder: FileSystemDirectoryHandle): Promise<readonly string[]> {
  const found: string[] = [];
  for await (const name of folder.keys()) found.push(name);
  return found;
}

async function read(folder: FileSystemDirectoryHandle, name: string): Promise<string> {
  try {
    const handle = await folder.getFileHandle(name);
    return await (await handle.getFile()).text();
  } catch (error) {
    ignoreMissing(error);
    return '';
  }
}

async function append(folder: FileSystemDirectoryHandle, name: string, text: string): Promise<void> {
  const handle = (await folder.getFileHandle(name, { create: true })) as Openable;
  const file = await handle.createSyncAccessHandle();
  try {
    const size = file.getSize();
    const bytes = new TextEncoder().encode(endsInLine(file, size) ? text : `\n${text}`);
    if (file.write(bytes, { at: size }) !== bytes.length)
      throw new DOMException('cut off', 'QuotaExceededError');
    file.flush();
  } finally {
    file.close();
  }
}

/** Whether the file ends where a line does: the last one may have been cut off. */
function endsInLine(file: OpenFile, size: number): boolean {
  if (size === 0) return true;
  const last = new Uint8Array(1);
  file.read(last, { at: size - 1 });
  return last[0] === LINE_BREAK;
}

function ignoreMissing(error: unknown): void {
  if (!(error instanceof DOMException && error.name === 'NotFoundError')) throw error;
}
