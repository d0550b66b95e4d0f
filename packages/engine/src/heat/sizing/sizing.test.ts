import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { saturationPressureAt } from '../../properties/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import { hourlyWeather } from '../climate/index.ts';
import { COVERS, PLAIN_SURFACE } from '../surface/index.ts';
import { lossCurve, type WarmUpQuestion, warmUp } from '../warm-up/index.ts';
import { steadyWeather } from '../year/steady-weather.ts';
import {
  type BasinDemand,
  heaterBank,
  heaterSize,
  holdOutput,
  outputToWarmUp,
  surfaceRuleInput,
  surfaceRuleOutput,
} from './index.ts';

const BTU_HOUR = 1055.05585262 / 3600;
const HOUR = 3600;
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const weather: WarmUpQuestion['weather'] = {
  airTemperature: 288.15,
  vapourPressure: 0.6 * saturationPressureAt(288.15),
  pressure: 101_325,
  airSpeed: 1,
  activity: 1,
  skyTemperature: 275.15,
  sun: 0,
  covered: 0,
  groundTemperature: 285.15,
  mainsTemperature: 285.15,
};

const year = expectOk(
  hourlyWeather({
    place: { latitude: 0.7, longitude: -1.5, timeZone: -6 * HOUR, elevation: 300 },
    airTemperature: [0, 2, 6, 12, 17, 22, 24, 23, 19, 13, 7, 2].map((t) => t + 273.15),
    relativeHumidity: Array.from({ length: 12 }, () => 0.6),
    windSpeed: Array.from({ length: 12 }, () => 4),
    globalRadiation: [7, 10, 14, 18, 21, 23, 23, 20, 16, 12, 8, 6].map((e) => e * 1e6),
  }),
);
const pool = {
  setting: { ...PLAIN_SURFACE, area: 50, cover: COVERS.bubble },
  volume: 75,
  exposure: { windFactor: 0.2, wallDepth: 1.5 },
  covered: new Float64Array(year.hours),
};
const spa = { ...pool, setting: { ...PLAIN_SURFACE, area: 4, cover: COVERS.foam }, volume: 1.6 };

describe('rules of thumb', () => {
  // Trade handbook: 15 ft × 30 ft pool, water 70 °F, air 50 °F: 450·15·20 = 135,000 Btu/h of input. US DOE: the same
  // pool asks for 450·20·12 = 108,000 Btu/h of output.
  it('give the figures of their sources', () => {
    const x = { area: 450 * 0.09290304, difference: 20 / 1.8 };
    expect(expectOk(evaluate(surfaceRuleInput, x)) / BTU_HOUR).toBeCloseTo(135_000, 3);
    expect(expectOk(evaluate(surfaceRuleOutput, { ...x, rate: 1 })) / BTU_HOUR).toBeCloseTo(108_000, 3);
    expect(expectOk(evaluate(surfaceRuleOutput, { ...x, rate: 1.5 })) / BTU_HOUR).toBeCloseTo(162_000, 3);
    expect(evaluate(surfaceRuleOutput, { ...x, rate: 5 }).ok).toBe(false);
  });
});

describe('holding', () => {
  it('takes the loss of the hour in weather that does not change', () => {
    const steady = steadyWeather({
      airTemperature: 288.15,
      dewPoint: 280.15,
      windSpeed: 5,
      globalRadiation: 0,
      cloud: 1,
      pressure: 101_325,
    });
    const { mean, hardestDay } = expectOk(
      holdOutput({ weather: steady, basin: pool, temperature: 301.15, month: 5 }),
    );
    expect(hardestDay / mean).toBeCloseTo(1, 9);
    // Mains 6 °F over the mean of a year without seasons.
    const mains = { groundTemperature: 288.15, mainsTemperature: 288.15 + 6 / 1.8 };
    const bare = { ...weather, ...mains, vapourPressure: saturationPressureAt(280.15) };
    // A covered sky of dew point 7 °C: emissivity (0.758 + 0.521·0.07 + 0.625·0.07²)·(1 + 0.224 − 0.35 + 0.28).
    const emissivity = Math.min(1, (0.758 + 0.521 * 0.07 + 0.625 * 0.07 ** 2) * 1.154);
    const lossOf = lossCurve({
      setting: pool.setting,
      weather: { ...bare, skyTemperature: emissivity ** 0.25 * 288.15 },
    });
    expect(mean / lossOf(301.15)).toBeCloseTo(1, 6);
  });

  it('takes more on the hardest day than on the whole, and more in January than in July', () => {
    const at = (month: number) =>
      expectOk(holdOutput({ weather: year, basin: pool, temperature: 301.15, month }));
    expect(at(1).hardestDay).toBeGreaterThan(at(1).mean);
    expect(at(1).mean).toBeGreaterThan(at(7).mean);
    expect(holdOutput({ weather: year, basin: pool, temperature: 301.15, month: 13 }).ok).toBe(false);
  });
});

