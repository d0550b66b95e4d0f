import { evaluate, fail, heat, ok, properties, type Result } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { choice, defineSum, number } from '../sum.ts';

/**
 * How long a heater takes to warm a basin while it loses heat, beside the time without losses, and the temperature it
 * cannot pass. Outdoor evaporation (Smith, Löf and Jones), no sun, walls or make-up; a sky half covered where nothing
 * is said. A covered basin is covered all the while.
 */
export const warmUp = defineSum({
  name: 'warm-up',
  inputs: {
    volume: number('volume', 'gal'),
    area: number('area', 'ft2'),
    start: number('temperature', 'degF'),
    target: number('temperature', 'degF'),
    /** Into the water: input times efficiency. */
    output: number('heat-rate', 'kBtu/h'),
    'air-temperature': number('temperature', 'degF'),
    'relative-humidity': number('ratio', '%', { min: 0, max: 1 }),
    /** At the water, not at the station. */
    'air-speed': number('velocity', 'mph'),
    cover: {
      ...choice(['none', 'bubble', 'track', 'foam', 'discs', 'liquid']),
      optional: true,
      fallback: 'none',
    },
    /** Share of the sky under cloud. */
    cloud: number('ratio', '%', { optional: true, fallback: 0.5, min: 0, max: 1 }),
    altitude: number('length', 'ft', { optional: true, fallback: 0 }),
  },
  outputs: {
    hours: { kind: 'time', unit: 'h' },
    'naive-hours': { kind: 'time', unit: 'h' },
    plateau: { kind: 'temperature', unit: 'degF' },
  },
  source: heat.naiveWarmUp.source,
  example: {
    given: {
      volume: '20000 gal',
      area: '512 ft2',
      start: '60 degF',
      target: '80 degF',
      output: '250 kBtu/h',
      'air-temperature': '65 degF',
      'relative-humidity': '50 %',
      'air-speed': '2 mph',
      cover: 'none',
    },
    gives: { 'naive-hours': '13.33 h' },
    within: 0.01,
    source: {
      document: 'Certified pool operator arithmetic',
      at: '8.33·gal·ΔT(°F)/(Btu/h) = 8.33·20,000·20/250,000',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const weather = stillHour({
      airTemperature: x['air-temperature'],
      relativeHumidity: x['relative-humidity'],
      cloud: x.cloud ?? 0.5,
      altitude: x.altitude ?? 0,
    });
    if (!weather.ok) return failTyped(weather.issues);
    const cover = x.cover ?? 'none';
    const { volume, start, target, output } = x;
    const answer = heat.warmUp({
      setting: { ...heat.PLAIN_SURFACE, area: x.area, cover: heat.COVERS[cover] },
      weather: { ...weather.value, airSpeed: x['air-speed'], covered: cover === 'none' ? 0 : 1 },
      volume,
      start,
      target,
      output,
    });
    if (!answer.ok) return failTyped(answer.issues);
    const { time, naiveTime, plateau } = answer.value;
    return ok({ hours: time, 'naive-hours': naiveTime, plateau });
  },
});

interface Air {
  readonly airTemperature: number;
  readonly relativeHumidity: number;
  readonly cloud: number;
  readonly altitude: number;
}

type StillHour = Omit<heat.WarmUpQuestion['weather'], 'airSpeed' | 'covered'>;

/** The hour that lasts: a sky without sun over the air that is given. */
function stillHour({ airTemperature, relativeHumidity, cloud, altitude }: Air): Result<StillHour> {
  const pressure = evaluate(properties.standardPressure, { altitude });
  const vapour = evaluate(properties.vapourPressure, { temperature: airTemperature, relativeHumidity });
  if (!pressure.ok) return pressure;
  if (!vapour.ok) return vapour;
  const dew = evaluate(properties.dewPoint, { vapourPressure: vapour.value });
  if (!dew.ok) return fail({ ...dew.issues[0], code: 'out-of-range', where: 'relativeHumidity' });
  const clear = evaluate(heat.berdahlMartinRefitted, { dewPoint: dew.value });
  if (!clear.ok) return clear;
  const sky = evaluate(heat.skyTemperature, { clearEmissivity: clear.value, cloud, airTemperature });
  if (!sky.ok) return sky;
  return ok({
    airTemperature,
    vapourPressure: vapour.value,
    pressure: pressure.value,
    activity: 1,
    skyTemperature: sky.value,
    sun: 0,
    groundTemperature: airTemperature,
    mainsTemperature: heat.REFERENCE_WATER,
  });
}
