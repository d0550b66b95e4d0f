import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { saturationPressureAt } from '../../properties/index.ts';
import { evaluate, expectOk, Recorder } from '../../trace/index.ts';
import { COVERS, PLAIN_SURFACE } from '../surface/index.ts';
import { steadyWeather } from '../year/steady-weather.ts';
import { integrate } from './gauss.ts';
import {
  heatCapacityOf,
  lossCurve,
  naiveWarmUp,
  plateau,
  type WarmUpQuestion,
  warmUp,
  warmUpHeat,
  warmUpInWeather,
} from './index.ts';

const weather: WarmUpQuestion['weather'] = {
  airTemperature: 291.15,
  vapourPressure: 0.5 * saturationPressureAt(291.15),
  pressure: 101_325,
  airSpeed: 1,
  activity: 1,
  skyTemperature: 278.15,
  sun: 0,
  covered: 0,
  groundTemperature: 285.15,
  mainsTemperature: 285.15,
};
const question: WarmUpQuestion = {
  setting: { ...PLAIN_SURFACE, area: 50 },
  weather,
  volume: 75,
  start: 288.15,
  target: 301.15,
  output: 100_000,
};
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('heat in the water', () => {
  // Pool operator course: 8.33 lb a gallon, 1,100 gal from 94 to 102 °F, 73,304 Btu; hot water weighs 8.29 and holds
  // 0.998 of a Btu.
  it('is the trade’s within the weight it takes for water', () => {
    const kelvin = (f: number): number => (f + 459.67) / 1.8;
    const x = { volume: 1100 * 0.003785411784, start: kelvin(94), target: kelvin(102) };
    const btu = expectOk(evaluate(warmUpHeat, x)) / 1055.05585262;
    expect(btu / 73_304).toBeGreaterThan(0.99);
    expect(btu).toBeLessThan(73_304);
  });

  it('is refused for ice, and for a heater that gives nothing', () => {
    const x = { volume: 1, start: 260, target: 300, output: 0 };
    const answer = evaluate(naiveWarmUp, x);
    expect(answer.ok ? [] : answer.issues.map((issue) => issue.where)).toEqual(['start', 'output']);
  });
});

describe('a warm-up', () => {
  // dT/dt = (P − UA·(T − Tg))/C: t = C/UA·ln((P − UA·(T1 − Tg))/(P − UA·(T2 − Tg))).
  it('is the logarithm of the textbook where only walls lose', () => {
    const groundConductance = 500;
    const x = { ...question, setting: { ...PLAIN_SURFACE, area: 0, groundConductance }, output: 12_000 };
    const left = (T: number): number => x.output - groundConductance * (T - weather.groundTemperature);
    const exact = (heatCapacityOf(x) / groundConductance) * Math.log(left(x.start) / left(x.target));
    const { time, plateau: top } = expectOk(warmUp(x));
    expect(time / exact).toBeCloseTo(1, 8);
    const near = { ...x, target: top - 1e-6 };
    const slow = (heatCapacityOf(near) / groundConductance) * Math.log(left(x.start) / left(near.target));
    expect(expectOk(warmUp(near)).time / slow).toBeCloseTo(1, 8);
    expect(top).toBeCloseTo(weather.groundTemperature + 24, 4);
  });

  it('takes the naive time where nothing is lost', () => {
    const {
      time,
      naiveTime,
      plateau: top,
    } = expectOk(warmUp({ ...question, setting: { ...PLAIN_SURFACE, area: 0 } }));
    expect(time).toBeCloseTo(naiveTime, 3);
    // Nothing stops it but boiling.
    expect(top - 273.15).toBeCloseTo(100, 0);
  });

  it('agrees with a march in steps of a second', () => {
    const lossOf = lossCurve(question);
    const capacity = heatCapacityOf(question);
    let [T, seconds] = [question.start, 0];
    while (T < question.target) {
      T += (question.output - lossOf(T)) / capacity;
      seconds++;
    }
    expect(Math.abs(expectOk(warmUp(question)).time - seconds)).toBeLessThan(3);
  });

  it('is never longer with a bigger heater or under a cover, and never shorter for a hotter target', () => {
    fc.assert(
      fc.property(
        number(2e4, 5e5),
        number(1, 4),
        number(290, 313),
        number(0, 5),
        (output, factor, target, more) => {
          const time = (change: Partial<WarmUpQuestion>): number => {
            const answer = warmUp({ ...question, output, target, ...change });
            return answer.ok ? answer.value.time : Number.POSITIVE_INFINITY;
          };
          const asIs = time({});
          expect(time({ output: output * factor })).toBeLessThanOrEqual(asIs * (1 + 1e-12));
          const setting = { ...question.setting, cover: COVERS.bubble };
          // What the cover keeps in outweighs the little warmth of the air it keeps out; the integral is good to 1e-8.
          if (target > 292)
            expect(time({ setting, weather: { ...weather, covered: 1 } })).toBeLessThanOrEqual(
              asIs * (1 + 1e-7),
            );
          expect(time({ target: target + more })).toBeGreaterThanOrEqual(asIs * (1 - 1e-7));
        },
      ),
    );
  });

  it('names the plateau where the target lies beyond it', () => {
    const answer = warmUp({ ...question, output: 20_000 });
    expect(answer).toMatchObject({
      ok: false,
      issues: [{ code: 'no-solution', where: 'target', reason: 'plateau' }],
    });
    const top = answer.ok ? 0 : (answer.issues[0]?.max ?? 0);
    expect(lossCurve(question)(top)).toBeCloseTo(20_000, 1);
    expect(warmUp({ ...question, output: 20_000, target: top - 0.01 }).ok).toBe(true);
    expect(warmUp({ ...question, output: 20_000, target: top + 0.001 }).ok).toBe(false);
  });

  it('has a plateau under the air’s temperature where the sky is cold and the heater hardly on', () => {
    const top = expectOk(plateau({ ...question, output: 1 }));
    expect(top).toBeLessThan(weather.airTemperature);
    expect(lossCurve(question)(top)).toBeCloseTo(1, 1);
  });

  it('carries the doubt of evaporation: earliest, then time, then latest or never', () => {
    const { earliest, time, latest } = expectOk(warmUp(question));
    expect(earliest).toBeLessThan(time);
    expect(latest).toBeGreaterThan(time);
    const tight = expectOk(warmUp({ ...question, output: 30_000 }));
    expect(tight.latest).toBeUndefined();
  });

  it('shows its working', () => {
    const recorder = new Recorder();
    const { time } = expectOk(warmUp(question, recorder));
    const ids = recorder.steps.map((step) => step.id);
    expect(ids).toContain('heat.naive-warm-up');
    expect(recorder.steps.at(-1)).toMatchObject({ id: 'heat.warm-up-time', value: time });
  });

  it('is refused for nonsense, all of it at once', () => {
    const answer = warmUp({
      ...question,
      volume: -1,
      weather: { ...weather, airSpeed: 99, airTemperature: 0 },
    });
    const where = answer.ok ? [] : answer.issues.map((issue) => issue.where);
    expect(where).toEqual(expect.arrayContaining(['volume', 'airSpeed', 'airTemperature']));
    expect(warmUp({ ...question, target: 280 })).toMatchObject({
      ok: false,
      issues: [{ code: 'contradiction' }],
    });
    expect(expectOk(warmUp({ ...question, target: question.start })).time).toBe(0);
  });
});

