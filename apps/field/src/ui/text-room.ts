/** About how much room a text takes: pictures are laid out before anything is drawn. */

/** Width of a usual letter as a part of the height of the type, a little more than it is. */
const LETTER = 0.56;
const BOLD = 0.6;

/** Pixels. */
export function widthOf(text: string, size: number, weight: 'plain' | 'bold' = 'plain'): number {
  return text.length * size * (weight === 'bold' ? BOLD : LETTER);
}

interface Wanted {
  /** Where its left edge would best stand. */
  readonly left: number;
  readonly width: number;
}

/** Left edges moved apart so that none runs into the next, none leaves the picture; the order stays. */
export function apart(
  wanted: readonly Wanted[],
  { gap, width }: { gap: number; width: number },
): readonly number[] {
  const placed: number[] = [];
  let from = 0;
  for (const one of wanted) {
    const left = Math.max(one.left, from);
    placed.push(left);
    from = left + one.width + gap;
  }
  let to = width;
  for (let i = wanted.length - 1; i >= 0; i -= 1) {
    const left = Math.min(placed[i] ?? 0, to - (wanted[i]?.width ?? 0));
    placed[i] = Math.max(0, left);
    to = left - gap;
  }
  return placed;
}
