/** What the app writes is read back as it was written, in every language, number format, quantity and unit. */
import { quantity } from '@firstfire/engine';
import { speechOf } from '@firstfire/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { echoText } from '../../src/entry/echo.ts';
import { figureText, readingText } from '../../src/entry/reading.ts';
import { understand } from '../../src/entry/understood.ts';
import { inEnglish } from '../../src/entry/unit-words.ts';
import { AppText } from '../../src/text/app-text.ts';

const LOCALES = ['en-US', 'en-CA', 'en-GB', 'es-US', 'es-MX', 'es-ES', 'es-AR', 'fr-CA', 'fr-FR'];
const TEXTS = await Promise.all(
  LOCALES.map(async (locale) => {
    const speech = await speechOf(locale);
    if (speech === undefined) throw new Error(locale);
    return new AppText({ speech, system: 'us' });
  }),
);

const PAIRS = (Object.keys(quantity.KINDS) as quantity.Kind[]).flatMap((kind) =>
  quantity.unitsOf(kind).flatMap((unit) => (unit.gauge ? [] : [{ kind, unit: unit.id }])),
);

/** Digits as people type them, from a thousandth to a few hundred thousand. */
const figure = fc
  .tuple(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 3 }))
  .map(([digits, decimals]) => digits / 10 ** decimals);

interface Written {
  readonly text: AppText;
  readonly kind: quantity.Kind;
  readonly unit: string;
}

function read(written: string, { text, kind, unit }: Written): number {
  const { labels = {}, marks } = text.reader.speech.figures;
  const found = understand(inEnglish(written, labels), { kind, unit, ...(marks && { marks }) });
  if (found.state !== 'read') throw new Error(`${written} (${kind}, ${text.reader.speech.locale})`);
  return found.si;
}

/** Writes each kind, unit and figure in each place, and reads it. */
function everywhere(check: (written: Written, value: number) => void): void {
  fc.assert(
    fc.property(
      fc.constantFrom(...LOCALES),
      fc.constantFrom(...PAIRS),
      figure,
      (locale, { kind, unit }, value) => {
        const text = TEXTS[LOCALES.indexOf(locale)];
        if (text === undefined) throw new Error(locale);
        check({ text, kind, unit }, value);
      },
    ),
    { numRuns: 4000, seed: 23 },
  );
}

describe('what the app writes is read back', () => {
  it('as a reading with its unit', () => {
    everywhere((written, value) => {
      const shown = readingText({ value, unit: written.unit, how: 'measured' }, written.text);
      const si = quantity.si(value, written.unit, written.kind);
      expect(read(shown, written) / si, shown).toBeCloseTo(1, 5);
    });
  });

  it('as a figure alone, in the unit of the field', () => {
    everywhere((written, value) => {
      const shown = figureText(value, written.text.reader.speech.figures.marks);
      const si = quantity.si(value, written.unit, written.kind);
      expect(read(shown, written) / si, shown).toBeCloseTo(1, 5);
    });
  });

  it('as a figure of a finding: written again, it is the same text', () => {
    everywhere((written, value) => {
      const { text, kind, unit } = written;
      // A figure leaves out the base of a standard volume, which a reading has.
      if (unit.includes('(')) return;
      const shown = text.quantity(quantity.si(value, unit, kind), { unit, kind });
      expect(text.quantity(read(shown, written), { unit, kind })).toBe(shown);
    });
  });

  it('as the echo of what was typed', () => {
    everywhere((written, value) => {
      const { text, kind, unit } = written;
      const si = quantity.si(value, unit, kind);
      const shown = echoText({ si, value, unit, kind }, text.reader.speech.figures);
      // A tape is echoed in thirty-seconds of an inch, anything else as far as it was typed.
      const isTape = unit === 'ft' && kind === 'length';
      const off = Math.abs(read(shown, written) - si);
      expect(off, shown).toBeLessThanOrEqual(isTape ? quantity.INCH / 64 + 1e-9 * si : 1e-5 * si);
    });
  });

  it('and its unit is whole, its zeros are gone', () => {
    const [english] = TEXTS;
    const figures = english?.reader.speech.figures ?? {};
    const echo = (si: number, value: number, unit: string, kind: quantity.Kind): string =>
      echoText({ si, value, unit, kind }, figures);
    // 1 in w.c. is 249.089 Pa at 4 °C.
    expect(echo(3450 * 249.089, 3450, 'in w.c.', 'pressure')).toBe('3,450 in w.c.');
    expect(echo(0.5 * 249.089, 0.5, 'in w.c.', 'pressure')).toBe('0.5 in w.c.');
    expect(echo(1.049 * quantity.INCH, 1.049, 'in', 'diameter')).toBe('1.049 in');
    expect(echo(1.5 * quantity.INCH, 1.5, 'in', 'diameter')).toBe('1-1/2 in');
    expect(echo(7 * 249.089, 7, 'in w.c.', 'pressure')).toBe('7 in w.c.');
  });
});
