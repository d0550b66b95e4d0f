import { describe, expect, it } from 'vitest';
import { STANDARD_CUBIC_FOOT } from './constants.ts';
import { si } from './convert.ts';
import { parseQuantity } from './parse-quantity.ts';

function standard(text: string): number {
  const read = parseQuantity(text, 'standard-gas-volume');
  return read.ok ? read.value.si : Number.NaN;
}

describe('standard volumes of gas', () => {
  it('1 Nm3 is 1.0549 Sm3 (15 °C) by the ideal gas law: 288.15/273.15', () => {
    expect(standard('1 Nm3')).toBeCloseTo(288.15 / 273.15, 12);
  });

  /** Gas trade rule: 1 Nm3 = 37.33 scf of 60 °F and 14.696 psia (37.326; from memory). */
  it('1 Nm3 holds 37.33 scf at 60 °F, 14.696 psia', () => {
    expect(standard('1 Nm3') / standard('1 ft3 (60F, 14.696 psia)')).toBeCloseTo(37.33, 1);
  });

  it('the foot of 14.73 psia holds 14.73/14.696 of the foot of 14.696 psia', () => {
    const ratio = standard('1 ft3 (60F, 14.73psia)') / standard('1 ft3 (60F, 14.696psia)');
    expect(ratio).toBeCloseTo(14.73 / 14.696, 12);
  });

  it('a foot without a base is the trade foot, and says so', () => {
    const read = parseQuantity('1 ft3', 'standard-gas-volume');
    expect(read).toMatchObject({
      ok: true,
      value: { notes: ['base-understood'], unit: 'ft3(60F,14.73psia)' },
    });
    expect(read.ok && read.value.si).toBeCloseTo(STANDARD_CUBIC_FOOT, 15);
  });

  it.each([
    ['1 scf', '60F,14.73psia'],
    ['1 std ft³', '60F,14.73psia'],
    ['1 cu ft', '60F,14.73psia'],
    ['1 ft3 @ 60 °F, 14.73 psia', '60F,14.73psia'],
    ['1 ft3 at 60F and 14.696 psi', '60F,14.696psia'],
    ['1 ccf', '60F,14.73psia'],
    ['1 Mcf', '60F,14.73psia'],
    ['1 m3', '15C,101.325kPa'],
    ['1 Sm3', '15C,101.325kPa'],
    ['1 Nm³', '0C,101.325kPa'],
    ['1 m³ (0 °C; 101.325 kPa)', '0C,101.325kPa'],
    ['1 ft³ (60 °F, 14,73 psia)', '60F,14.73psia'],
    ['1 m³ (15 °C, 101,325 kPa)', '15C,101.325kPa'],
  ])('%s is counted at %s', (text, base) => {
    expect(parseQuantity(text, 'standard-gas-volume')).toMatchObject({
      ok: true,
      value: { base: { id: base } },
    });
  });

  it('a base handed in holds where the text names none, and only there', () => {
    const base = { id: '60F,14.65psia', temperature: si(60, 'degF'), pressure: si(14.65, 'psi') };
    const taken = parseQuantity('1 ft3', 'standard-gas-volume', { base });
    expect(taken).toMatchObject({ ok: true, value: { unit: 'ft3(60F,14.65psia)', notes: [], base } });
    const written = parseQuantity('1 m3 (0C, 101.325kPa)', 'standard-gas-volume', { base });
    expect(written).toMatchObject({ ok: true, value: { unit: 'm3(0C,101.325kPa)' } });
  });

  it('a heating value of 1000 Btu/scf is 37.24 MJ/m3 at 15 °C', () => {
    const perTradeFoot = (1000 * 1055.05585262) / STANDARD_CUBIC_FOOT;
    const read = parseQuantity('1000 Btu/ft3', 'heating-value');
    expect(read.ok && read.value.si).toBeCloseTo(perTradeFoot, 3);
  });

  it('a flow of standard gas times its heating value is the same heat in every base', () => {
    for (const base of ['60F,14.73psia', '60F,14.696psia', '15C,101.325kPa', '0C,101.325kPa']) {
      const heat = si(250, `ft3/h(${base})`) * si(1000, `Btu/ft3(${base})`);
      expect(heat).toBeCloseTo(si(250, 'kBtu/h'), 6);
    }
  });

  it.each([
    ['5 acfh', 'standard-gas-flow', 'unit-of-another-kind'],
    ['5 scfh', 'metered-gas-flow', 'unit-of-another-kind'],
    ['5 Nm3/h', 'metered-gas-flow', 'unit-of-another-kind'],
    ['5 scfh', 'volume-flow', 'unit-of-another-kind'],
    ['5 ft3/h (60F)', 'standard-gas-flow', 'gas-base-unknown'],
    ['5 ft3/h (60F, 0 psia)', 'standard-gas-flow', 'gas-base-unknown'],
    ['5 ft3/h (-300C, 14.7 psia)', 'standard-gas-flow', 'gas-base-unknown'],
  ] as const)('%s is no %s', (text, kind, reason) => {
    expect(parseQuantity(text, kind)).toMatchObject({ ok: false, issues: [{ reason, position: 2 }] });
  });

  it('a flow in cubic feet needs its kind in code', () => {
    expect(() => si(1, 'ft3/h')).toThrow(/name the kind/);
    expect(si(1, 'ft3/h', 'metered-gas-flow')).toBeCloseTo(0.028316846592 / 3600, 15);
  });
});
