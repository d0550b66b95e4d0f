import { describe, expect, it } from 'vitest';
import { si } from '../convert.ts';
import type { Kind } from '../kinds.ts';

/**
 * NIST SP 811 (2008), Appendix B.8, as printed: 7 significant digits, or fewer where the source prints fewer.
 * Read in public copies of the table.
 */
const PRINTED: readonly (readonly [unit: string, factor: number, kind?: Kind])[] = [
  ['in', 2.54e-2],
  ['ft', 3.048e-1],
  ['yd', 9.144e-1],
  ['mi', 1.609344e3],
  ['mil', 2.54e-5],
  ['um', 1e-6],
  ['ft2', 9.290304e-2],
  ['in2', 6.4516e-4],
  ['yd2', 8.361274e-1],
  ['cmil', 5.067075e-10],
  ['ft3', 2.831685e-2],
  ['in3', 1.638706e-5],
  ['yd3', 7.645549e-1],
  ['gal', 3.785412e-3],
  ['imp gal', 4.54609e-3],
  ['qt', 9.463529e-4],
  ['L', 1e-3],
  ['min', 60],
  ['h', 3600],
  ['d', 8.64e4],
  ['a', 3.1536e7],
  ['mph', 4.4704e-1],
  ['kn', 5.144444e-1],
  ['km/h', 2.777778e-1],
  ['ft/s', 3.048e-1],
  ['ft/min', 5.08e-3],
  ['gn', 9.80665],
  ['ft3/min', 4.719474e-4, 'volume-flow'],
  ['gpm', 6.30902e-5],
  ['lb', 4.535924e-1],
  ['oz', 2.834952e-2],
  ['gr', 6.479891e-5],
  ['short ton', 9.071847e2],
  ['t', 1e3],
  ['lbf', 4.448222],
  ['kgf', 9.80665],
  ['psi', 6.894757e3],
  ['lb/ft2', 4.788026e1],
  ['atm', 1.01325e5],
  ['bar', 1e5],
  ['mbar', 1e2],
  ['in w.c.', 2.490889e2],
  ['ft w.c.', 2.989067e3],
  ['mm w.c.', 9.80665],
  ['in Hg', 3.386389e3],
  ['mm Hg', 1.333224e2],
  ['torr', 1.333224e2],
  ['Btu', 1.055056e3],
  ['kWh', 3.6e6],
  ['cal', 4.1868],
  ['ft lbf', 1.355818],
  ['Btu/h', 2.930711e-1],
  ['ton', 3.516853e3],
  ['hp', 7.456999e2],
  ['boiler hp', 9.8095e3],
  ['electric hp', 7.46e2],
  ['metric hp', 7.354988e2],
  ['Btu/(h ft2)', 3.154591],
  ['Btu/lb', 2.326e3],
  ['Btu/(lb degF)', 4.1868e3],
  ['Btu/(h ft2 degF)', 5.678263],
  ['Btu in/(h ft2 degF)', 1.442279e-1],
  ['lb/ft3', 1.601846e1],
  ['gr/gal', 1.711806e-2],
  ['P', 1e-1],
  ['lb/(ft s)', 1.488164],
  ['lb/(ft h)', 4.133789e-4],
  ['delta degF', 5.555556e-1],
];

/** Half a unit of the seventh digit, at worst 5e-7 of the value. */
const SEVENTH_DIGIT = 5e-7;

describe('unit factors against NIST SP 811', () => {
  it.each(PRINTED.map(([unit, printed, kind]) => ({ unit, printed, kind })))(
    '$unit',
    ({ unit, printed, kind }) => {
      expect(Math.abs(si(1, unit, kind) / printed - 1)).toBeLessThanOrEqual(SEVENTH_DIGIT);
    },
  );

  it('the table of heat content: Btu/ft3 of a plain foot, 3.725895E+04', () => {
    const plain = si(1, 'Btu') / si(1, 'ft3');
    expect(Math.abs(plain / 3.725895e4 - 1)).toBeLessThanOrEqual(SEVENTH_DIGIT);
  });

  it('the therm of 100 000 Btu is the one SP 811 calls EC (1.05506E+08), not the legal US one (1.054804E+08)', () => {
    expect(Math.abs(si(1, 'therm') / 1.05506e8 - 1)).toBeLessThan(5e-6);
    expect(si(1, 'therm') / 1.054804e8 - 1).toBeCloseTo(2.4e-4, 5);
  });
});

describe('temperatures', () => {
  /** Fixed points and crossings of the scales, from their definitions (SP 811 B.8: t/°C = (t/°F − 32)/1.8). */
  it.each([
    [32, 'degF', 273.15],
    [212, 'degF', 373.15],
    [-40, 'degF', 233.15],
    [-459.67, 'degF', 0],
    [60, 'degF', 288.7055556],
    [0, 'degC', 273.15],
    [-40, 'degC', 233.15],
    [491.67, 'degR', 273.15],
  ])('%d %s = %d K', (value, unit, kelvin) => {
    expect(si(value, unit)).toBeCloseTo(kelvin, 7);
  });

  it('a difference has no zero point', () => {
    expect(si(18, 'delta degF')).toBeCloseTo(10, 12);
    expect(si(18, 'degF', 'temperature-difference')).toBeCloseTo(10, 12);
    expect(si(10, 'delta degC')).toBe(10);
  });
});

describe('flow coefficients', () => {
  /** IEC 60534-1 (from memory): Kv = 0.865 Cv, three digits. */
  it('Kv = 0.865 Cv', () => {
    expect(si(1, 'Cv') / si(1, 'Kv')).toBeCloseTo(0.865, 3);
  });

  it('1 Cv passes 1 US gpm at 1 psi, and 1 Kv 1 m3/h at 1 bar, by definition', () => {
    expect(si(1, 'Cv') * Math.sqrt(si(1, 'psi'))).toBeCloseTo(si(1, 'gpm'), 15);
    expect(si(1, 'Kv') * Math.sqrt(si(1, 'bar'))).toBeCloseTo(1 / 3600, 15);
  });
});
