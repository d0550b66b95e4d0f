import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CUBIC_FOOT, FOOT, INCH, INCH_OF_WATER, PSI } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import { testDuration, testGaugeLater, testPressure } from './pressure-test.ts';
import { outdoorPurge, type PurgeRule, pipeVolume, purgeVolume } from './purge.ts';

const fahrenheit = (f: number): number => (f + 459.67) / 1.8;

describe('pressure test', () => {
  it('asks for one and a half times the working pressure, and 3 psi at least (IFGC 406.4.1)', () => {
    const of = (psi: number): number =>
      expectOk(evaluate(testPressure, { workingPressure: psi * PSI, factor: 1.5, least: 3 * PSI })) / PSI;
    expect([of(0.25), of(2)]).toEqual([3, 3]);
    expect(of(5)).toBeCloseTo(7.5, 9);
  });

  it('asks for half an hour each 500 ft3 or part of it (from memory)', () => {
    const minutes = (feet: number): number =>
      expectOk(evaluate(testDuration, { volume: feet * CUBIC_FOOT })) / 60;
    expect([minutes(5), minutes(11), minutes(501), minutes(30_000)]).toEqual([10, 30, 60, 1440]);
  });

  it('explains the gauge of IFGC example A.7.5: 20 psi at 70 °F reads 18.0 psi at 40 °F', () => {
    const later = testGaugeLater.kernel({
      pressure: 20 * PSI,
      temperature: fahrenheit(70),
      laterTemperature: fahrenheit(40),
      atmosphere: 14.7 * PSI,
      laterAtmosphere: 14.7 * PSI,
    });
    expect(later / PSI).toBeCloseTo(18, 1);
  });

  it('comes back to where it was', () => {
    const t = fc.double({ min: 240, max: 320, noNaN: true });
    fc.assert(
      fc.property(t, t, fc.double({ min: 1e4, max: 5e5, noNaN: true }), (t1, t2, p) => {
        const x = { pressure: p, atmosphere: 101_325, laterAtmosphere: 98_000 };
        const there = testGaugeLater.kernel({ ...x, temperature: t1, laterTemperature: t2 });
        const back = testGaugeLater.kernel({
          pressure: there,
          atmosphere: 98_000,
          laterAtmosphere: 101_325,
          temperature: t2,
          laterTemperature: t1,
        });
        expect(back).toBeCloseTo(p, 5);
      }),
    );
  });

  it('refuses kelvins that are degrees', () => {
    const x = { pressure: 1e5, temperature: 20, laterTemperature: 10, atmosphere: 1e5, laterAtmosphere: 1e5 };
    expect(evaluate(testGaugeLater, x).ok).toBe(false);
  });
});

/** Two rows of IFGC Table 406.7.1.1. */
const rule: PurgeRule = {
  pressureOver: 2 * PSI,
  rows: [
    { nominalFrom: 2.5 * INCH, nominalBelow: 3 * INCH, lengthOver: 50 * FOOT },
    { nominalFrom: 8 * INCH, lengthOver: 0 },
  ],
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Table 406.7.1.1',
    known: 'read in a public copy',
  },
};

describe('purging', () => {
  const low = { workingPressure: 7 * INCH_OF_WATER };

  it('holds 2.33 ft3 in 100 ft of 2 in Schedule 40', () => {
    const volume = expectOk(evaluate(pipeVolume, { insideDiameter: 2.067 * INCH, length: 100 * FOOT }));
    expect(volume / CUBIC_FOOT).toBeCloseTo(2.33, 2);
    expect(purgeVolume.kernel({ volume, multiplier: 1.5 })).toBeCloseTo(1.5 * volume, 12);
  });

  it('goes outdoors by pressure, or by size and length', () => {
    expect(outdoorPurge(rule, { workingPressure: 2.1 * PSI, pipes: [] })).toMatchObject({
      because: 'pressure',
    });
    const wide = [30, 21].map((feet) => ({ nominal: 2.5 * INCH, length: feet * FOOT }));
    expect(outdoorPurge(rule, { ...low, pipes: wide })).toMatchObject({ because: 'size-and-length' });
    expect(outdoorPurge(rule, { ...low, pipes: [{ nominal: 8 * INCH, length: 0.1 }] }).outdoors).toBe(true);
  });

  it('stays indoors at the limit itself', () => {
    const pipes = [{ nominal: 2.5 * INCH, length: 50 * FOOT }];
    expect(outdoorPurge(rule, { workingPressure: 2 * PSI, pipes })).toEqual({ outdoors: false });
    expect(outdoorPurge(rule, { ...low, pipes: [{ nominal: 2 * INCH, length: 500 }] }).outdoors).toBe(false);
  });
});
