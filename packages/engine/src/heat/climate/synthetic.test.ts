import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { hourlyWeather, type MonthlyNormals, monthlyMeansOf } from './index.ts';

const CELSIUS = 273.15;
const monthly = (min: number, max: number): fc.Arbitrary<number[]> =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: 12, maxLength: 12 });

const normals: MonthlyNormals = {
  place: { latitude: 0.7, longitude: -1.8, timeZone: -7 * 3600, elevation: 1600 },
  airTemperature: [0, 1, 5, 9, 14, 20, 23, 22, 18, 11, 5, 1].map((t) => t + CELSIUS),
  dewPoint: [-8, -8, -6, -3, 3, 7, 10, 9, 5, 0, -5, -8].map((t) => t + CELSIUS),
  windSpeed: [3, 3, 4, 4, 4, 4, 3, 3, 3, 3, 3, 3],
  globalRadiation: [9, 12, 16, 20, 23, 25, 25, 22, 18, 14, 10, 8].map((e) => e * 1e6),
};

describe('a year made of monthly means', () => {
  it('has those means', () => {
    fc.assert(
      fc.property(
        monthly(-25, 35),
        monthly(0.3, 1),
        monthly(0, 9),
        monthly(0, 8e6),
        fc.constantFrom('mean' as const, 'varied' as const),
        (celsius, relativeHumidity, windSpeed, globalRadiation, days) => {
          const airTemperature = celsius.map((t) => t + CELSIUS);
          const { place } = normals;
          const given: MonthlyNormals = {
            place,
            airTemperature,
            relativeHumidity,
            windSpeed,
            globalRadiation,
          };
          const year = expectOk(hourlyWeather(given, { days }));
          const close = (hourly: Float64Array, wanted: readonly number[], digits: number): void => {
            monthlyMeansOf(hourly).forEach((mean, m) => {
              expect(mean).toBeCloseTo(wanted[m] ?? 0, digits);
            });
          };
          close(year.airTemperature, airTemperature, 8);
          close(year.relativeHumidity, relativeHumidity, 8);
          close(year.windSpeed, windSpeed, 8);
          close(
            year.globalRadiation,
            globalRadiation.map((e) => e / 86_400),
            7,
          );
        },
      ),
      { numRuns: 15 },
    );
  });

  it('has no dew point above the air, no sun at night, no wind below calm', () => {
    const year = expectOk(hourlyWeather(normals, { leap: true, firstWeekday: 3 }));
    expect(year.hours).toBe(8784);
    year.dewPoint.forEach((dew, i) => {
      expect(dew).toBeLessThanOrEqual(year.airTemperature[i] ?? 0);
    });
    for (let day = 0; day < 366; day++) expect(year.globalRadiation[day * 24]).toBe(0);
    expect(Math.min(...year.windSpeed)).toBeGreaterThanOrEqual(0);
    expect(year.cloud.every((n) => n >= 0 && n <= 1)).toBe(true);
  });

  it('is the same year each time', () => {
    expect(hourlyWeather(normals)).toEqual(hourlyWeather(normals));
  });

  it('refuses what cannot be', () => {
    const refused = (change: Partial<MonthlyNormals>): object => {
      const answer = hourlyWeather({ ...normals, ...change });
      return answer.ok ? {} : (answer.issues[0] ?? {});
    };
    expect(refused({ airTemperature: [1, 2] })).toMatchObject({
      code: 'ill-formed',
      where: 'airTemperature',
    });
    expect(refused({ windSpeed: normals.windSpeed.map(() => -1) })).toMatchObject({ where: 'windSpeed.1' });
    expect(refused({ globalRadiation: normals.globalRadiation.map(() => 40e6) })).toMatchObject({
      code: 'out-of-range',
      where: 'globalRadiation.1',
    });
    expect(refused({ dewPoint: normals.airTemperature.map((t) => t + 8) })).toMatchObject({
      code: 'contradiction',
      where: 'dewPoint.1',
    });
    expect(refused({ place: { ...normals.place, latitude: 2 } })).toMatchObject({ where: 'place.latitude' });
    const { dewPoint: _, ...without } = normals;
    expect(hourlyWeather(without)).toMatchObject({ ok: false, issues: [{ reason: 'no-humidity' }] });
  });
});
