import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../trace/index.ts';
import { draught, infiltrationRoomVolume, OPENING_RATES, openingArea, standardRoomVolume } from './index.ts';

describe('combustion air', () => {
  it('asks more of a room the tighter it is, and less of a burner with a fan', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        fc.double({ min: 1e3, max: 3e5, noNaN: true }),
        (airChanges, heatInput) => {
          const of = (ach: number, coefficient: number) =>
            expectOk(evaluate(infiltrationRoomVolume, { heatInput, airChanges: ach, coefficient }));
          expect(of(airChanges, 21)).toBeGreaterThan(of(airChanges + 0.1, 21));
          expect(of(airChanges, 15)).toBeLessThan(of(airChanges, 21));
        },
      ),
    );
  });

  // NFPA 54-2012 9.3.2.2(3): no more than 0.60 air changes may be counted.
  it('counts no more than 0.60 air changes', () => {
    expect(
      evaluate(infiltrationRoomVolume, { heatInput: 1e4, airChanges: 0.7, coefficient: 21 }),
    ).toMatchObject({
      ok: false,
      issues: [{ where: 'airChanges', max: 0.6 }],
    });
  });

  it('asks twice the area by horizontal ducts of what it asks straight', () => {
    const of = (rate: number) => expectOk(evaluate(openingArea, { heatInput: 1e5, rate, leastArea: 0 }));
    expect(of(OPENING_RATES['two-horizontal'])).toBeCloseTo(2 * of(OPENING_RATES['two-direct']), 12);
  });

  it('refuses an input below zero', () => {
    expect(evaluate(standardRoomVolume, { heatInput: -1 })).toMatchObject({ ok: false });
  });
});

describe('draught', () => {
  it('is nothing between equal temperatures and turns round when the gas is the colder', () => {
    const of = (gasTemperature: number) =>
      expectOk(
        evaluate(draught, { height: 10, gasTemperature, airTemperature: 283.15, atmosphere: 101_325 }),
      );
    expect(of(283.15)).toBe(0);
    expect(of(273.15)).toBeLessThan(0);
    expect(of(473.15)).toBeGreaterThan(of(373.15));
  });
});
