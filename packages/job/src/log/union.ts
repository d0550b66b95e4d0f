/** Joining logs: by operation id, each content once, in the one canonical order. */
import { compareStored } from './compare.ts';
import type { StoredOperation } from './envelope.ts';
import { OperationSet } from './operation-set.ts';

/**
 * The operations of all the logs. Two contents of one id both stay; the fold makes a finding of them. The result is
 * the same whatever the order of the logs and of the operations in them.
 */
export function unite(...logs: readonly Iterable<StoredOperation>[]): StoredOperation[] {
  const set = new OperationSet();
  for (const log of logs) for (const operation of log) set.add(operation);
  return set.all().sort(compareStored);
}
