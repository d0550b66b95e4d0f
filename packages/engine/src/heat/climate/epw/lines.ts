/**
 * Lines of a text, one at a time and numbered from 1, so that a hostile file costs no more than an honest one: a text,
 * a line or a count of lines beyond what a year needs is refused before it is taken apart.
 */

/** Characters of the largest text that is looked at: an honest year has 1.7 million. */
export const LONGEST_TEXT = 16_000_000;
export const LONGEST_LINE = 20_000;

export interface Lines {
  /** The next line without its end; undefined after the last. */
  readonly next: () => string | undefined;
  /** Number of the line last given. */
  readonly at: () => number;
}

/** The lines of a text, to be taken one by one. */
export function linesOf(text: string): Lines {
  let position = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  let number = 0;
  return {
    at: () => number,
    next: () => {
      if (position >= text.length) return undefined;
      const end = text.indexOf('\n', position);
      const stop = end < 0 ? text.length : end;
      const line = text.slice(position, stop > position && text[stop - 1] === '\r' ? stop - 1 : stop);
      position = stop + 1;
      number++;
      return line;
    },
  };
}
