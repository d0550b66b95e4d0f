/** Margins, and figures with the unit, digits and marks of one reader. */
import { describe, expect, it } from 'vitest';
import { figureText, type Reader, unitFor, workedText } from './figures.ts';
import { marginText } from './finding-text.ts';
import { speechOf } from './speech.ts';

async function reader(locale: string, system: Reader['system']): Promise<Reader> {
  const speech = await speechOf(locale);
  if (speech === undefined) throw new Error(locale);
  return { speech, system };
}

describe('a finding', () => {
  it('rounds its margin to the worse side, with the per cent sign of the place', async () => {
    const en = (await reader('en-US', 'us')).speech;
    const fr = (await reader('fr-CA', 'us')).speech;
    expect(marginText({ margin: 0.099, verdict: 'tight' }, en)).toBe('+9%');
    expect(marginText({ margin: -0.001, verdict: 'fails' }, en)).toBe('−1%');
    expect(marginText({ margin: -0.22, verdict: 'fails' }, fr)).toMatch(/^−22\s%$/);
    expect(marginText({ margin: 1, verdict: 'does not apply' }, en)).toBe('');
  });
});

describe('a figure', () => {
  it.each([
    // Common practice, no source: how the trade reads each.
    [1700, 'pressure', 'gas', 'in w.c.'],
    [13_800, 'pressure', 'gas', 'psi'],
    [1700, 'pressure', 'water', 'psi'],
    [0.3, 'length', 'water', 'in'],
    [3, 'length', 'water', 'ft'],
    [600, 'time', 'water', 'min'],
    [100e-6, 'volume-fraction', 'gas', 'ppm'],
    [0.95, 'volume-fraction', 'gas', '%'],
  ] as const)('%f of %s where %s flows is read in %s', (value, kind, medium, unit) => {
    expect(unitFor(value, kind, { system: 'us', medium })).toBe(unit);
  });

  it('does not repeat the usual base of a cubic foot, with a decimal comma either', async () => {
    for (const locale of ['en-US', 'es-ES', 'fr-CA']) {
      const units = { ...(await reader(locale, 'us')), medium: 'gas' } as const;
      expect(figureText(0.004, 'standard-gas-flow', units)).not.toMatch(/psia/);
    }
  });

  it('is printed with a true minus and a degree sign', async () => {
    const units = { ...(await reader('en-US', 'us')), medium: 'water' } as const;
    expect(figureText(-0.3, 'ratio', { ...units })).toMatch(/^−/);
    expect(figureText(Math.PI / 2, 'angle', units)).toBe('90.0°');
  });

  it('keeps the digits a working needs', async () => {
    const units = { ...(await reader('en-US', 'si')), medium: 'gas' } as const;
    expect(workedText(101_325, 'absolute-pressure', units)).toBe('101.325 kPa');
    expect(workedText(0.12345, 'ratio', units)).toBe('0.1235');
  });
});
