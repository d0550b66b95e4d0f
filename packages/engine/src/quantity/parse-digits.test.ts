import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber } from './format-number.ts';
import { readDigits } from './parse-digits.ts';
import { readNumber } from './parse-number.ts';

describe('decimals with point or comma', () => {
  it.each([
    ['1.5', undefined, 1.5, 0.1],
    ['1,5', 'comma', 1.5, 0.1],
    ['1,5', 'either', 1.5, 0.1],
    ['250,000', undefined, 250000, 1],
    ['250.000', 'comma', 250000, 1],
    ['250.000', undefined, 250, 0.001],
    ['250,000', 'comma', 250, 0.001],
    ['1.234,5', 'either', 1234.5, 0.1],
    ['1,234.5', 'either', 1234.5, 0.1],
    ['1,234,567', 'either', 1234567, 1],
    ['0,125', 'either', 0.125, 0.001],
    ['0.824', 'either', 0.824, 0.001],
    ['1234,567', 'either', 1234.567, 0.001],
    ['.5', undefined, 0.5, 0.1],
  ] as const)('%s with %s is %d', (text, decimal, value, step) => {
    const read = readDigits(text, decimal);
    expect(read).toMatchObject({ value, step, otherSign: false });
  });

  it('takes the only possible reading and says that it is the other sign', () => {
    expect(readDigits('1,5', 'point')).toMatchObject({ value: 1.5, otherSign: true });
    expect(readDigits('1.5', 'comma')).toMatchObject({ value: 1.5, otherSign: true });
    expect(readDigits('1.234,5', 'point')).toMatchObject({ value: 1234.5, otherSign: true });
  });

  it('names both readings where both are possible', () => {
    expect(readDigits('1,234', 'either')).toEqual({
      reason: 'decimal-sign-unclear',
      expected: ['1234', '1.234'],
    });
    expect(readDigits('1.049', 'either')).toEqual({
      reason: 'decimal-sign-unclear',
      expected: ['1.049', '1049'],
    });
  });

  it.each(['1,23,456', '1..5', '1.5.2', '1,,5', '12,34.5', '0,125,000'])('%s is no number', (text) => {
    expect(readDigits(text)).toMatchObject({ reason: 'digits-misplaced' });
  });

  it('reads back what is printed, in either sign, grouped or not', () => {
    const size = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    const decimal = fc.constantFrom('point' as const, 'comma' as const);
    fc.assert(
      fc.property(
        size,
        decimal,
        fc.boolean(),
        fc.integer({ min: 0, max: 6 }),
        (value, sign, group, decimals) => {
          const text = formatNumber(value, { decimal: sign, group, decimals });
          const read = readNumber(text, 0, sign);
          expect(read).toMatchObject({ end: text.length, otherSign: false });
          expect('value' in read ? read.value : Number.NaN).toBe(Number(value.toFixed(decimals)) + 0);
        },
      ),
      { numRuns: 2000, seed: 20 },
    );
  });
});

describe('fractions and powers', () => {
  it.each([
    ['3/4', 0.75, 1 / 4],
    ['1-1/2', 1.5, 1 / 2],
    ['1 1/2', 1.5, 1 / 2],
    ['1½', 1.5, 1 / 2],
    ['1 ½', 1.5, 1 / 2],
    ['¾', 0.75, 1 / 4],
    ['⅛', 0.125, 1 / 8],
    ['3⁄8', 0.375, 1 / 8],
    ['5/4', 1.25, 1 / 4],
    ['21/64', 21 / 64, 1 / 64],
    ['1\u00a01/2', 1.5, 1 / 2],
    ['-1-1/4', -1.25, 1 / 4],
    ['−3', -3, 1],
    ['+3', 3, 1],
    ['250 000', 250000, 1],
    ['250\u202f000,5', 250000.5, 0.1],
    ['1.5e3', 1500, 100],
    ['1.2×10⁻³', 0.0012, 0.0001],
    ['1.2 x 10^5', 120000, 10000],
  ])('%s', (text, value, step) => {
    const read = readNumber(text, 0, undefined);
    expect(read).toMatchObject({ end: text.length });
    if ('fault' in read) throw new Error(read.fault.reason);
    expect(read.value).toBeCloseTo(value, 12);
    expect(read.step).toBeCloseTo(step, 12);
  });

  it.each([
    ['1/0', 'division-by-zero', 0],
    ['1 1/0', 'division-by-zero', 0],
    ['--5', 'two-signs', 0],
    ['+-5', 'two-signs', 0],
    ['abc', 'number-expected', 0],
    ['  abc', 'number-expected', 2],
    ['1e999', 'number-beyond-range', 0],
    ['1e-999', 'number-beyond-range', 0],
    ['1 3/2', 'digits-misplaced', 0],
    ['11/2', 'fraction-unclear', 0],
    ['NaN', 'number-expected', 0],
    ['Infinity', 'number-expected', 0],
  ] as const)('%s: %s', (text, reason, position) => {
    expect(readNumber(text, 0, undefined)).toMatchObject({ fault: { reason, position } });
  });

  it('offers both readings of a fraction that may have lost its space', () => {
    expect(readNumber('11/2', 0, undefined)).toMatchObject({ fault: { expected: ['1 1/2', '11/2 = 5.5'] } });
    expect(readNumber('31/2', 0, undefined)).toMatchObject({ fault: { expected: ['3 1/2', '31/2 = 15.5'] } });
  });
});

describe('digits as a place writes them', () => {
  // Unicode CLDR: marks of Spain, France and the United States.
  const US = { decimal: '.', group: ',', groupFrom: 4, percent: '' };
  const SPAIN = { decimal: ',', group: '.', groupFrom: 5, percent: '\u00a0' };
  const FRANCE = { decimal: ',', group: '\u202f', groupFrom: 4, percent: '\u202f' };

  it.each([
    ['3,450', US, 3450],
    ['1.049', US, 1.049],
    ['0,450', US, 0.45],
    ['3,45', US, 3.45],
    ['1.234,5', US, 1234.5],
    ['12.345', SPAIN, 12345],
    ['3,450', SPAIN, 3.45],
    ['3.45', SPAIN, 3.45],
    ['1.234.567', SPAIN, 1234567],
    ['3\u202f450', FRANCE, 3450],
    ['3,450', FRANCE, 3.45],
  ])('%s is read', (text, marks, value) => {
    expect(readDigits(text, marks)).toMatchObject({ value });
  });

  it.each([
    ['3.450', SPAIN, ['3.450', '3450']],
    ['3.450', FRANCE, ['3.450', '3450']],
    ['12.345', FRANCE, ['12.345', '12345']],
  ])('%s is refused, and both readings are named', (text, marks, expected) => {
    expect(readDigits(text, marks)).toEqual({ reason: 'decimal-sign-unclear', expected });
  });

  it('reads back what is printed with them', () => {
    const size = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(
        size,
        fc.constantFrom(US, SPAIN, FRANCE),
        fc.integer({ min: 0, max: 6 }),
        (value, marks, decimals) => {
          const text = formatNumber(value, { marks, group: true, decimals });
          const read = readNumber(text, 0, marks);
          expect('value' in read ? read.value : text).toBe(Number(value.toFixed(decimals)) + 0);
        },
      ),
      { numRuns: 2000, seed: 23 },
    );
  });
});
