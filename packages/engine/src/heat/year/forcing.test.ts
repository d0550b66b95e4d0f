import { describe, expect, it } from 'vitest';
import { saturationPressureAt } from '../../properties/index.ts';
import { expectOk } from '../../trace/index.ts';
import { forcingOf, skyTemperatures } from './forcing.ts';
import { steadyWeather } from './steady-weather.ts';

const steady = steadyWeather({
  airTemperature: 288.15,
  dewPoint: 280.15,
  windSpeed: 5,
  globalRadiation: 300,
  cloud: 0,
  pressure: 95_000,
});

describe('the weather at a basin', () => {
  it('is the station’s, with the wind that reaches the water', () => {
    const forcing = expectOk(forcingOf(steady, { windFactor: 0.2, wallDepth: 1.5 }));
    expect(forcing.airSpeed[100]).toBeCloseTo(1, 12);
    expect(forcing.vapourPressure[100]).toBeCloseTo(saturationPressureAt(280.15), 9);
    // Ground under air without seasons is at the air's mean; mains 6 °F over it (Burch and Christensen 2007).
    expect(forcing.groundTemperature[4000]).toBeCloseTo(288.15, 9);
    expect(forcing.mainsTemperature[4000]).toBeCloseTo(288.15 + 6 / 1.8, 9);
  });

  // Law of Stefan and Boltzmann: 300 W/m2 is a black sky of 269.7 K.
  it('has the sky of the measured radiation where there is one, else that of dew point and cloud', () => {
    const skyRadiation = steady.skyRadiation.map((none, i) => (i === 5 ? 300 : none));
    const sky = skyTemperatures({ ...steady, skyRadiation });
    expect(sky[5]).toBeCloseTo((300 / 5.670374419e-8) ** 0.25, 9);
    expect(sky[6]).toBeCloseTo((0.758 + 0.521 * 0.07 + 0.625 * 0.07 ** 2) ** 0.25 * 288.15, 9);
  });

  it('is the room’s indoors, without sky or sun', () => {
    const room = { airTemperature: 302.15, relativeHumidity: 0.55, airSpeed: 0.1 };
    const forcing = expectOk(forcingOf(steady, { windFactor: 0, wallDepth: 1, room }));
    expect(forcing.sun.every((x) => x === 0)).toBe(true);
    expect(forcing.skyTemperature[7]).toBe(302.15);
    expect(forcing.vapourPressure[7]).toBeCloseTo(0.55 * saturationPressureAt(302.15), 9);
  });

  it('is refused with a wind stronger than the station’s by half and more', () => {
    expect(forcingOf(steady, { windFactor: 3, wallDepth: -1 })).toMatchObject({
      ok: false,
      issues: [{ where: 'exposure.windFactor' }, { where: 'exposure.wallDepth' }],
    });
    const room = { airTemperature: 28, relativeHumidity: 1.4, airSpeed: 0 };
    expect(forcingOf(steady, { windFactor: 0, wallDepth: 1, room })).toMatchObject({
      ok: false,
      issues: [{ where: 'exposure.room.airTemperature' }, { where: 'exposure.room.relativeHumidity' }],
    });
  });
});
