/**
 * Structures of small matrices, kept: a network that is edited is laid out again and again with the same topology,
 * and the order of elimination depends on nothing else. A structure is never written to, so that it can be shared.
 */
import type { Pairs } from './minimum-degree.ts';
import { type SymmetricStructure, symmetricStructure } from './structure.ts';

/** Larger ones are rare, and their key would cost as much as it saves. */
const LARGEST = 200;
const MOST_KEPT = 64;

const kept = new Map<string, SymmetricStructure>();

/** As `symmetricStructure`; the one found before for the same size and pairs in the same order. */
export function keptStructure(size: number, pairs: Pairs): SymmetricStructure {
  if (size > LARGEST) return symmetricStructure(size, pairs);
  const key = keyOf(size, pairs);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = symmetricStructure(size, pairs);
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value ?? '');
  kept.set(key, made);
  return made;
}

/** Size and pairs as the characters of a string: indices of small matrices are all below the number of those. */
function keyOf(size: number, pairs: Pairs): string {
  let key = String.fromCharCode(size);
  for (const [a, b] of pairs) key += String.fromCharCode(a, b);
  return key;
}
