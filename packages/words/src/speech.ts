/** How one reader is spoken to: the words of a language, and the marks and unit names of a place. */
import type { quantity, Source } from '@firstfire/engine';
import type { Dictionary } from './dictionary.ts';
import { citedText } from './phrasebook.ts';
import { LANGUAGES, type Language, wordsOf } from './say.ts';

export interface Speech {
  readonly language: Language;
  /** BCP 47, such as `fr-CA`. */
  readonly locale: string;
  readonly words: Dictionary;
  /** Goes into every `formatQuantity`. */
  readonly figures: Pick<quantity.FormatOptions, 'marks' | 'labels'>;
}

/** Where a language is spoken when nobody says where: this trade's country for it. */
const USUAL: Readonly<Record<Language, string>> = { en: 'en-US', es: 'es-US', fr: 'fr-CA' };

/** Of a language or a locale (`es`, `fr-CA`, `es_MX.UTF-8`); undefined where there are no words for it. */
export async function speechOf(wanted: string): Promise<Speech | undefined> {
  const tag = localeTag(wanted);
  const language = LANGUAGES.find((one) => one === tag?.split('-')[0]);
  if (tag === undefined || language === undefined) return undefined;
  const locale = tag === language ? USUAL[language] : tag;
  const words = await wordsOf(language);
  const labels = language === 'en' ? {} : { labels: words.units };
  return { language, locale, words, figures: { marks: marksOf(locale), ...labels } };
}

function localeTag(wanted: string): string | undefined {
  const [name = ''] = wanted.split(/[.@]/);
  try {
    const { baseName } = new Intl.Locale(name.replaceAll('_', '-'));
    return baseName;
  } catch {
    return undefined;
  }
}

/** Marks of a place as `Intl` has them, with the digits 0 to 9 everywhere: tapes and gauges have no others. */
function marksOf(locale: string): quantity.NumberMarks {
  const plain = { numberingSystem: 'latn' } as const;
  const parts = new Intl.NumberFormat(locale, plain).formatToParts(1234567.8);
  const short = new Intl.NumberFormat(locale, plain).formatToParts(1234);
  const share = new Intl.NumberFormat(locale, { ...plain, style: 'percent' }).formatToParts(0.5);
  const part = (
    of: readonly Intl.NumberFormatPart[],
    type: Intl.NumberFormatPart['type'],
  ): string | undefined => of.find((one) => one.type === type)?.value;
  return {
    decimal: part(parts, 'decimal') ?? '.',
    group: part(parts, 'group') ?? '',
    groupFrom: part(short, 'group') === undefined ? 5 : 4,
    percent: part(share, 'literal') ?? '',
  };
}

/** Document and place of a source; how it is known as well where that is asked for. */
export function sourceText({ document, at, known }: Source, { words }: Speech, withKnown = false): string {
  return [document, at, withKnown ? known : undefined]
    .filter((part) => part !== undefined && part !== '')
    .map((part) => citedText(part ?? '', words.sources))
    .join(', ');
}
