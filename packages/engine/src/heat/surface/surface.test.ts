import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { vapourPressureAt } from '../../properties/index.ts';
import { evaluate, expectOk, type GroupStep, Recorder, type Step } from '../../trace/index.ts';
import {
  absorbedSun,
  airJetLoss,
  basinExchange,
  berdahlMartin,
  berdahlMartinRefitted,
  bowenConvection,
  bruntRefitted,
  CONVECTION_METHODS,
  COVERS,
  clarkAllen,
  coveredBetween,
  EVAPORATION_METHODS,
  emptyLosses,
  idsoRefitted,
  linearConvection,
  logWind,
  makeUp,
  PLAIN_SURFACE,
  powerWind,
  type SurfaceSetting,
  type SurfaceState,
  skyTemperatureOf,
  spillwaySpeed,
  surfaceBalance,
  surfaceLosses,
  swinbank,
  wallLoss,
  windAtWater,
} from './index.ts';

const K = (celsius: number) => celsius + 273.15;
const STATE: SurfaceState = {
  waterTemperature: K(27),
  airTemperature: K(20),
  vapourPressure: vapourPressureAt(K(20), 0.5),
  pressure: 101_325,
  airSpeed: 0.1,
  activity: 1,
  skyTemperature: K(5),
  sun: 0,
  covered: 0,
  groundTemperature: K(15),
  mainsTemperature: K(12),
};
const SETTING: SurfaceSetting = { ...PLAIN_SURFACE, area: 50 };

