import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { partsOf } from './phrasebook.ts';
import { LANGUAGES } from './say.ts';
import { sourceText, speechOf } from './speech.ts';

const long = { style: 'trade', kind: 'heat-rate' } as const;

describe('speech', () => {
  it('takes a language, a locale, and what an environment holds', async () => {
    for (const language of LANGUAGES) expect((await speechOf(language))?.language).toBe(language);
    expect((await speechOf('en_GB.UTF-8'))?.locale).toBe('en-GB');
    expect((await speechOf('EN'))?.locale).toBe('en-US');
    for (const wrong of ['', 'C', 'POSIX', 'de', 'klingon', 'e', '--', '../en'])
      expect(await speechOf(wrong)).toBeUndefined();
  });

  // Decimal sign, grouping and per cent of each place: Unicode CLDR, as `Intl.NumberFormat` of Node has it.
  it.each(['en-US', 'en-CA', 'es-US', 'es-MX', 'es-ES', 'fr-CA', 'fr-FR'])(
    'writes numbers as in %s',
    async (locale) => {
      const speech = await speechOf(locale);
      if (speech === undefined) return;
      for (const number of [0.5, 12.5, 1234, 5840, 123_456, 1_234_567, -1234, -98_765]) {
        const text = quantity.formatNumber(number, { ...speech.figures, group: true, decimals: 1 });
        expect(text).toBe(new Intl.NumberFormat(locale, { minimumFractionDigits: 1 }).format(number));
      }
    },
  );

  it('writes English as before', async () => {
    const figures = (await speechOf('en'))?.figures;
    for (const value of [293.07, 73267.7, 1e9]) {
      expect(quantity.formatQuantity(value, 'Btu/h', { ...long, ...figures })).toBe(
        quantity.formatQuantity(value, 'Btu/h', long),
      );
    }
  });
});

describe('the text of a source', async () => {
  const speech = await speechOf('en');
  it('is in English what the source says', () => {
    if (speech === undefined) throw new Error('no English');
    const source = {
      document: 'NFPA 54',
      at: 'Table 6.2(b), read as IFGC 402.4; note 2',
      known: 'from memory',
    } as const;
    expect(sourceText(source, speech)).toBe(`${source.document}, ${source.at}`);
    expect(sourceText(source, speech, true)).toBe(`${source.document}, ${source.at}, from memory`);
  });

  it('is parted at the longest phrases known', () => {
    const parts = partsOf('Table 3, as quoted by Smith; oddly', {
      Table: 'tabla',
      'as quoted by': 'citado por',
    });
    expect(parts.map(({ text, sign, as }) => [text, sign, as])).toEqual([
      ['Table', '', 'phrase'],
      ['3', ',', 'plain'],
      ['as quoted by', '', 'phrase'],
      ['Smith', ';', 'printed'],
      ['oddly', '', undefined],
    ]);
  });
});
