import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import {
  COLD_HOURS_ABOVE,
  heatingDryBulb,
  hourlyWeather,
  type MonthlyNormals,
  normalsOfYear,
} from './index.ts';

const NORMALS: MonthlyNormals = {
  place: { latitude: 0.7, longitude: -1.8, timeZone: -7 * 3600, elevation: 1600 },
  airTemperature: [0, 1, 5, 9, 14, 20, 23, 22, 18, 11, 5, 1].map((t) => t + 273.15),
  relativeHumidity: [0.55, 0.54, 0.52, 0.5, 0.53, 0.5, 0.48, 0.5, 0.5, 0.5, 0.55, 0.56],
  windSpeed: [3, 3, 4, 4, 4, 4, 3, 3, 3, 3, 3, 3],
  globalRadiation: [9, 12, 16, 20, 23, 25, 25, 22, 18, 14, 10, 8].map((e) => e * 1e6),
  cloud: [5, 5, 6, 6, 5, 4, 4, 4, 3, 4, 5, 5].map((tenths) => tenths / 10),
};

const rampOf = (low: number, high: number): Float64Array =>
  Float64Array.from({ length: 8760 }, (_, i) => low + ((high - low) * ((i * 7) % 8760)) / 8759);

describe('a year condensed', () => {
  it('has the months it was made of', () => {
    const found = normalsOfYear(expectOk(hourlyWeather(NORMALS)));
    for (const name of ['airTemperature', 'relativeHumidity', 'windSpeed', 'globalRadiation'] as const)
      found[name].forEach((value, month) => {
        const given = NORMALS[name]?.[month] ?? Number.NaN;
        expect(Math.abs(value / given - 1)).toBeLessThan(1e-9);
      });
    expect(found.place).toEqual(NORMALS.place);
  });

  it('has air that a share of its hours stands above, whatever their order', () => {
    // Worked by hand: from −10 to 30 °C in even steps, a hundredth of the way is −9.6 °C; 0.4 % is −9.84 °C.
    const airTemperature = rampOf(263.15, 303.15);
    expect(heatingDryBulb({ airTemperature }, COLD_HOURS_ABOVE)).toBeCloseTo(263.55, 9);
    expect(heatingDryBulb({ airTemperature }, 0.996)).toBeCloseTo(263.31, 9);
  });

  it('counts hours: of 8,760 some 88 are colder than what 99 % stand above', () => {
    const { airTemperature } = expectOk(hourlyWeather(NORMALS));
    const cold = heatingDryBulb({ airTemperature }, COLD_HOURS_ABOVE);
    expect(airTemperature.filter((T) => T < cold)).toHaveLength(88);
  });

  it('of a normal spread lies 2.326 standard deviations under its mean', () => {
    // Quantile of the standard normal at 1 %: −2.3263 (any table).
    const airTemperature = Float64Array.from(
      { length: 8760 },
      (_, i) => 283.15 + 8 * normal((i + 0.5) / 8760),
    );
    expect(heatingDryBulb({ airTemperature }, 0.99)).toBeCloseTo(283.15 - 8 * 2.3263, 1);
  });
});

/** Quantile of the standard normal by halving its distribution, which is summed by Simpson's rule. */
function normal(share: number): number {
  let [low, high] = [-5, 5];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (below(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function below(x: number): number {
  const n = 40;
  const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(0) + density(x);
  for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * density((x * i) / n);
  return 0.5 + (sum * x) / n / 3;
}
