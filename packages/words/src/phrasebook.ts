/**
 * A citation in the reader's language. It is put together from what stays as its publisher prints it (titles, names,
 * equations, numbers of sections) and from ordinary words, which stand in `sources` of the dictionary as phrases.
 */
import { AS_PRINTED } from './as-printed.ts';

export type Phrases = Readonly<Record<string, string>>;

/** Numbers, years and letters of sections and tables; abbreviations of codes. */
const PLAIN = /^\S*\d\S*$|^\(?[A-Z][A-Z/-]*\)?$/;
const WITH_SIGN = /^(.*?)([,;:]?)$/;

interface Part {
  readonly text: string;
  /** Comma, semicolon or colon behind it. */
  readonly sign: string;
  /** What it was found as; undefined when nobody has words for it. */
  readonly as: 'phrase' | 'printed' | 'plain' | undefined;
}

/** Splits a citation into the longest parts that are known, from left to right. */
export function partsOf(text: string, phrases: Phrases): readonly Part[] {
  const words = text.split(' ');
  const parts: Part[] = [];
  for (let at = 0; at < words.length; ) {
    const { part, taken } = longestPart(words.slice(at), phrases);
    parts.push(part);
    at += taken;
  }
  return parts;
}

function longestPart(words: readonly string[], phrases: Phrases): { part: Part; taken: number } {
  for (let taken = words.length; taken > 0; taken--) {
    const [, text = '', sign = ''] = WITH_SIGN.exec(words.slice(0, taken).join(' ')) ?? [];
    const as = kindOf(text, phrases);
    if (as !== undefined || taken === 1) return { part: { text, sign, as }, taken };
  }
  return { part: { text: '', sign: '', as: 'plain' }, taken: 1 };
}

function kindOf(text: string, phrases: Phrases): Part['as'] {
  if (Object.hasOwn(phrases, text)) return 'phrase';
  if (AS_PRINTED.has(text)) return 'printed';
  return PLAIN.test(text) ? 'plain' : undefined;
}

/** A part of a citation in the language whose phrases these are. */
export function citedText(text: string, phrases: Phrases): string {
  const parts = partsOf(text, phrases);
  // What somebody typed, such as a local amendment, stays as it is: never half of it in another language.
  if (parts.some((part) => part.as === undefined)) return text;
  return parts.map(({ text: part, sign }) => `${phrases[part] ?? part}${phrases[sign] ?? sign}`).join(' ');
}
