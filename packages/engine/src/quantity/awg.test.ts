import { describe, expect, it } from 'vitest';
import { gaugeArea, gaugeOf, gaugeText } from './awg.ts';
import { si } from './convert.ts';
import { formatQuantity } from './format.ts';
import { parseQuantity } from './parse-quantity.ts';

/** NEC chapter 9 Table 8, circular mils, printed to the nearest ten, from 1/0 up to the nearest hundred. */
const CIRCULAR_MILS = [
  [14, 4110],
  [12, 6530],
  [10, 10380],
  [8, 16510],
  [6, 26240],
  [4, 41740],
  [3, 52620],
  [2, 66360],
  [1, 83690],
  [0, 105600],
  [-1, 133100],
] as const;

describe('wire gauge', () => {
  it.each(CIRCULAR_MILS)('No. %d has %d circular mils', (n, printed) => {
    // The table squares the diameter after rounding it to a tenth of a mil (ASTM B258, from memory).
    const mils = Math.sqrt(gaugeArea(n) / si(1, 'cmil'));
    const square = Number(mils.toFixed(1)) ** 2;
    const place = printed > 100_000 ? 100 : 10;
    expect(Math.round(square / place) * place).toBe(printed);
  });

  it('stands on its two fixed points: 4/0 is 0.460 in across, 36 is 0.005 in', () => {
    expect(gaugeArea(-3)).toBeCloseTo((Math.PI / 4) * (0.46 * 0.0254) ** 2, 12);
    expect(gaugeArea(36)).toBeCloseTo((Math.PI / 4) * (0.005 * 0.0254) ** 2, 18);
  });

  it('goes there and back', () => {
    for (let n = -3; n <= 40; n++) expect(gaugeOf(gaugeArea(n))).toBeCloseTo(n, 9);
  });

  it.each([
    ['#8 AWG', 8],
    ['8 AWG', 8],
    ['AWG 8', 8],
    ['AWG #8', 8],
    ['#8', 8],
    ['No. 8', 8],
    ['8 ga', 8],
    ['1/0 AWG', 0],
    ['0 AWG', 0],
    ['4/0', -3],
    ['#4/0', -3],
    ['0000', -3],
  ])('%s', (text, n) => {
    const read = parseQuantity(text, 'wire-size');
    expect(read).toMatchObject({ ok: true, value: { unit: 'AWG', value: n, si: gaugeArea(n), halfStep: 0 } });
    expect(read.ok && read.value.echo).toBe(`${gaugeText(n)} AWG`);
  });

  it.each(['8.5 AWG', '-3 AWG', '50 AWG', '5/0 AWG'])('%s is no gauge', (text) => {
    const read = parseQuantity(text, 'wire-size');
    expect(read.ok).toBe(false);
  });

  it('a bare number is a gauge only where gauges are asked for', () => {
    expect(parseQuantity('8', 'wire-size')).toMatchObject({
      ok: false,
      issues: [{ reason: 'unit-missing' }],
    });
    expect(parseQuantity('8', 'wire-size', { defaultUnit: 'AWG' })).toMatchObject({
      ok: true,
      value: { value: 8 },
    });
  });

  it('prints a gauge as a gauge and any other area in mm2', () => {
    expect(formatQuantity(gaugeArea(8), 'AWG')).toBe('8 AWG');
    expect(formatQuantity(gaugeArea(-3), 'AWG', { bare: true })).toBe('4/0');
    expect(formatQuantity(10e-6, 'AWG')).toBe('10 mm2');
  });
});