describe('warming up in time', () => {
  const wish = {
    setting: pool.setting,
    weather,
    volume: 75,
    start: 288.15,
    target: 301.15,
    within: 24 * HOUR,
  };

  it('is the inverse of the warm-up', () => {
    fc.assert(
      fc.property(
        number(286, 300),
        number(0.5, 13),
        number(0.2, 96),
        number(1, 200),
        (start, rise, hours, volume) => {
          const x = { ...wish, start, target: start + rise, within: hours * HOUR, volume };
          const output = expectOk(outputToWarmUp(x));
          if (output < 1) return;
          // A slow wish needs hardly more than the loss at the target, where a hair of output is hours of time: so the
          // time wanted lies between those of a hair more and a hair less, rather than near either.
          const time = (share: number): number => {
            const answer = warmUp({ ...x, output: output * share });
            return answer.ok ? answer.value.time : Number.POSITIVE_INFINITY;
          };
          expect(time(1 + 1e-7)).toBeLessThanOrEqual(x.within);
          expect(time(1 - 1e-7)).toBeGreaterThanOrEqual(x.within);
        },
      ),
    );
  });

  it('takes more the sooner it must be done, and nothing where there is nothing to do', () => {
    const at = (within: number): number => expectOk(outputToWarmUp({ ...wish, within }));
    expect(at(12 * HOUR)).toBeGreaterThan(at(24 * HOUR));
    expect(expectOk(outputToWarmUp({ ...wish, target: wish.start }))).toBe(0);
    const hot = { ...weather, airTemperature: 313.15, sun: 1000, skyTemperature: 305.15 };
    expect(
      expectOk(outputToWarmUp({ ...wish, weather: hot, within: 30 * 24 * HOUR, target: 289.15 })),
    ).toBeLessThan(1);
  });

  it('warms a spa in minutes', () => {
    const x = { ...wish, setting: spa.setting, volume: 1.6, start: 293.15, target: 311.15, within: 40 * 60 };
    const output = expectOk(outputToWarmUp(x));
    // 1.6 m3 by 18 K in 40 min with nothing lost: 1.6·993.7·4178·18/2400 ≈ 49.9 kW.
    expect(output).toBeGreaterThan(49_000);
    expect(output).toBeLessThan(55_000);
  });

  it('is refused for a wish that is none', () => {
    expect(outputToWarmUp({ ...wish, within: 1 })).toMatchObject({
      ok: false,
      issues: [{ where: 'within' }],
    });
    expect(outputToWarmUp({ ...wish, target: 250 }).ok).toBe(false);
  });
});

describe('a heater’s size', () => {
  const poolDemand: BasinDemand = { basin: pool, temperature: 301.15, holdMonth: 4 };
  const spaDemand: BasinDemand = {
    basin: spa,
    temperature: 312.15,
    warmUp: { weather, start: 293.15, within: 30 * 60 },
  };

  it('is that of its hardest case, which it names', () => {
    const size = expectOk(
      heaterSize({ weather: year, demands: [spaDemand, poolDemand], together: false, holdBy: 'month' }),
    );
    expect(size.cases.map((one) => one.id)).toEqual(['hold', 'warm-up-1']);
    expect(size.governing).toBe('warm-up-1');
    expect(size.needed).toBe(Math.max(...size.cases.map((one) => one.output)));
    const slow = { ...spaDemand, warmUp: { weather, start: 293.15, within: 20 * HOUR } };
    const calm = expectOk(
      heaterSize({ weather: year, demands: [slow, poolDemand], together: false, holdBy: 'day' }),
    );
    expect(calm.governing).toBe('hold');
  });

  it('adds the holding of one basin to the warming of the other where both are served at once', () => {
    const demands = [spaDemand, poolDemand];
    const output = (together: boolean): number =>
      expectOk(heaterSize({ weather: year, demands, together, holdBy: 'month' })).needed;
    const hold = expectOk(holdOutput({ weather: year, basin: pool, temperature: 301.15, month: 4 })).mean;
    expect(output(true) - output(false)).toBeCloseTo(hold, 3);
  });

  it('names the basin a fault belongs to, and wants to be asked something', () => {
    const wrong = { ...spaDemand, temperature: 400 };
    const answer = heaterSize({
      weather: year,
      demands: [poolDemand, wrong],
      together: false,
      holdBy: 'day',
    });
    expect(answer.ok ? '' : answer.issues[0]?.where).toBe('demands.2.target');
    const nothing = { basin: pool, temperature: 300 };
    expect(heaterSize({ weather: year, demands: [nothing], together: false, holdBy: 'day' })).toMatchObject({
      ok: false,
      issues: [{ reason: 'nothing-asked' }],
    });
  });
});

describe('a bank of heaters', () => {
  const asked = { needed: 250_000, units: [60_000, 90_000, 117_000], most: 4, spare: false };

  it('is the smallest that suffices, with a spare where one is wanted', () => {
    expect(expectOk(heaterBank(asked))).toEqual({ count: 3, unit: 90_000, total: 270_000 });
    expect(expectOk(heaterBank({ ...asked, spare: true }))).toMatchObject({ count: 4, unit: 90_000 });
    expect(expectOk(heaterBank({ ...asked, needed: 0 }))).toMatchObject({ count: 1, unit: 60_000 });
  });

  it('always suffices, also with one out', () => {
    fc.assert(
      fc.property(
        number(0, 1e6),
        fc.array(number(1e4, 4e5), { minLength: 1, maxLength: 6 }),
        fc.boolean(),
        (needed, units, spare) => {
          const bank = heaterBank({ needed, units, most: 12, spare });
          if (bank.ok)
            expect(bank.value.total - (spare ? bank.value.unit : 0)).toBeGreaterThanOrEqual(
              needed * (1 - 1e-6),
            );
          else expect(Math.max(...units) * (spare ? 11 : 12)).toBeLessThan(needed * (1 + 1e-6));
        },
      ),
    );
  });

  it('is refused where no bank suffices or a unit is none', () => {
    expect(heaterBank({ ...asked, most: 2 })).toMatchObject({ ok: false, issues: [{ max: 234_000 }] });
    expect(heaterBank({ ...asked, units: [] }).ok).toBe(false);
    expect(heaterBank({ ...asked, units: [-1], most: 0, needed: Number.NaN })).toMatchObject({ ok: false });
  });
});
