/** The one order of operations in a log: by clock, then by id, then by content. */
import type { Operation, StoredOperation } from './envelope.ts';
import { canonicalJson, type Json } from './json.ts';
import { compareOperationIds } from './names.ts';

/** Orders concurrent heads, and nothing else: later clock last, then id; two contents of one id by their text. */
export function compareOperations(a: Operation, b: Operation): number {
  return compareStamps(a, b) || compareContent(a, b);
}

/** By clock, then id alone: two contents of one id stand alike. */
export function compareStamps(a: Operation, b: Operation): number {
  if (a.hlc !== b.hlc) return a.hlc < b.hlc ? -1 : 1;
  return compareOperationIds(a.id, b.id);
}

/** The canonical order of stored operations, newer versions included. */
export function compareStored(a: StoredOperation, b: StoredOperation): number {
  const x = clockOf(a);
  const y = clockOf(b);
  if (x !== y) return x < y ? -1 : 1;
  return compareOperationIds(a.id, b.id) || compareContent(a, b);
}

/** The text that tells two contents of one id apart. */
export function contentText(operation: StoredOperation): string {
  return canonicalJson(operation as unknown as Json);
}

function clockOf(operation: StoredOperation): string {
  return typeof operation['hlc'] === 'string' ? operation['hlc'] : '';
}

function compareContent(a: StoredOperation, b: StoredOperation): number {
  if (a === b) return 0;
  const x = contentText(a);
  const y = contentText(b);
  return x < y ? -1 : x > y ? 1 : 0;
}
