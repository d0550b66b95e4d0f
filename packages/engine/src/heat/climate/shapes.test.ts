import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { monthStarts } from './calendar.ts';
import { daysOfMonths, meanOf } from './days-of-months.ts';
import { groundLayerTemperature, groundTemperature, yearWave } from './ground.ts';
import { shareOfDay } from './sun-by-hour.ts';
import { diurnalShape, diurnalSwing } from './temperature-by-hour.ts';
import { clearnessOfDays, temperatureDeviations } from './variability.ts';

const DEG = Math.PI / 180;
/** 0.05 m2/day. */
const SOIL = 0.05 / 86_400;

describe('a day', () => {
  // The printed equation in the middle of the hour, by hand for a day of ωs = 107°, 8 to 9 o'clock:
  // π/24·(0.7758 + 0.3123·0.6088)·(0.6088 + 0.2924)/(0.9563 + 0.5460) = 0.0758.
  it('gives an hour the share that the printed equation gives its middle', () => {
    expect(Math.abs(shareOfDay(-60 * DEG, -45 * DEG, 107 * DEG) - 0.0758)).toBeLessThan(0.0003);
  });

  it('has shares that add up to one, none negative, equal about noon', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: Math.PI, noNaN: true }), (sunset) => {
        let sum = 0;
        for (let h = -12; h < 12; h++) {
          const share = shareOfDay(h * 15 * DEG, (h + 1) * 15 * DEG, sunset);
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeCloseTo(shareOfDay(-(h + 1) * 15 * DEG, -h * 15 * DEG, sunset), 12);
          sum += share;
        }
        expect(sum).toBeCloseTo(1, 12);
      }),
    );
    expect(shareOfDay(-0.1, 0.1, 0)).toBe(0);
  });

  // Erbs, Klein and Beckman (1983): coldest before sunrise, warmest at 3 to 4 p.m., a swing of one A.
  it('swings by one amplitude about a mean of zero', () => {
    const shape = Array.from({ length: 24 }, (_, i) => diurnalShape(i + 0.5));
    expect(shape.reduce((sum, x) => sum + x, 0)).toBeCloseTo(0, 12);
    expect(Math.abs(Math.max(...shape) - Math.min(...shape) - 1)).toBeLessThan(0.03);
    expect(shape.indexOf(Math.max(...shape))).toBe(15);
    expect(diurnalSwing(0.6)).toBeCloseTo(10.27, 2);
    expect(diurnalSwing(0.1)).toBe(0);
  });
});

describe('the days of a month', () => {
  const days = fc.integer({ min: 28, max: 31 });

  it('keep the mean clearness, each between dark and the clearest possible', () => {
    fc.assert(
      fc.property(days, fc.double({ min: 0, max: 1, noNaN: true }), (n, mean) => {
        const k = clearnessOfDays(n, mean);
        expect(k.reduce((sum, x) => sum + x, 0) / n).toBeCloseTo(mean, 12);
        if (mean >= 0.2 && mean <= 0.75) {
          expect(Math.min(...k)).toBeGreaterThan(0.03);
          expect(Math.max(...k)).toBeLessThan(0.9);
        }
      }),
    );
  });

  it('keep the mean temperature, and differ', () => {
    const deviations = temperatureDeviations({ days: 31, meanCelsius: 15.1, yearDeviation: 10.1 });
    expect(deviations.reduce((sum, x) => sum + x, 0)).toBeCloseTo(0, 10);
    expect(Math.max(...deviations)).toBeCloseTo(11.4, 0);
  });
});

describe('the days of a year', () => {
  it('keep every monthly mean, stay above the floor and have no steps', () => {
    const twelve = fc.array(fc.double({ min: 0, max: 30, noNaN: true }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(twelve, fc.boolean(), (means, leap) => {
        const year = daysOfMonths({ means, leap, floor: 0 });
        const starts = monthStarts(leap);
        for (let m = 0; m < 12; m++)
          expect(meanOf(year.subarray(starts[m], starts[m + 1]))).toBeCloseTo(means[m] ?? 0, 9);
        expect(year.every((x) => x >= 0)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });
});

describe('the ground', () => {
  const surface = { mean: 283.15, amplitude: 12, coldest: 20 };

  it('keeps the mean of the year deep down and lags a half year at π reaches', () => {
    const deep = groundTemperature({ surface, depth: 50, day: 200, diffusivity: SOIL });
    expect(deep).toBeCloseTo(283.15, 6);
    const reach = Math.sqrt((0.05 * 365.25) / Math.PI);
    const late = groundTemperature({
      surface,
      depth: Math.PI * reach,
      day: 20,
      diffusivity: SOIL,
    });
    expect(late).toBeCloseTo(283.15 + 12 * Math.exp(-Math.PI), 6);
  });

  it('has layers that are the mean of their points', () => {
    for (const day of [10, 100, 250]) {
      let sum = 0;
      for (let i = 0; i < 2000; i++)
        sum += groundTemperature({ surface, depth: (3 * (i + 0.5)) / 2000, day, diffusivity: SOIL });
      const layer = groundLayerTemperature({ surface, depth: 3, day, diffusivity: SOIL });
      expect(layer).toBeCloseTo(sum / 2000, 5);
      const skin = groundLayerTemperature({ surface, depth: 0, day, diffusivity: SOIL });
      expect(skin).toBeCloseTo(groundTemperature({ surface, depth: 0, day, diffusivity: SOIL }), 9);
    }
  });

  it('finds a wave again in its own monthly means', () => {
    const months = Array.from({ length: 12 }, (_, m) => {
      const starts = monthStarts(false);
      let sum = 0;
      for (let day = starts[m] ?? 0; day < (starts[m + 1] ?? 0); day++)
        sum += groundTemperature({ surface, depth: 0, day: day + 0.5, diffusivity: SOIL });
      return sum / ((starts[m + 1] ?? 0) - (starts[m] ?? 0));
    });
    const found = yearWave(months);
    expect(Math.abs(found.mean - 283.15)).toBeLessThan(0.1);
    expect(Math.abs(found.amplitude - 12)).toBeLessThan(0.1);
    expect(Math.abs(found.coldest - 20)).toBeLessThan(1);
  });
});