describe('a warm-up through the hours', () => {
  const steady = steadyWeather({
    airTemperature: 291.15,
    dewPoint: 280.5,
    windSpeed: 4,
    globalRadiation: 0,
    cloud: 0.5,
    pressure: 101_325,
  });
  const basin = {
    setting: question.setting,
    volume: 75,
    exposure: { windFactor: 0.25, wallDepth: 1.5 },
    covered: new Float64Array(steady.hours),
  };
  const asked = { weather: steady, basin, firstHour: 0, start: 288.15, target: 301.15, output: 100_000 };

  it('takes the steady time in steady weather', () => {
    const { time, hourly } = expectOk(warmUpInWeather(asked));
    // Sky temperature by the refitted emissivity: dew point 7.35 °C, half covered.
    const emissivity =
      (0.758 + 0.521 * 0.0735 + 0.625 * 0.0735 ** 2) * (1 + 0.0224 * 5 - 0.0035 * 25 + 0.00028 * 125);
    const skyTemperature = emissivity ** 0.25 * 291.15;
    const vapourPressure = saturationPressureAt(280.5);
    const still = expectOk(
      warmUp({ ...question, weather: { ...weather, skyTemperature, vapourPressure } }),
    ).time;
    expect(Math.abs(time / still - 1)).toBeLessThan(0.005);
    expect(hourly).toHaveLength(Math.floor(time / 3600));
  });

  it('is never longer with a bigger heater, and says how warm it got where it fails', () => {
    const time = (output: number): number => expectOk(warmUpInWeather({ ...asked, output })).time;
    expect(time(150_000)).toBeLessThan(time(100_000));
    expect(warmUpInWeather({ ...asked, output: 10_000 })).toMatchObject({
      ok: false,
      issues: [{ code: 'no-solution', reason: 'never-in-this-weather' }],
    });
    expect(warmUpInWeather({ ...asked, firstHour: -3 })).toMatchObject({ ok: false });
  });
});

describe('the integral', () => {
  it('is exact for a polynomial of the ninth degree, and that of the textbook for the exponential', () => {
    expect(integrate((x) => 10 * x ** 9, { from: 0, to: 2, panels: 1 }) / 1024).toBeCloseTo(1, 12);
    expect(integrate(Math.exp, { from: 0, to: 1, panels: 4 })).toBeCloseTo(Math.E - 1, 12);
  });
});
