import { evaluate, fail, heat, ok, properties, type Result } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { choice, defineSum, number } from '../sum.ts';
import { SURFACE_INPUTS, type SurfaceGiven, surfaceState } from './water-and-air.ts';

/** Heat a bare water surface loses by evaporation, convection and long-wave radiation. No sun, walls or make-up. */
export const poolLoss = defineSum({
  name: 'pool-loss',
  inputs: {
    ...SURFACE_INPUTS,
    area: number('area', 'ft2'),
    /** Or cloud; indoors the temperature of walls and roof. */
    'sky-temperature': number('temperature', 'degF', { optional: true }),
    /** Share of the sky under cloud, from which and from the dew point the sky's temperature follows. */
    cloud: number('ratio', '%', { optional: true, min: 0, max: 1 }),
    'convection-method': { ...choice(heat.CONVECTION_METHODS), optional: true, fallback: 'linear' },
  },
  outputs: {
    evaporation: { kind: 'heat-rate', unit: 'kBtu/h' },
    convection: { kind: 'heat-rate', unit: 'kBtu/h' },
    radiation: { kind: 'heat-rate', unit: 'kBtu/h' },
    total: { kind: 'heat-rate', unit: 'kBtu/h' },
  },
  source: heat.smithEvaporation.source,
  example: {
    given: {
      method: 'carrier',
      'water-temperature': '80 degF',
      'air-temperature': '70 degF',
      'relative-humidity': '60 %',
      'air-speed': '3.5 mph',
      area: '500 ft2',
      'sky-temperature': '50 degF',
    },
    gives: {
      evaporation: '66.5 kBtu/h',
      convection: '8.378 kBtu/h',
      radiation: '14.12 kBtu/h',
      total: '89.0 kBtu/h',
    },
    within: 0.005,
    source: {
      document: 'Carrier (1918), ISO/TR 12596:1995 and the law of Stefan and Boltzmann',
      at: 'worked by hand in inch-pound units: 225.9·(1.0323 − 0.4435), 1.6757·10, 0.95·0.1714e-8·ΔT⁴, times 500 ft2',
      known: 'from memory',
    },
  },
  run: (x) => {
    const state = surfaceState(x);
    if (!state.ok) return failTyped(state.issues);
    const sky = skyOf(x, x['sky-temperature'], x.cloud);
    if (!sky.ok) return failTyped(sky.issues);
    const balance = heat.surfaceBalance(
      {
        ...heat.PLAIN_SURFACE,
        evaporation: x.method,
        convection: x['convection-method'] ?? 'linear',
        area: x.area,
      },
      {
        ...state.value,
        skyTemperature: sky.value,
        sun: 0,
        covered: 0,
        groundTemperature: x['water-temperature'],
        mainsTemperature: x['water-temperature'],
      },
    );
    if (!balance.ok) return failTyped(balance.issues);
    const { evaporation, convection, longWave } = balance.value;
    return ok({ evaporation, convection, radiation: longWave, total: evaporation + convection + longWave });
  },
});

/** The sky's temperature as given, or by Berdahl and Martin from the dew point and the cloud. */
function skyOf(x: SurfaceGiven, given?: number, cloud?: number): Result<number> {
  const expected = ['sky-temperature', 'cloud'];
  if (given !== undefined && cloud !== undefined)
    return fail({ code: 'contradiction', where: 'cloud', reason: 'give-one-of', expected });
  if (given !== undefined) return ok(given);
  if (cloud === undefined)
    return fail({ code: 'ill-formed', where: 'sky-temperature', reason: 'give-one-of', expected });
  const airTemperature = x['air-temperature'];
  const vapourPressure = properties.vapourPressureAt(airTemperature, x['relative-humidity']);
  const dew = evaluate(properties.dewPoint, { vapourPressure });
  if (!dew.ok) return dew;
  const clear = evaluate(heat.berdahlMartin, { dewPoint: dew.value });
  if (!clear.ok) return clear;
  return evaluate(heat.skyTemperature, { clearEmissivity: clear.value, cloud, airTemperature });
}
