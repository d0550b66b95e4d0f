import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { KINDS, type Kind } from './kinds.ts';
import { LONGEST_TEXT, parseAny, parseQuantity, type Quantity } from './parse-quantity.ts';

const ALL = Object.keys(KINDS) as Kind[];

function read(text: string, kind: Kind): Quantity {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`${text}: ${JSON.stringify(parsed.issues)}`);
  return parsed.value;
}

/** SI values by hand from NIST SP 811 (2008), Appendix B.8. */
const WRITTEN: readonly (readonly [text: string, kind: Kind, si: number])[] = [
  ['3/4 in', 'diameter', 0.01905],
  ['3/4-inch', 'diameter', 0.01905],
  ['1-1/2"', 'diameter', 0.0381],
  ['1½″', 'diameter', 0.0381],
  ['1 1/2 in', 'diameter', 0.0381],
  ['20 ft 6 in', 'length', 6.2484],
  ['20\' 6"', 'length', 6.2484],
  ['20′6″', 'length', 6.2484],
  ["20' 6", 'length', 6.2484],
  ['20\'-6"', 'length', 6.2484],
  ['27 ft 9-1/2 in', 'length', 8.4709],
  ['-2 ft 6 in', 'length', -0.762],
  ['-0 ft 6 in', 'length', -0.1524],
  ['6.25 m', 'length', 6.25],
  ['20 pi 6 po', 'length', 6.2484],
  ['7 in w.c.', 'pressure', 1743.62237],
  ['11 inwc', 'pressure', 2739.97801],
  ['7" w.c.', 'pressure', 1743.62237],
  ['7 in. W.C.', 'pressure', 1743.62237],
  ['7 inches of water column', 'pressure', 1743.62237],
  ['7 inH2O', 'pressure', 1743.62237],
  ['7 po c.e.', 'pressure', 1743.62237],
  ['2 psi', 'pressure', 13789.514586],
  ['2 PSIG', 'pressure', 13789.514586],
  ['2#', 'pressure', 13789.514586],
  ['1.74 kPa', 'pressure', 1740],
  ['14 oz', 'pressure', 6032.9126315],
  ['14 oz', 'mass', 0.39689332375],
  ['14.7 psia', 'absolute-pressure', 101352.93221],
  ['29.92 inHg', 'absolute-pressure', 101320.748],
  ['250 kBtu/h', 'heat-rate', 73267.767543],
  ['250,000 BTU', 'heat-rate', 73267.767543],
  ['250 000 Btu/hr', 'heat-rate', 73267.767543],
  ['250 MBH', 'heat-rate', 73267.767543],
  ['250 MBtu/h', 'heat-rate', 73267.767543],
  ['0.25 MMBtu/h', 'heat-rate', 73267.767543],
  ['73 kW', 'heat-rate', 73000],
  ['60 gpm', 'volume-flow', 0.003785411784],
  ['60 gal/min.', 'volume-flow', 0.003785411784],
  ['60 imp gpm', 'volume-flow', 0.00454609],
  ['227 L/min', 'volume-flow', 0.00378333333],
  ['84 °F', 'temperature', 302.038888889],
  ['84F', 'temperature', 302.038888889],
  ['84 degF', 'temperature', 302.038888889],
  ['29 ºC', 'temperature', 302.15],
  ['10 °F', 'temperature-difference', 5.5555555556],
  ['10 F°', 'temperature-difference', 5.5555555556],
  ['10 F deg', 'temperature-difference', 5.5555555556],
  ['10 ft of head', 'head', 3.048],
  ['10 ft hd', 'head', 3.048],
  ['10 ft', 'head', 3.048],
  ['8.4 mm2', 'wire-size', 8.4e-6],
  ['1 Pa s', 'dynamic-viscosity', 1],
  ['1 cP', 'dynamic-viscosity', 0.001],
  ['2 kg/(m2 s)', 'mass-flux', 2],
  ['2 kg m-2 s-1', 'mass-flux', 2],
  ['4186 J/(kg K)', 'specific-heat', 4186],
  ['50 %', 'ratio', 0.5],
  ['0.5', 'ratio', 0.5],
  ['400 ppm', 'ratio', 0.0004],
  ['3 h', 'time', 10800],
  ['2 h 30 min', 'time', 9000],
  ['30 min', 'time', 1800],
  ['400 ft2', 'area', 37.161216],
  ['20,000 gal', 'volume', 75.70823568],
  ['75 m³', 'volume', 75],
  ['200 Btu/(h ft2)', 'heat-flux', 630.9181],
  ['5 BTU/hr-ft²-°F', 'transmittance', 28.391317],
  ['5 W/m²·K', 'transmittance', 5],
  ['5 W/m2K', 'transmittance', 5],
  ['1.20 per therm', 'price-per-energy', 1.2 / 105505585.262],
  ['0.14 per kWh', 'price-per-energy', 0.14 / 3.6e6],
  ['117 lb/MMBtu', 'emission-factor', (117 * 0.45359237) / 1.05505585262e9],
  ['120 VAC', 'voltage', 120],
  ['1.2 uA', 'current', 1.2e-6],
  ['5 mph', 'velocity', 2.2352],
  ['8 fps', 'velocity', 2.4384],
  ['3450 rpm', 'frequency', 57.5],
  ['5 lb 3 oz', 'mass', 2.35301042],
  ['3 ppm', 'mass-concentration', 0.003],
];

