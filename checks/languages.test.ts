/** Every language says all that English says: the same keys, slots and figures, in its own words and signs. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import * as engine from '@firstfire/engine';
import { type Dictionary, ENGLISH as EN, LANGUAGES, type Language, slotsOf, wordsOf } from '@firstfire/words';
import { describe, expect, it } from 'vitest';
import { formulasIn } from './formulas.ts';
import { SAME_WORDS } from './same-words.ts';
import { ROOT } from './tree.ts';

type Texts = Readonly<Record<string, string>>;

/** Every text by `part key`, the members of a rule by `rules id.member`. */
function textsOf(dictionary: Dictionary): Texts {
  const { rules, ...parts } = dictionary;
  const plain = Object.entries(parts).flatMap(([part, texts]) =>
    Object.entries(texts).map(([key, text]) => [`${part} ${key}`, text]),
  );
  const ruled = Object.entries(rules).flatMap(([id, members]) =>
    Object.entries(members).map(([member, text]) => [`rules ${id}.${member}`, text]),
  );
  return Object.fromEntries([...plain, ...ruled]);
}

const WORDS = new Map(await Promise.all(LANGUAGES.map(async (one) => [one, await wordsOf(one)] as const)));
const ENGLISH = textsOf(EN);
const OTHERS = LANGUAGES.filter((language) => language !== 'en');

/** Sentences of a language that do not pass, as `key: text`. */
function wrong(texts: Texts, passes: (text: string, key: string) => boolean): string[] {
  return Object.entries(texts).flatMap(([key, text]) => (passes(text, key) ? [] : [`${key}: ${text}`]));
}

/** What parts thousands: in French a comma begins the decimals. */
const THOUSANDS: Readonly<Record<Language, RegExp>> = {
  en: /(\d),(?=\d{3}(?!\d))/g,
  es: /(\d)[,\u00a0\u202f](?=\d{3}(?!\d))/g,
  fr: /(\d)[\u00a0\u202f](?=\d{3}(?!\d))/g,
};

/** Figures of a text, whatever marks they are written with. */
function figuresOf(text: string, language: Language): string[] {
  const plain = text
    .replace(/\{[a-z-]+\}/g, '')
    .replace(THOUSANDS[language], '$1')
    .replace(/(\d),(?=\d)/g, '$1.');
  return [...plain.matchAll(/\d+(?:\.\d+)?/g)].map(([figure]) => figure).sort();
}

/** What a text adds in brackets for its readers: feet in metres. */
const IN_METRES = /\(\d[\d.,\s]*(?:por \d+ |× \d+ )?(?:m|cm|mm|cm²|kW|L\/min|°C)\)/g;

function sameFigures(text: string, english: string, language: Language): boolean {
  const there = figuresOf(english, 'en').join();
  return [text, text.replace(IN_METRES, '')].some((here) => figuresOf(here, language).join() === there);
}

const sorted = (text: string): string[] => [...new Set(slotsOf(text))].sort();

describe('languages', () => {
  it('are those that have a folder', () => {
    const folders = readdirSync(join(ROOT, 'packages/words/src'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && existsSync(join(entry.parentPath, entry.name, 'index.ts')))
      .map((entry) => entry.name);
    expect([...LANGUAGES].sort()).toEqual(folders.sort());
  });

  it.each(LANGUAGES)('keep the first word of a row short in %s', (language) => {
    const { lines, verdicts } = WORDS.get(language) ?? EN;
    const { 'not built': _, ...given } = verdicts;
    expect(Object.values(given).filter((word) => word.length > 8)).toEqual([]);
    expect(Object.values(lines).filter((word) => word.length > 7)).toEqual([]);
  });
});

describe('equations', () => {
  it('speak in symbols, which need no language', () => {
    const words =
      /\b(?:above|at|below|bridge|cubic|else|flow|from|if|least|most|no|or|over|to|under|up|where|with)\b/;
    const spoken = formulasIn(engine).filter(({ equation }) => words.test(equation));
    expect(spoken.map(({ id, equation }) => `${id}: ${equation}`)).toEqual([]);
  });
});

describe.each(OTHERS)('%s', (language) => {
  const texts = textsOf(WORDS.get(language) ?? EN);

  it('has words for all that English has words for, and for nothing else', () => {
    expect(Object.keys(ENGLISH).filter((key) => texts[key] === undefined)).toEqual([]);
    expect(Object.keys(texts).filter((key) => ENGLISH[key] === undefined)).toEqual([]);
  });

  it('has no empty sentence, and begins and ends each as English does', () => {
    const edges = (text: string): string[] => [/^\s*/, /\s*$/].map((edge) => edge.exec(text)?.[0] ?? '');
    expect(wrong(texts, (text) => text.trim() !== '')).toEqual([]);
    const passes = (text: string, key: string): boolean =>
      edges(text).every((edge, i) => (edge === '') === (edges(ENGLISH[key] ?? '')[i] === ''));
    expect(wrong(texts, (text, key) => /^[\u00a0\u202f]?[:;]/.test(text) || passes(text, key))).toEqual([]);
  });

  it('has the slots of English in each sentence', () => {
    const passes = (text: string, key: string): boolean =>
      sorted(text).join() === sorted(ENGLISH[key] ?? '').join();
    expect(wrong(texts, passes)).toEqual([]);
  });

  it('has the figures of English in each sentence', () => {
    const passes = (text: string, key: string): boolean => sameFigures(text, ENGLISH[key] ?? '', language);
    expect(wrong(texts, passes)).toEqual([]);
  });

  it('leaves nothing in English but what is the same word', () => {
    const same = SAME_WORDS[language] ?? [];
    const left = wrong(
      texts,
      (text, key) => text !== ENGLISH[key] || !/[a-z]{2}/i.test(text.replace(/\{[a-z-]+\}/g, '')),
    );
    expect(left.filter((one) => !same.includes(one.slice(one.indexOf(': ') + 2)))).toEqual([]);
    const unused = same.filter((word) => !left.some((one) => one.endsWith(`: ${word}`)));
    expect(unused).toEqual([]);
  });

  it('has the quotes, apostrophes and spaces of its print', () => {
    expect(wrong(texts, (text) => !/["']|\s\s|\.\.\./.test(text.replace(/'[^']*=[^']*'/g, '')))).toEqual([]);
    expect(wrong(texts, PRINT[language] ?? (() => true))).toEqual([]);
    // Else a line may break within a number.
    expect(wrong(texts, (text) => !/\d \d{3}(?!\d)/.test(text))).toEqual([]);
  });
});

/** Counts of an opening sign and its partner are the same. */
function paired(text: string, open: string, close: string): boolean {
  return text.split(open).length === text.split(close).length;
}

const PRINT: Readonly<Record<string, (text: string) => boolean>> = {
  // Ortografía de la lengua española (2010): « » and “ ” without spaces inside; ¿ ? and ¡ ! in pairs.
  es: (text) =>
    paired(text, '“', '”') &&
    paired(text, '«', '»') &&
    paired(text, '¿', '?') &&
    paired(text, '¡', '!') &&
    !/«\s|\s»|\s[;:?!]/.test(text),
  // Lexique des règles typographiques (Imprimerie nationale): « » with a space that does not break, and one before ; : ? ! %.
  fr: (text) =>
    !/[“”]/.test(text) &&
    paired(text, '«', '»') &&
    !/«(?![\u00a0\u202f])|(?<![\u00a0\u202f])»/.test(text) &&
    !/(?<![\u00a0\u202f])[;?!%]/.test(text) &&
    !/(?<![\u00a0\u202f]):(?=\s|$)/.test(text),
};
