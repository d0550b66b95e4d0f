/** How this device speaks: language and number format, units, daylight or dark. Kept on the device. */
import type { quantity } from '@firstfire/engine';
import { LANGUAGES, type Reader, speechOf } from '@firstfire/words';
import { Signal } from '../store/signal.ts';

export interface Settings {
  readonly locale: string;
  readonly system: quantity.UnitSystem;
  readonly theme: 'light' | 'dark' | 'auto';
}

const KEY = 'firstfire-settings';
const USUAL: Settings = { locale: 'en-US', system: 'us', theme: 'auto' };

export const settings = new Signal<Settings>(read());
applyTheme(settings.get());
settings.subscribe(() => {
  applyTheme(settings.get());
  try {
    localStorage.setItem(KEY, JSON.stringify(settings.get()));
  } catch {
    // The choice lasts as long as the tab.
  }
});

function read(): Settings {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    return { ...USUAL, ...checked(kept) };
  } catch {
    return USUAL;
  }
}

function checked(kept: unknown): Partial<Settings> {
  if (typeof kept !== 'object' || kept === null) return {};
  const { locale, system, theme } = kept as Record<string, unknown>;
  return {
    ...(typeof locale === 'string' && isSpoken(locale) ? { locale } : {}),
    ...(system === 'us' || system === 'si' || system === 'mixed' ? { system } : {}),
    ...(theme === 'light' || theme === 'dark' || theme === 'auto' ? { theme } : {}),
  };
}

/** The words are read when they are needed: one language at a time. */
export async function readerOf({ locale, system }: Settings): Promise<Reader> {
  const speech = (await speechOf(locale)) ?? (await speechOf('en'));
  if (speech === undefined) throw new Error('no words');
  return { speech, system };
}

function isSpoken(locale: string): boolean {
  const language = locale.split('-')[0];
  return LANGUAGES.some((one) => one === language);
}

function applyTheme({ theme, locale }: Settings): void {
  const root = document.documentElement;
  root.lang = locale;
  if (theme === 'auto') delete root.dataset['theme'];
  else root.dataset['theme'] = theme;
}