describe('what the trade writes', () => {
  it.each(WRITTEN)('%s as %s is %d', (text, kind, si) => {
    expect(Math.abs(read(text, kind).si / si - 1)).toBeLessThan(3e-7);
  });

  it.each([
    ['250,000 BTU', 'heat-rate', 'per-hour-understood', '250000 Btu/h'],
    ['250 MBtu/h', 'heat-rate', 'm-is-thousand', '250 kBtu/h'],
    ['14 oz', 'pressure', 'ounce-is-pressure', '14 oz/in2'],
    ['100 ft3/h', 'standard-gas-flow', 'base-understood', '100 ft3/h(60F,14.73psia)'],
    ['3 ppm', 'mass-concentration', 'ppm-is-mg-per-litre', '3 mg/L'],
    ['1,5 m', 'length', 'other-decimal-sign', '1.5 m'],
  ] as const)('%s as %s says %s', (text, kind, note, echo) => {
    expect(read(text, kind)).toMatchObject({ notes: [note], echo });
  });

  it('keeps half a step of the last digit typed, in SI', () => {
    expect(read('7.0 in w.c.', 'pressure').halfStep).toBeCloseTo(0.05 * 249.08891, 9);
    expect(read('3/4 in', 'diameter').halfStep).toBeCloseTo(0.0254 / 8, 12);
    expect(read('20 ft 6 in', 'length').halfStep).toBeCloseTo(0.0127, 12);
    expect(read('84 °F', 'temperature').halfStep).toBeCloseTo(0.5 / 1.8, 12);
    expect(read('250,000 BTU', 'heat-rate').halfStep).toBeCloseTo(0.5 * 0.2930711, 7);
  });

  it('finds every kind a text may mean', () => {
    const kinds = parseAny('10 °F').map((one) => one.kind);
    expect(kinds).toEqual(['temperature', 'temperature-difference']);
    expect(parseAny('14 oz').map((one) => one.kind)).toContain('mass');
    expect(parseAny('14 oz').map((one) => one.kind)).toContain('pressure');
    expect(parseAny('nonsense')).toEqual([]);
  });
});

