/** What a typed text is read as: both decimal marks, two ways at once, and what would be right. */
import { ENGLISH, wordsOf } from '@firstfire/words';
import { describe, expect, it } from 'vitest';
import { readSpread, spreadOf } from '../../src/entry/spread.ts';
import { understand } from '../../src/entry/understood.ts';
import { inEnglish, inReadersWords } from '../../src/entry/unit-words.ts';

/** As Unicode CLDR has them: Spain parts thousands by a point from five digits on, France by a narrow space. */
const SPAIN = { decimal: ',', group: '.', groupFrom: 5, percent: '\u00a0' };
const FRANCE = { decimal: ',', group: '\u202f', groupFrom: 4, percent: '\u202f' };

describe('a typed text', () => {
  it('keeps what was typed where its unit cannot say it', () => {
    const found = understand('27 ft 9-1/2 in', { kind: 'length', unit: 'ft' });
    expect(found).toMatchObject({ state: 'read', reading: { unit: 'ft', typed: '27 ft 9-1/2 in' } });
    expect(understand('34', { kind: 'length', unit: 'ft' })).toMatchObject({
      reading: { value: 34, unit: 'ft' },
    });
    const plain = understand('34', { kind: 'length', unit: 'ft' });
    expect(plain.state === 'read' && 'typed' in plain.reading).toBe(false);
  });

  it('is read with the reader’s own mark, and with the other where only one reading is possible', () => {
    expect(understand('1.049', { kind: 'diameter', unit: 'in' })).toMatchObject({
      reading: { value: 1.049 },
    });
    expect(understand('1,049', { kind: 'diameter', unit: 'in', marks: SPAIN })).toMatchObject({
      reading: { value: 1.049 },
    });
    expect(understand('7,2', { kind: 'pressure', unit: 'psi' })).toMatchObject({ reading: { value: 7.2 } });
    expect(understand('7.2', { kind: 'pressure', unit: 'psi', marks: SPAIN })).toMatchObject({
      reading: { value: 7.2 },
    });
    expect(understand('1,234.5', { kind: 'length', unit: 'ft' })).toMatchObject({
      reading: { value: 1234.5 },
    });
  });

  it('is what the app writes where the reader’s format writes it so', () => {
    // An answer to the app's own picture: a pump at "3,450 rpm".
    expect(understand('3,450 rpm', { kind: 'frequency', unit: 'rpm' })).toMatchObject({
      reading: { value: 3450 },
    });
    expect(understand('12.345 ft', { kind: 'length', unit: 'ft', marks: SPAIN })).toMatchObject({
      reading: { value: 12345 },
    });
    expect(understand('3\u202f450', { kind: 'frequency', unit: 'rpm', marks: FRANCE })).toMatchObject({
      reading: { value: 3450 },
    });
    // The other sign is no part of the reader's thousands: one reading alone is possible, and it is echoed.
    expect(understand('0,450', { kind: 'ratio', unit: '1' })).toMatchObject({ reading: { value: 0.45 } });
  });

  it('that the reader’s format would write otherwise is asked about, each reading one tap', () => {
    for (const marks of [SPAIN, FRANCE]) {
      const asked = { kind: 'length', unit: 'ft', marks } as const;
      const found = understand('1.234 ft', asked);
      expect(found).toMatchObject({ state: 'odd', offers: [{ typed: '1,234 ft' }, { typed: '1234 ft' }] });
      if (found.state !== 'odd') return;
      const values = found.offers.map(({ typed }) => understand(typed, asked));
      expect(values).toMatchObject([{ reading: { value: 1.234 } }, { reading: { value: 1234 } }]);
    }
  });

  it('that may have lost a space is asked about', () => {
    const found = understand('11/2 in', { kind: 'diameter', unit: 'in' });
    expect(found).toMatchObject({ state: 'odd', offers: [{ typed: '1-1/2 in' }, { typed: '5.5 in' }] });
  });

  it('that is not understood says where', () => {
    expect(understand('27 xx', { kind: 'length', unit: 'ft' })).toMatchObject({
      state: 'odd',
      part: { from: 3, to: 5 },
    });
    expect(understand('', { kind: 'length', unit: 'ft' })).toEqual({ state: 'empty' });
    expect(understand('-', { kind: 'length', unit: 'ft' })).toEqual({ state: 'empty' });
  });

  it('may be in the reader’s own unit words', async () => {
    const { units } = await wordsOf('es');
    expect(inEnglish('27 pies 9 pulg', units)).toBe('27 ft 9 in');
    expect(inEnglish('7 pulg c.a.', units)).toBe('7 in w.c.');
    expect(inReadersWords('7 in w.c.', units)).toBe('7 pulg c.a.');
    expect(inReadersWords('27 ft 9-1/2 in', units)).toBe('27 pies 9-1/2 pulg');
    expect(inEnglish('27 ft', ENGLISH.units)).toBe('27 ft');
    for (const text of ['27 ft 9 in', '7 in w.c.', '12 ft of head']) {
      expect(inEnglish(inReadersWords(text, units), units)).toBe(text);
    }
  });
});

describe('the ± of a reading', () => {
  const tape = { kind: 'length', how: 'measured', si: 8.4709 } as const;

  it('is the larger of the instrument’s and half the last digit typed', () => {
    // 27 ft 9-1/2 in: half of half an inch is less than what a tape is good for.
    expect(spreadOf({ ...tape, halfStep: 0.00635 })).toMatchObject({ from: 'usual', si: 0.0127 });
    // 34 ft: half a foot.
    expect(spreadOf({ ...tape, halfStep: 0.1524 })).toEqual({ from: 'digit', si: 0.1524 });
    expect(spreadOf({ ...tape, how: 'nameplate', halfStep: 0.1524 })).toEqual({ from: 'usual', si: 0 });
    expect(spreadOf({ ...tape, halfStep: 0.1524, given: 0.01 })).toEqual({ from: 'given', si: 0.01 });
  });

  it('is read with or without its unit, a temperature’s as a difference', () => {
    expect(readSpread('1 in', { kind: 'length', unit: 'ft' })).toBeCloseTo(0.0254, 9);
    expect(readSpread('± 0.5', { kind: 'length', unit: 'ft' })).toBeCloseTo(0.1524, 9);
    // One degree Fahrenheit is five ninths of a kelvin.
    expect(readSpread('1', { kind: 'temperature', unit: 'degF' })).toBeCloseTo(5 / 9, 9);
    expect(readSpread('1 °C', { kind: 'temperature', unit: 'degF' })).toBeCloseTo(1, 9);
    expect(readSpread('much', { kind: 'length', unit: 'ft' })).toBeUndefined();
  });
});
