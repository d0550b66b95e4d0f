import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../../trace/index.ts';
import {
  dewPoint,
  dewPointOf,
  dryAirDensity,
  humidityRatio,
  humidityRatioAt,
  humidityRatioOfWetBulb,
  moistAirDensity,
  moistAirEnthalpy,
  saturationPressure,
  saturationPressureAt,
  vapourPressure,
  vapourPressureAt,
  vapourPressureOfRatio,
  wetBulb,
  wetBulbHumidityRatio,
  wetBulbOf,
} from './index.ts';

const airTemperature = fc.double({ min: 243.15, max: 323.15, noNaN: true });
const humidity = fc.double({ min: 0.01, max: 1, noNaN: true });
const barometer = fc.double({ min: 60_000, max: 105_000, noNaN: true });

describe('saturation', () => {
  // ASHRAE Handbook-Fundamentals 2017, chapter 1, Table 3, tolerance 0.03 % as the table's readers give it.
  it.each([
    [5, 872.6],
    [25, 3169.7],
    [50, 12_351.3],
  ])('at %d °C is %d Pa', (celsius, pascal) => {
    const found = expectOk(evaluate(saturationPressure, { temperature: celsius + 273.15 }));
    expect(Math.abs(found / pascal - 1)).toBeLessThan(3e-4);
  });

  it('rises all the way, over ice and over water', () => {
    fc.assert(
      fc.property(fc.double({ min: 173.15, max: 472, noNaN: true }), (T) => {
        expect(saturationPressureAt(T + 0.01)).toBeGreaterThan(saturationPressureAt(T));
      }),
    );
  });
});

describe('there and back', () => {
  it('from humidity to dew point and back', () => {
    fc.assert(
      fc.property(airTemperature, humidity, (T, phi) => {
        const vapour = vapourPressureAt(T, phi);
        const dew = dewPointOf(vapour);
        expect(dew).toBeLessThanOrEqual(T + 1e-8);
        expect(saturationPressureAt(dew) / vapour).toBeCloseTo(1, 8);
      }),
    );
  });

  // The spot where the branches of ice and liquid meet once threw iterations off in other programs.
  it('closely about the triple point', () => {
    for (let T = 273.1; T < 273.2; T += 0.0005) {
      expect(Math.abs(dewPointOf(saturationPressureAt(T)) - T)).toBeLessThan(1e-6);
    }
  });

  it('from humidity ratio to wet bulb and back', () => {
    fc.assert(
      fc.property(airTemperature, humidity, barometer, (T, phi, P) => {
        const ratio = humidityRatioAt(vapourPressureAt(T, phi), P);
        const wet = wetBulbOf(T, ratio, P);
        expect(wet).toBeLessThanOrEqual(T + 1e-6);
        expect(wet).toBeGreaterThanOrEqual(dewPointOf(vapourPressureAt(T, phi)) - 1e-6);
        // Between ice and water the ratio of one wet bulb jumps by the heat of melting.
        if (Math.abs(wet - 273.16) > 1e-6)
          expect(Math.abs(humidityRatioOfWetBulb(T, wet, P) - ratio)).toBeLessThan(1e-9);
      }),
    );
  });

  it('from vapour pressure to humidity ratio and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20_000, noNaN: true }), barometer, (vapour, pressure) => {
        const ratio = expectOk(evaluate(humidityRatio, { vapourPressure: vapour, pressure }));
        const back = expectOk(evaluate(vapourPressureOfRatio, { humidityRatio: ratio, pressure }));
        expect(Math.abs(back - vapour)).toBeLessThan(1e-8);
      }),
    );
  });
});

describe('moist air', () => {
  it('is lighter the more vapour it holds, and holds more heat', () => {
    fc.assert(
      fc.property(airTemperature, fc.double({ min: 0, max: 0.03, noNaN: true }), (temperature, ratio) => {
        const dry = { temperature, humidityRatio: ratio, pressure: 101_325 };
        const wet = { ...dry, humidityRatio: ratio + 0.001 };
        expect(moistAirDensity.kernel(wet)).toBeLessThan(moistAirDensity.kernel(dry));
        expect(dryAirDensity.kernel(wet)).toBeLessThan(dryAirDensity.kernel(dry));
        expect(moistAirEnthalpy.kernel(wet)).toBeGreaterThan(moistAirEnthalpy.kernel(dry));
      }),
    );
  });
});

describe('out of range', () => {
  it('a humidity of 140 % is an issue', () => {
    const answer = evaluate(vapourPressure, { temperature: 298.15, relativeHumidity: 1.4 });
    expect(answer).toMatchObject({
      ok: false,
      issues: [{ code: 'out-of-range', where: 'relativeHumidity', max: 1 }],
    });
  });

  it('dry air has no dew point, supersaturated air no wet bulb, vapour no more pressure than the whole', () => {
    expect(evaluate(dewPoint, { vapourPressure: 0 }).ok).toBe(false);
    const fog = evaluate(wetBulb, { temperature: 293.15, humidityRatio: 0.05, pressure: 101_325 });
    expect(fog).toMatchObject({ ok: false, issues: [{ code: 'no-solution' }] });
    expect(evaluate(humidityRatio, { vapourPressure: 101_325, pressure: 101_325 }).ok).toBe(false);
  });

  it('a wet bulb above the dry bulb, or too far below it, is no reading', () => {
    const pressure = 101_325;
    expect(evaluate(wetBulbHumidityRatio, { temperature: 293.15, wetBulb: 294.15, pressure }).ok).toBe(false);
    expect(evaluate(wetBulbHumidityRatio, { temperature: 313.15, wetBulb: 275.15, pressure }).ok).toBe(false);
  });
});
