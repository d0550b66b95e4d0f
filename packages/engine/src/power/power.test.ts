import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../trace/index.ts';
import { ampacity, conductorResistance, voltageDrop } from './index.ts';

const celsius = (t: number): number => t + 273.15;

describe('voltage drop', () => {
  // electrician2.com, low-voltage control: 16 AWG, 4.99 ohm/kft, 100 ft, 4 A, 24 V → 4.0 V, 16.7 %.
  it('meets the printed low-voltage example', () => {
    const drop = expectOk(evaluate(voltageDrop, { current: 4, resistance: 0.499, phases: 1 }));
    expect(drop).toBeCloseTo(4, 1);
    expect((drop / 24) * 100).toBeCloseTo(16.7, 0);
  });

  it('is larger in one phase than in three by 2/√3', () => {
    const x = { current: 20, resistance: 0.5 };
    const [one, three] = [1, 3].map((phases) => expectOk(evaluate(voltageDrop, { ...x, phases })));
    expect(one! / three!).toBeCloseTo(2 / Math.sqrt(3), 12);
  });

  it('refuses a negative current', () => {
    expect(evaluate(voltageDrop, { current: -1, resistance: 1, phases: 1 })).toMatchObject({ ok: false });
  });
});

describe('a conductor', () => {
  it('has its table resistance at 75 °C and less when it is cooler', () => {
    const at = (t: number) =>
      expectOk(evaluate(conductorResistance, { tableResistance: 1.93, temperature: celsius(t) }));
    expect(at(75)).toBeCloseTo(1.93, 12);
    expect(at(25)).toBeCloseTo(1.93 * (1 - 50 * 0.00323), 12);
  });

  it('never carries more in hotter air or with more neighbours', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -19, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.integer({ min: 1, max: 19 }),
        (t, more, conductors) => {
          const of = (ambient: number, n: number) =>
            expectOk(
              evaluate(ampacity, {
                tableCurrent: 35,
                insulation: celsius(75),
                ambient: celsius(ambient),
                conductors: n,
              }),
            );
          expect(of(t + more, conductors)).toBeLessThanOrEqual(of(t, conductors));
          expect(of(t, conductors + 1)).toBeLessThanOrEqual(of(t, conductors));
        },
      ),
    );
  });

  it('cannot cool itself in air as hot as its insulation bears', () => {
    const hot = { tableCurrent: 35, insulation: celsius(75), ambient: celsius(75), conductors: 3 };
    expect(evaluate(ampacity, hot)).toMatchObject({ ok: false, issues: [{ code: 'no-solution' }] });
  });
});
