/**
 * Structures of small matrices, kept: a network that is edited is laid out again and again with the same topology,
 * and the order of elimination depends on nothing else. A structure is never written to, so that it can be shared.
 */
import type { Pairs } from './minimum-degree.ts';
import { type SymmetricStructure, symmetricStructure } from './structure.ts';

/** Larger ones are rare, and their key would cost as much as it saves. */
const LARGEST = 200;
const MOST_ENDS = 2000;
const MOST_KEPT = 64;

const kept = new Map<string, SymmetricStructure>();

/**
 * As `symmetricStructure`, of pairs given one after another; the one found before for the same size and the same pairs
 * in the same order.
 */
export function keptStructure(size: number, ends: readonly number[]): SymmetricStructure {
  if (size > LARGEST || ends.length > MOST_ENDS) return symmetricStructure(size, pairsOf(ends));
  // Indices of small matrices all lie below the number of characters.
  const key = String.fromCharCode(size, ...ends);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = symmetricStructure(size, pairsOf(ends));
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value ?? '');
  kept.set(key, made);
  return made;
}

function pairsOf(ends: readonly number[]): Pairs {
  return Array.from({ length: ends.length / 2 }, (_, i) => [ends[2 * i]!, ends[2 * i + 1]!] as const);
}
