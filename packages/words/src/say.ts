/** Finds the words of a language. One language for now; the shape is what the next two must fill. */
import type { Dictionary } from './dictionary.ts';
import { EN } from './en/index.ts';

export const LANGUAGES = ['en'] as const;

export type Language = (typeof LANGUAGES)[number];

const DICTIONARIES: Readonly<Record<Language, Dictionary>> = { en: EN };

export function wordsOf(language: Language): Dictionary {
  return DICTIONARIES[language];
}
