/** Bringing a file's operations into a log one already has. */

import type { StoredOperation } from '../log/envelope.ts';
import { documentOf } from '../log/fold.ts';
import { unite } from '../log/union.ts';

export type ImportResult =
  | { readonly ok: true; readonly operations: readonly StoredOperation[]; readonly added: number }
  | {
      readonly ok: false;
      readonly code: 'other-document';
      readonly found: string;
      readonly expected: string;
    };

/** The union by operation id. An empty log takes any document; otherwise both must be of one. */
export function importOperations(
  own: readonly StoredOperation[],
  foreign: readonly StoredOperation[],
): ImportResult {
  const expected = documentOf(own);
  const found = documentOf(foreign);
  if (expected !== '' && found !== '' && found !== expected) {
    return { ok: false, code: 'other-document', found, expected };
  }
  const before = unite(own);
  const operations = unite(before, foreign);
  return { ok: true, operations, added: operations.length - before.length };
}
