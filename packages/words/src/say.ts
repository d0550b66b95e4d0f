/** Finds the words of a language. English is always there; another language is read when somebody speaks it. */
import type { Dictionary } from './dictionary.ts';
import { EN } from './en/index.ts';

export const LANGUAGES = ['en', 'es', 'fr'] as const;

export type Language = (typeof LANGUAGES)[number];

export const ENGLISH: Dictionary = EN;

const LOADERS: Readonly<Record<Language, () => Promise<Dictionary>>> = {
  en: async () => EN,
  es: async () => (await import('./es/index.ts')).ES,
  fr: async () => (await import('./fr/index.ts')).FR,
};

export function wordsOf(language: Language): Promise<Dictionary> {
  return LOADERS[language]();
}