describe('what is not understood', () => {
  it.each([
    ['', 'length', 'empty', 0],
    ['   ', 'length', 'empty', 0],
    ['abc', 'length', 'number-expected', 0],
    ['--5 ft', 'length', 'two-signs', 0],
    ['1/0 in', 'length', 'division-by-zero', 0],
    ['1e999 m', 'length', 'number-beyond-range', 0],
    ['1e308 mi', 'length', 'number-beyond-range', 0],
    ['5', 'length', 'unit-missing', 1],
    ['5 furlong', 'length', 'unit-unknown', 2],
    ['5 psi', 'length', 'unit-of-another-kind', 2],
    ['5 psia', 'pressure', 'unit-of-another-kind', 2],
    ['5 psig', 'absolute-pressure', 'unit-of-another-kind', 2],
    ['5 mw', 'heat-rate', 'letter-case-matters', 2],
    ['5 ft 14 in', 'length', 'part-too-large', 5],
    ['5.5 ft 2 in', 'length', 'part-not-whole', 0],
    ['5 ft -2 in', 'length', 'unit-unknown', 2],
    ['5 in 2 ft', 'length', 'unit-unknown', 2],
    ['6-10 ft', 'length', 'unit-unknown', 1],
    ['-500 °F', 'temperature', 'below-absolute-zero', 0],
    ['-1 psia', 'absolute-pressure', 'below-absolute-zero', 0],
    ['5 __proto__', 'length', 'unit-unknown', 2],
    ['5 constructor', 'length', 'unit-unknown', 2],
    ['5 toString', 'heat-flux', 'unit-unknown', 2],
    ['5 hasOwnProperty/valueOf', 'heat-flux', 'unit-unknown', 2],
    ['98.6°', 'temperature', 'unit-of-another-kind', 4],
  ] as const)('%j as %s: %s', (text, kind, reason, position) => {
    const parsed = parseQuantity(text, kind, { where: 'depth' });
    expect(parsed).toMatchObject({ ok: false, issues: [{ reason, position, kind, where: 'depth' }] });
  });

  it('names the units that would be right', () => {
    const parsed = parseQuantity('5 psi', 'length');
    expect(parsed.ok ? undefined : parsed.issues[0]).toMatchObject({
      found: 'psi',
      expected: expect.arrayContaining(['ft', 'm', 'in']),
      otherKinds: expect.arrayContaining(['pressure']),
    });
    expect(parseQuantity('5 mpa', 'pressure')).toMatchObject({ issues: [{ expected: ['MPa'] }] });
  });

  it('looks at no text beyond its longest', () => {
    expect(parseQuantity('1'.repeat(LONGEST_TEXT + 1), 'length')).toMatchObject({
      issues: [{ reason: 'too-long' }],
    });
    expect(parseQuantity(`${'9'.repeat(1e6)} m`, 'length')).toMatchObject({
      issues: [{ reason: 'too-long' }],
    });
  });

  it('throws only where the code, not the text, is wrong', () => {
    expect(() => parseQuantity('5', 'length', { defaultUnit: 'psi' })).toThrow(/no unit of length/);
  });

  it('answers every text with a finite value or an issue inside the text', () => {
    const typed = fc.string({
      unit: fc.constantFrom(...'0123456789.,/-+ eE\'"½°²·×()@^%#ftinmhpsiBTUKWwcGAL'),
      maxLength: 24,
    });
    fc.assert(
      fc.property(fc.oneof(typed, fc.string({ unit: 'binary' })), fc.constantFrom(...ALL), (text, kind) => {
        const parsed = parseQuantity(text, kind);
        if (parsed.ok) {
          expect(Number.isFinite(parsed.value.si)).toBe(true);
          expect(parsed.value.halfStep).toBeGreaterThanOrEqual(0);
        } else {
          const [issue] = parsed.issues;
          expect(issue?.position).toBeGreaterThanOrEqual(0);
          expect(issue?.position).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 4000, seed: 811 },
    );
  });

  // A flow or an area typed where a length is asked for.
  it.each(['900 ft3/h', '900 ft3', '900 ft2', '900 ft 3/h', "20' 6 gpm"])('is no length: %s', (text) => {
    expect(parseQuantity(text, 'length').ok).toBe(false);
  });

  it.each([
    ["20'6", 20.5],
    ['20 ft 6', 20.5],
    ['20ft6', 20.5],
    ['900 ft 3/8', 900 + 3 / 96],
    ['900 ft 3', 900.25],
  ])('leaves out the inches: %s', (text, feet) => {
    const parsed = parseQuantity(text, 'length');
    expect(parsed.ok && parsed.value.si / 0.3048).toBeCloseTo(feet, 9);
  });
});