const anyState: fc.Arbitrary<SurfaceState> = fc
  .record({
    water: fc.double({ min: 1, max: 45, noNaN: true }),
    air: fc.double({ min: -20, max: 40, noNaN: true }),
    humidity: fc.double({ min: 0, max: 1, noNaN: true }),
    airSpeed: fc.double({ min: 0, max: 0.15, noNaN: true }),
    sky: fc.double({ min: -40, max: 30, noNaN: true }),
    sun: fc.double({ min: 0, max: 1100, noNaN: true }),
    covered: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map((x) => ({
    ...STATE,
    waterTemperature: K(x.water),
    airTemperature: K(x.air),
    vapourPressure: vapourPressureAt(K(x.air), x.humidity),
    airSpeed: x.airSpeed,
    skyTemperature: K(x.sky),
    sun: x.sun,
    covered: x.covered,
  }));

const anySetting: fc.Arbitrary<SurfaceSetting> = fc
  .record({
    evaporation: fc.constantFrom(...EVAPORATION_METHODS),
    convection: fc.constantFrom(...CONVECTION_METHODS),
    cover: fc.constantFrom(...Object.values(COVERS)),
    area: fc.double({ min: 1, max: 500, noNaN: true }),
    spillway: fc.constantFrom(undefined, { width: 1.5, fall: 0.4, faces: 2 as const, running: 0.5 }),
    airJets: fc.constantFrom(undefined, { airFlow: 0.01, warming: 10, saturation: 1, running: 0.2 }),
  })
  .map(({ spillway, airJets, ...x }) => ({
    ...PLAIN_SURFACE,
    ...x,
    shade: 0.2,
    skyView: 0.8,
    groundConductance: 20,
    airConductance: 5,
    otherMakeUp: 0.001,
    ...(spillway ? { spillway } : {}),
    ...(airJets ? { airJets } : {}),
  }));

function flows(b: ReturnType<typeof emptyLosses>): number[] {
  return [b.evaporation, b.convection, b.longWave, b.sun, b.ground, b.makeUp, b.spillway, b.airJets];
}

describe('surface balance', () => {
  it('closes: the flows add to the total, for any method, cover and weather', () => {
    fc.assert(
      fc.property(anySetting, anyState, (setting, state) => {
        const balance = expectOk(surfaceBalance(setting, state));
        const sum = flows(balance).reduce((a, b) => a + b, 0);
        expect(Math.abs(sum - balance.total)).toBeLessThan(
          1e-9 * (1 + Math.max(...flows(balance).map(Math.abs))),
        );
        expect(flows(balance).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  it('rises with the temperature of the water', () => {
    fc.assert(
      fc.property(anySetting, anyState, (setting, state) => {
        const out = emptyLosses();
        const cool = surfaceLosses(setting, state, out);
        const warm = surfaceLosses(
          setting,
          { ...state, waterTemperature: state.waterTemperature + 0.5 },
          out,
        );
        expect(warm).toBeGreaterThan(cool);
      }),
    );
  });

  it('a result used again holds nothing of the time before', () => {
    fc.assert(
      fc.property(anySetting, anySetting, anyState, (first, second, state) => {
        const used = emptyLosses();
        surfaceLosses(first, state, used);
        surfaceLosses(second, state, used);
        const fresh = emptyLosses();
        surfaceLosses(second, state, fresh);
        expect(used).toEqual(fresh);
      }),
    );
  });

  it('shows its working with the same figures', () => {
    fc.assert(
      fc.property(anySetting, anyState, (setting, state) => {
        const recorder = new Recorder();
        const balance = expectOk(surfaceBalance(setting, state, recorder));
        const total = recorder.steps[0] as GroupStep;
        expect(total.value).toBe(balance.total);
        const evaporation = total.children.find((s) => s.id === 'heat.loss-evaporation') as GroupStep;
        expect(product(evaporation.children)).toBeCloseTo(balance.evaporation, 6);
        const longWave = total.children.find((s) => s.id === 'heat.loss-longWave') as GroupStep;
        expect(product(longWave.children)).toBeCloseTo(balance.longWave, 6);
        const convection = total.children.find((s) => s.id === 'heat.loss-convection') as GroupStep;
        if (setting.convection !== 'bowen')
          expect(product(convection.children)).toBeCloseTo(balance.convection, 6);
      }),
    );
  });

  it('carries the doubt of evaporation along', () => {
    const balance = expectOk(surfaceBalance(SETTING, STATE));
    expect(balance.evaporationUncertainty / balance.evaporation).toBeCloseTo(0.3, 10);
  });

  it('a cover keeps heat in and the sun partly out', () => {
    const sunny = { ...STATE, sun: 600 };
    const bare = expectOk(surfaceBalance({ ...SETTING, cover: COVERS.bubble }, sunny));
    const covered = expectOk(surfaceBalance({ ...SETTING, cover: COVERS.bubble }, { ...sunny, covered: 1 }));
    expect(covered.evaporation / bare.evaporation).toBeCloseTo(0.051, 10);
    expect(covered.sun / bare.sun).toBeCloseTo(0.9, 10);
    expect(covered.longWave).toBeLessThan(bare.longWave);
  });

  it('lists every value that is wrong', () => {
    const setting = { ...SETTING, area: -1, spillway: { width: 99, fall: 1, faces: 1 as const, running: 1 } };
    const answer = surfaceBalance(setting, { ...STATE, covered: 2, waterTemperature: 0 });
    expect(answer.ok ? [] : answer.issues.map((i) => i.where)).toEqual([
      'area',
      'spillway.width',
      'waterTemperature',
      'covered',
    ]);
  });

  it('refuses more vapour than the air can hold, and wind on a method for still air', () => {
    const foggy = surfaceBalance(SETTING, { ...STATE, vapourPressure: 5000 });
    expect(foggy).toMatchObject({
      ok: false,
      issues: [{ code: 'contradiction', reason: 'above-saturation' }],
    });
    const windy = surfaceBalance({ ...SETTING, evaporation: 'shah' }, { ...STATE, airSpeed: 2 });
    expect(windy).toMatchObject({
      ok: false,
      issues: [{ where: 'airSpeed', reason: 'method-for-still-indoor-air' }],
    });
  });
});

/** Flux × area × share, as the working lists them. */
function product(steps: readonly Step[]): number {
  return steps.reduce(
    (p, s) => p * (s.step === 'formula' ? s.result.value : Number((s as GroupStep).value)),
    1,
  );
}

describe('single flows', () => {
  it('Bowen’s ratio is convection over evaporation', () => {
    const x = { waterTemperature: K(27), airTemperature: K(20), pressure: 101_325 };
    const qc = expectOk(evaluate(bowenConvection, { ...x, evaporation: 300, vapourDifference: 2000 }));
    // γ of 61.8 Pa/K at sea level (Bowen 1926, from memory).
    expect(qc).toBeCloseTo((300 * 61.8 * 7) / 2000, 1);
    expect(evaluate(bowenConvection, { ...x, evaporation: 0, vapourDifference: 0 }).ok).toBe(false);
  });

  it('clear skies are colder than the air, whoever is asked, and cloud warms them', () => {
    const Ta = K(20);
    const e = [
      berdahlMartin.kernel({ dewPoint: K(10) }),
      berdahlMartinRefitted.kernel({ dewPoint: K(10) }),
      clarkAllen.kernel({ dewPoint: K(10) }),
      bruntRefitted.kernel({ vapourPressure: 1228 }),
      idsoRefitted.kernel({ vapourPressure: 1228, airTemperature: Ta }),
    ];
    for (const clear of e) {
      expect(clear).toBeGreaterThan(0.75);
      expect(clear).toBeLessThan(0.87);
      expect(skyTemperatureOf(clear, 0, Ta)).toBeLessThan(skyTemperatureOf(clear, 0.8, Ta));
      expect(skyTemperatureOf(clear, 1, Ta)).toBeLessThanOrEqual(Ta);
    }
    expect(Math.abs(swinbank.kernel({ airTemperature: Ta }) - skyTemperatureOf(e[0]!, 0, Ta))).toBeLessThan(
      5,
    );
  });

  it('wind falls towards the water and behind fences', () => {
    const x = { stationWind: 4, stationHeight: 10, height: 0.3, roughness: 0.03, shelter: 0.5 };
    const open = expectOk(evaluate(logWind, x));
    expect(open / 4).toBeCloseTo(Math.log(10) / Math.log(1000 / 3), 10);
    expect(expectOk(evaluate(windAtWater, x))).toBeCloseTo(open / 2, 10);
    expect(expectOk(evaluate(powerWind, { ...x, exponent: 1 / 7 }))).toBeGreaterThan(open);
    expect(evaluate(logWind, { ...x, height: 0.03 })).toMatchObject({
      ok: false,
      issues: [{ code: 'no-solution' }],
    });
    expect(evaluate(windAtWater, { ...x, shelter: 1.2 }).ok).toBe(false);
  });

  it('make-up of equal temperature costs nothing, and trade between basins is lost by one and won by the other', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 274, max: 320, noNaN: true }),
        fc.double({ min: 274, max: 320, noNaN: true }),
        (a, b) => {
          const there = basinExchange.kernel({ flow: 2, firstTemperature: a, secondTemperature: b });
          const back = basinExchange.kernel({ flow: 2, firstTemperature: b, secondTemperature: a });
          expect(there).toBeCloseTo(-back, 6);
          expect(makeUp.kernel({ flow: 1, waterTemperature: a, mainsTemperature: a })).toBe(0);
        },
      ),
    );
  });

  it('blown air takes nothing when it is already as warm and wet as the water', () => {
    const x = { airFlow: 0.01, waterTemperature: K(38), pressure: 101_325, saturation: 1 };
    expect(Math.abs(airJetLoss.kernel({ ...x, airTemperature: K(38), relativeHumidity: 1 }))).toBeLessThan(
      1e-9,
    );
    expect(airJetLoss.kernel({ ...x, airTemperature: K(15), relativeHumidity: 0.6 })).toBeGreaterThan(1000);
  });

  it('a falling sheet is two thirds as fast on the mean as at its foot', () => {
    expect(spillwaySpeed({ width: 1, fall: 0.4, faces: 2, running: 1 })).toBeCloseTo(1.867, 3);
  });

  it('walls, sun and convection are what they are called', () => {
    const wall = { transmittance: 0.5, area: 100, waterTemperature: K(27), outsideTemperature: K(15) };
    expect(expectOk(evaluate(wallLoss, wall))).toBeCloseTo(600, 9);
    expect(expectOk(evaluate(absorbedSun, { sun: 500, absorption: 0.85, shade: 0.2 }))).toBeCloseTo(340, 9);
    const film = { waterTemperature: K(27), airTemperature: K(20), airSpeed: 1 };
    expect(expectOk(evaluate(linearConvection, film))).toBeCloseTo(50.4, 9);
  });

  it('covers by the clock, through midnight and by half hours', () => {
    const night = coveredBetween(20.5, 7);
    expect(night.reduce((a, b) => a + b, 0)).toBeCloseTo(10.5, 12);
    expect([night[20], night[23], night[6], night[7]]).toEqual([0.5, 1, 1, 0]);
    expect(coveredBetween(0, 24).every((x) => x === 1)).toBe(true);
    expect(coveredBetween(9, 9).every((x) => x === 0)).toBe(true);
  });
});
