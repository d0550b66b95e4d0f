/** Puts back into the database what only the second copy has: after the database was damaged, emptied or deleted. */
import type { DeviceStorage } from './device-storage.ts';
import type { SecondCopy } from './second-copy.ts';

/** Gives the jobs that came back. */
export async function recover(storage: DeviceStorage, copy: SecondCopy): Promise<readonly string[]> {
  const [kept, copied] = await Promise.all([storage.documents(), copy.documents()]);
  const back: string[] = [];
  for (const doc of copied) {
    if (kept.includes(doc)) continue;
    const operations = await copy.read(doc);
    if (operations.length === 0) continue;
    await storage.take(doc, operations);
    back.push(doc);
  }
  return back;
}
