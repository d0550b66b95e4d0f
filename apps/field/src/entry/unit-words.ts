/** Units in the reader's language: shown on the keys and in what is typed, and read back into those the engine knows. */
import { quantity } from '@firstfire/engine';

export type UnitWords = Readonly<Record<string, string>>;

/** `27 ft 9 in` → `27 pies 9 pulg`. */
export function inReadersWords(text: string, words: UnitWords): string {
  return swapped(text, pairsOf(words));
}

/** `27 pies 9 pulg` → `27 ft 9 in`; what is English already stays. */
export function inEnglish(text: string, words: UnitWords): string {
  return swapped(
    text,
    pairsOf(words).map(([english, local]) => [local, english] as const),
  );
}

type Pair = readonly [from: string, to: string];

const known = new WeakMap<UnitWords, readonly Pair[]>();

function pairsOf(words: UnitWords): readonly Pair[] {
  const made = known.get(words) ?? Object.entries(words).filter(([english, local]) => english !== local);
  known.set(words, made);
  return made;
}

/** Longest first, so that `in w.c.` is not taken for `in`; a word only where it stands alone. */
function swapped(text: string, pairs: readonly Pair[]): string {
  const sorted = [...pairs].sort(([a], [b]) => b.length - a.length);
  const by = new Map(sorted);
  if (by.size === 0) return text;
  const names = sorted.map(([from]) => from.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')).join('|');
  return text.replace(
    new RegExp(`(?<![\\p{L}°.])(?:${names})(?![\\p{L}.])`, 'gu'),
    (found) => by.get(found) ?? found,
  );
}

/** A unit as a key or a field shows it: its label in the reader's words. */
export function unitCaption(label: string, words: UnitWords): string {
  return quantity.labelInWords(label, words);
}
