/** What the keys type, held against the reader of quantities: whatever a key leaves must be what a person meant. */
import { quantity } from '@firstfire/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FRACTIONS, keysOf, unitText } from '../../src/entry/keys.ts';
import {
  fractionOf,
  hasUnit,
  withDigit,
  withFraction,
  withoutLast,
  withoutUnseen,
  withSign,
  withUnit,
} from '../../src/entry/typing.ts';

/** Presses keys one after another. */
function pressed(...keys: readonly string[]): string {
  return keys.reduce((typed, key) => {
    if (FRACTIONS.includes(key)) return withFraction(typed, key);
    if (key === '⌫') return withoutLast(typed);
    if (key === 'below' || key === 'above') return withSign(typed, key === 'below');
    return /^[\d.,/]$/.test(key) ? withDigit(typed, key) : withUnit(typed, key);
  }, '');
}

function inches(typed: string): number {
  const read = quantity.parseQuantity(typed, 'length', { defaultUnit: 'ft' });
  if (!read.ok) throw new Error(`${typed}: ${read.issues[0]?.reason}`);
  return read.value.si / quantity.INCH;
}

describe('keys', () => {
  it('type feet, inches and a fraction', () => {
    const typed = pressed('2', '7', 'ft', '9', '1/2');
    expect(typed).toBe('27 ft 9-1/2');
    // 27 ft 9-1/2 in is 27 × 12 + 9.5 inches.
    expect(inches(typed)).toBeCloseTo(333.5, 9);
    expect(inches(pressed('2', '7', 'ft', '9', '1/2', 'in'))).toBeCloseTo(333.5, 9);
    expect(inches(pressed('2', '7', 'ft', '9', 'in', '1/2'))).toBeCloseTo(333.5, 9);
  });

  it('relabel with another unit, and never convert', () => {
    expect(pressed('7', 'in w.c.', 'psi')).toBe('7 psi ');
    expect(pressed('2', '7', 'ft', 'm')).toBe('27 m ');
    expect(pressed('9', '0', 'kg/m³', 'lb')).toBe('90 lb ');
    expect(pressed('1', '2', 'ft³/h', 'm³/h')).toBe('12 m³/h ');
  });

  it('put a fraction in the place of another, and take it away when pressed again', () => {
    expect(pressed('9', '1/2', '3/4')).toBe('9-3/4');
    expect(pressed('9', '1/2', '1/2')).toBe('9');
    expect(pressed('3/4')).toBe('3/4');
    expect(fractionOf(pressed('9', '1/2', 'in'))).toBe('1/2');
    expect(fractionOf('9')).toBeUndefined();
  });

  it('go up by a sixteenth at each tap, from nothing to fifteen and back to none', () => {
    let typed = '9';
    for (let parts = 1; parts < 16; parts += 1) {
      typed = withFraction(typed, '1/16');
      expect(inches(`${typed} in`)).toBeCloseTo(9 + parts / 16, 12);
    }
    expect(withFraction(typed, '1/16')).toBe('9');
  });

  it('reach every sixteenth of an inch in two taps at most', () => {
    const reached = new Set(['0']);
    for (const first of FRACTIONS) {
      for (const typed of [pressed('0', first), pressed('0', first, '1/16')])
        reached.add(String(Math.round(inches(`${typed} in`) * 1e6) / 1e6));
    }
    expect(Array.from({ length: 16 }, (_, i) => String(i / 16)).filter((one) => !reached.has(one))).toEqual(
      [],
    );
  });

  it('take away a unit, a fraction or a digit at a time', () => {
    expect(pressed('2', '7', 'ft', '⌫')).toBe('27');
    expect(pressed('2', '7', 'ft', '9', '1/2', '⌫')).toBe('27 ft 9');
    expect(pressed('2', '7', 'ft', '9', '1/2', '⌫', '⌫')).toBe('27 ft');
    expect(pressed('7', '⌫', '⌫')).toBe('');
  });

  it('put the sign in front whenever it is pressed', () => {
    expect(pressed('2', 'ft', 'below')).toBe('-2 ft ');
    expect(pressed('below', '2')).toBe('-2');
    expect(pressed('below', '2', 'above')).toBe('2');
  });

  it('know which unit keys are down', () => {
    expect(hasUnit('27 ft 9 in', 'ft')).toBe(true);
    expect(hasUnit('7 in w.c.', 'in w.c.')).toBe(true);
    expect(hasUnit('27 ft', 'in')).toBe(false);
  });

  it('never leave a text that cannot be read, after a digit and any run of unit keys and fractions', () => {
    const key = fc.constantFrom('ft', 'in', ...FRACTIONS);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99 }), fc.array(key, { maxLength: 3 }), (first, keys) => {
        const digits = [...String(first)];
        const typed = pressed(...digits, ...keys);
        // A fraction behind a unit other than inches begins the inches; behind feet and inches nothing more can come.
        const read = quantity.parseQuantity(typed, 'length', { defaultUnit: 'ft' });
        const isFeetOfFraction = /\d-?\d*\/\d+ ft .*\d/.test(typed);
        expect(read.ok || isFeetOfFraction).toBe(true);
      }),
      { seed: 4, numRuns: 400 },
    );
  });

  it('all type units that read back as themselves', () => {
    const kinds: readonly quantity.Kind[] = [
      ...(['length', 'diameter', 'pressure', 'pressure-difference', 'heat-rate', 'volume-flow'] as const),
      ...(['temperature', 'temperature-difference', 'area', 'volume', 'time', 'mass', 'velocity'] as const),
      ...([
        'standard-gas-flow',
        'heating-value',
        'price-per-energy',
        'wire-size',
        'frequency',
        'head',
      ] as const),
      ...([
        'ratio',
        'volume-fraction',
        'flow-coefficient',
        'mass-concentration',
        'angle',
        'voltage',
      ] as const),
    ];
    for (const kind of kinds) {
      for (const system of ['us', 'si', 'mixed'] as const) {
        for (const unit of keysOf(kind, quantity.preferredUnit(kind, system)).units) {
          const read = quantity.parseQuantity(withUnit('5', unitText(unit, kind)), kind);
          const known = quantity.parseQuantity(`5 ${unit}`, kind);
          expect([kind, unit, read.ok && read.value.si]).toEqual([kind, unit, known.ok && known.value.si]);
        }
      }
    }
  });
});

describe('a pasted text', () => {
  it('loses what cannot be seen, and nothing else', () => {
    // U+202B, U+202C and U+200F turn the writing direction; U+200B and U+FEFF have no width.
    expect(withoutUnseen('\u202b3,450\u202c\u200f rpm\r\n')).toBe('3,450 rpm ');
    expect(withoutUnseen('\ufeff27\u200b ft\t9-1/2 in')).toBe('27 ft 9-1/2 in');
    expect(withoutUnseen('3\u202f450 tr/min · ½ 🔥')).toBe('3\u202f450 tr/min · ½ 🔥');
  });
});
