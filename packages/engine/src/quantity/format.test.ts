import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, si } from './convert.ts';
import { type FormatOptions, formatQuantity } from './format.ts';
import { formatAgainstLimit } from './format-against-limit.ts';
import { formatNumber } from './format-number.ts';
import { preferredUnit } from './preferred.ts';

describe('formatQuantity', () => {
  const TRADE: FormatOptions = { style: 'trade' };
  const FRENCH: FormatOptions = {
    marks: { decimal: ',', group: ' ', groupFrom: 5, percent: '_' },
    labels: { ft: 'pi', in: 'po', 'in w.c.': 'po c.e.' },
  };
  it.each<[number, string, FormatOptions, string]>([
    [si(84, 'degF'), 'degF', {}, '84 degF'],
    [si(84, 'degF'), 'degF', TRADE, '84 °F'],
    [10, 'delta degF', TRADE, '18 °F'],
    [si(0.75, 'in'), 'in', TRADE, '3/4 in'],
    [si(1.5, 'in'), 'in', TRADE, '1-1/2 in'],
    [si(2, 'in'), 'in', TRADE, '2 in'],
    [si(0.824, 'in'), 'in', TRADE, '0.824 in'],
    [si(0.824, 'in'), 'in', { ...TRADE, inchParts: 16 }, '13/16 in'],
    [si(0.75, 'in'), 'in', {}, '0.75 in'],
    [si(20.5, 'ft'), 'ft', TRADE, '20 ft 6 in'],
    [si(20, 'ft'), 'ft', TRADE, '20 ft'],
    [si(0.5, 'ft'), 'ft', TRADE, '6 in'],
    [si(-20.5, 'ft'), 'ft', TRADE, '-20 ft 6 in'],
    [si(333.5, 'in'), 'ft', TRADE, '27 ft 9-1/2 in'],
    [si(19.999, 'ft'), 'ft', TRADE, '20 ft'],
    [si(20.5, 'ft'), 'ft', { ...TRADE, kind: 'head' }, '20.5 ft'],
    [si(20.5, 'ft'), 'ft', {}, '20.5 ft'],
    [si(250, 'kBtu/h'), 'Btu/h', TRADE, '250,000 Btu/h'],
    [si(250, 'kBtu/h'), 'Btu/h', { ...TRADE, decimal: 'comma' }, '250\u00a0000 Btu/h'],
    [si(250, 'kBtu/h'), 'Btu/h', {}, '250000 Btu/h'],
    [si(7, 'in w.c.'), 'in w.c.', { digits: 3 }, '7.00 in w.c.'],
    [si(7, 'in w.c.'), 'in w.c.', { decimals: 1, decimal: 'comma' }, '7,0 in w.c.'],
    [si(7, 'in w.c.'), 'in w.c.', { bare: true }, '7'],
    [si(7.5, 'in w.c.'), 'in w.c.', { ...TRADE, ...FRENCH }, '7,5 po c.e.'],
    [si(20.5, 'ft'), 'ft', { ...TRADE, ...FRENCH }, '20 pi 6 po'],
    [si(0.75, 'in'), 'in', { ...TRADE, ...FRENCH }, '3/4 po'],
    [si(5, 'ft3'), 'ft3', { ...TRADE, ...FRENCH }, '5 pi³'],
    [
      si(12500, 'ft3/h(60F,14.73psia)'),
      'ft3/h(60F,14.73psia)',
      { ...TRADE, ...FRENCH },
      '12 500 pi³/h (60 °F, 14,73 psia)',
    ],
    [si(7.5, 'in w.c.'), 'in w.c.', FRENCH, '7,5 in w.c.'],
    [0.5, '%', { ...TRADE, ...FRENCH }, '50_%'],
    [0.5, '%', {}, '50 %'],
    [0.5, '%', TRADE, '50%'],
    [0.5, '1', {}, '0.5'],
    [5, 'W/(m2 K)', TRADE, '5 W/(m²·K)'],
    [si(250, 'ft3/h(60F,14.73psia)'), 'ft3/h(60F,14.73psia)', TRADE, '250 ft³/h (60 °F, 14.73 psia)'],
    [si(250, 'ft3/h(60F,14.73psia)'), 'ft3/h', { kind: 'standard-gas-flow' }, '250 ft3/h(60F,14.73psia)'],
    [si(250, 'ft3/h(60F,14.73psia)'), 'ft3/h(60F,14.73psia)', { ...TRADE, shortBase: true }, '250 std ft³/h'],
    [
      si(250, 'ft3/h(60F,14.696psia)'),
      'ft3/h(60F,14.696psia)',
      { ...TRADE, shortBase: true },
      '250 ft³/h (60 °F, 14.696 psia)',
    ],
  ])('%d in %s with %j is %s', (value, unit, options, text) => {
    expect(formatQuantity(value, unit, options)).toBe(text);
  });

  it('throws on a value that is no number and on an unknown unit', () => {
    expect(() => formatQuantity(Number.NaN, 'ft')).toThrow();
    expect(() => formatQuantity(1, 'furlong')).toThrow(/furlong/);
    expect(() => formatQuantity(1, '__proto__')).toThrow();
    expect(() => si(1, 'constructor')).toThrow();
    expect(() => fromSi(1, 'psi', 'length')).toThrow(/length/);
  });
});

