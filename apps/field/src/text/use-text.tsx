/** The words and figures of the app, for the reader who has chosen language, number format and units. */
import { createContext, use } from 'react';
import type { AppText } from './app-text.ts';

export const TextContext = createContext<AppText | undefined>(undefined);

export function useText(): AppText {
  const text = use(TextContext);
  if (text === undefined) throw new Error('a page without words');
  return text;
}
