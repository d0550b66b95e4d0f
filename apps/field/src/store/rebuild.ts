/** What the second copy gives back: jobs the database does not have, and all of them when it is given up. */
import { type StoredOperation, unite } from '@firstfire/job';
import type { JobSession } from '../session/job-session.ts';
import type { SecondCopy } from './second-copy.ts';

/** The logs of the second copy and of what is open; undefined where there is none, for then nothing may be given up. */
export async function logsToKeep(
  copy: SecondCopy,
  sessions: readonly JobSession[],
): Promise<ReadonlyMap<string, readonly StoredOperation[]> | undefined> {
  const logs = new Map<string, readonly StoredOperation[]>();
  for (const doc of await copy.documents()) logs.set(doc, (await copy.read(doc)).operations);
  if (copy.ill.get() !== undefined) return undefined;
  for (const session of sessions)
    logs.set(session.doc, unite(logs.get(session.doc) ?? [], await session.operations()));
  return logs.size === 0 ? undefined : logs;
}

/** The jobs that only the second copy has: after the database was damaged, emptied or deleted. */
export async function onlyCopied(
  copy: SecondCopy,
  kept: readonly string[],
): Promise<ReadonlyMap<string, readonly StoredOperation[]>> {
  const logs = new Map<string, readonly StoredOperation[]>();
  for (const doc of await copy.documents()) {
    const { operations } = kept.includes(doc) ? { operations: [] } : await copy.read(doc);
    if (operations.length > 0) logs.set(doc, operations);
  }
  return logs;
}