describe('formatNumber', () => {
  it.each<[number, Parameters<typeof formatNumber>[1], string]>([
    [123456, {}, '123456'],
    [123.456, {}, '123.5'],
    [0.00012346, {}, '0.0001235'],
    [0.0000123456, {}, '1.235e-5'],
    [0, {}, '0'],
    [-0.0001, { decimals: 2 }, '0.00'],
    [9.9996, { digits: 4 }, '10.00'],
    [250, { digits: 4 }, '250.0'],
    [1234567.8, { group: true }, '1,234,568'],
    [1234.5, { group: true, decimal: 'comma', decimals: 1 }, '1\u00a0234,5'],
    [1e16, { digits: 3 }, '1.00e16'],
  ])('%d with %j is %s', (value, style, text) => {
    expect(formatNumber(value, style)).toBe(text);
  });
});

describe('formatAgainstLimit', () => {
  it('never shows two different values as the same', () => {
    expect(formatAgainstLimit([si(5.996, 'in w.c.'), si(6, 'in w.c.')], 'in w.c.', { digits: 2 })).toEqual({
      value: '5.996 in w.c.',
      limit: '6.000 in w.c.',
    });
    expect(formatAgainstLimit([si(4, 'in w.c.'), si(6, 'in w.c.')], 'in w.c.', { digits: 2 })).toEqual({
      value: '4.0 in w.c.',
      limit: '6.0 in w.c.',
    });
    const equal = formatAgainstLimit([1000, 1000], 'Pa');
    expect(equal.value).toBe(equal.limit);
  });

  it('parts any two values that differ by more than the machine rounds', () => {
    const value = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    const apart = fc.double({ min: 1e-12, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(value, apart, (limit, part) => {
        const texts = formatAgainstLimit([limit * (1 + part), limit], 'in w.c.');
        expect(texts.value).not.toBe(texts.limit);
        expect(Number.parseFloat(texts.value)).toBeGreaterThan(Number.parseFloat(texts.limit));
      }),
      { numRuns: 1000, seed: 6 },
    );
  });
});

describe('preferredUnit', () => {
  it('takes the system as an argument', () => {
    expect(preferredUnit('temperature', 'us')).toBe('degF');
    expect(preferredUnit('temperature', 'mixed')).toBe('degC');
    expect(preferredUnit('heat-rate', 'mixed')).toBe('kBtu/h');
    expect(preferredUnit('pressure', 'us')).toBe('psi');
    expect(preferredUnit('pressure', 'us', 'gas')).toBe('in w.c.');
    expect(preferredUnit('standard-gas-flow', 'us')).toBe('ft3/h(60F,14.73psia)');
  });
});
