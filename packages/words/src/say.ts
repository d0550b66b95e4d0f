/** Finds the words of a language. */
import type { Dictionary } from './dictionary.ts';
import { EN } from './en/index.ts';
import { ES } from './es/index.ts';

export const LANGUAGES = ['en', 'es'] as const;

export type Language = (typeof LANGUAGES)[number];

const DICTIONARIES: Readonly<Record<Language, Dictionary>> = { en: EN, es: ES };

export function wordsOf(language: Language): Dictionary {
  return DICTIONARIES[language];
}
