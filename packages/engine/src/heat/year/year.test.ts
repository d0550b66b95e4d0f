import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { type HourlyWeather, hourlyWeather } from '../climate/index.ts';
import { COVERS, coveredBetween, PLAIN_SURFACE } from '../surface/index.ts';
import {
  type BasinYear,
  coveredHours,
  poolYear,
  setPoints,
  VOLUMETRIC_HEAT,
  type YearBasin,
  type YearQuestion,
} from './index.ts';
import { steadyWeather } from './steady-weather.ts';

const CELSIUS = 273.15;
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const fuelOf = (question: YearQuestion): number => sum(expectOk(poolYear(question)).fuel);

/** A temperate, a hot and a cold inland climate, invented. */
function climate(mean: number, swing: number): HourlyWeather {
  const wave = (m: number): number => mean - swing * Math.cos((2 * Math.PI * (m - 0.5)) / 12);
  const months = Array.from({ length: 12 }, (_, m) => m);
  return expectOk(
    hourlyWeather({
      place: { latitude: 0.7, longitude: -1.5, timeZone: -6 * 3600, elevation: 300 },
      airTemperature: months.map((m) => wave(m) + CELSIUS),
      relativeHumidity: months.map(() => 0.6),
      windSpeed: months.map(() => 4),
      globalRadiation: months.map((m) => 1e6 * (14 - 8 * Math.cos((2 * Math.PI * m) / 12))),
    }),
  );
}
const CLIMATES = [climate(12, 12), climate(22, 8), climate(2, 17)] as const;
const TEMPERATE = CLIMATES[0];

const hoursOf = (weather: HourlyWeather, value: number): Float64Array =>
  new Float64Array(weather.hours).fill(value);

function pool(weather: HourlyWeather, change: Partial<YearBasin> = {}): YearBasin {
  return {
    setting: { ...PLAIN_SURFACE, area: 50, groundConductance: 40, cover: COVERS.bubble },
    volume: 75,
    exposure: { windFactor: 0.2, wallDepth: 1.5 },
    setPoint: hoursOf(weather, 301.15),
    covered: hoursOf(weather, 0),
    ...change,
  };
}

const HEATER = { output: 80_000, efficiency: 0.82 };
const BIG = { output: 2e6, efficiency: 0.82 };

/** Heat that moved in a year, whichever way: what an imbalance is small against. */
const moved = (year: BasinYear): number => sum(Object.values(year.flows).flat().map(Math.abs));

const basins = fc.record({
  climate: fc.integer({ min: 0, max: 2 }),
  area: fc.double({ min: 3, max: 400, noNaN: true }),
  depth: fc.double({ min: 0.4, max: 3, noNaN: true }),
  wind: fc.double({ min: 0, max: 1, noNaN: true }),
  set: fc.double({ min: 296, max: 313, noNaN: true }),
  output: fc.double({ min: 0, max: 3e5, noNaN: true }),
  night: fc.boolean(),
});

describe('the books of a year', () => {
  it('close to round-off, whatever the basin, the heater and the climate', () => {
    fc.assert(
      fc.property(basins, (x) => {
        const weather = CLIMATES[x.climate] ?? TEMPERATE;
        const day = x.night ? coveredBetween(20, 8) : coveredBetween(0, 0);
        const basin = pool(weather, {
          setting: {
            ...PLAIN_SURFACE,
            area: x.area,
            cover: COVERS.bubble,
            airConductance: 5,
            otherMakeUp: 1e-3,
          },
          volume: x.area * x.depth,
          exposure: { windFactor: x.wind, wallDepth: x.depth },
          setPoint: hoursOf(weather, x.set),
          covered: expectOk(coveredHours({ day }, weather)),
        });
        const { basins: years } = expectOk(
          poolYear({ weather, basins: [basin], heater: { output: x.output, efficiency: 0.8 } }),
        );
        for (const year of years) {
          expect(Math.abs(year.imbalance)).toBeLessThan(1e-11 * moved(year));
          expect(year.waterTemperature.every((T) => T >= CELSIUS && T < 330)).toBe(true);
        }
      }),
      { numRuns: 12 },
    );
  });

  it('close for two basins that trade water, and what one gives the other takes', () => {
    const spa = pool(TEMPERATE, {
      setting: { ...PLAIN_SURFACE, area: 5, cover: COVERS.foam },
      volume: 1.6,
      setPoint: hoursOf(TEMPERATE, 311.15),
    });
    const exchange = hoursOf(TEMPERATE, 1e-3);
    const { basins: years } = expectOk(
      poolYear({ weather: TEMPERATE, basins: [spa, pool(TEMPERATE)], heater: HEATER, exchange }),
    );
    for (const year of years) expect(Math.abs(year.imbalance)).toBeLessThan(1e-11 * moved(year));
    const across = years.map((year) => sum(year.flows.exchange));
    expect(Math.abs((across[0] ?? 0) + (across[1] ?? 0))).toBeLessThan(1e-9 * Math.abs(across[0] ?? 1));
    expect(across[0]).toBeGreaterThan(0);
  });

  it('close where the water freezes and thaws', () => {
    const weather = CLIMATES[2];
    const basin = pool(weather, { setPoint: hoursOf(weather, 0) });
    const { basins: years } = expectOk(poolYear({ weather, basins: [basin], heater: HEATER }));
    const [year] = years;
    expect(year?.waterTemperature.some((T) => T === CELSIUS)).toBe(true);
    expect(Math.abs(year?.imbalance ?? 1)).toBeLessThan(1e-11 * moved(year as BasinYear));
    expect(year?.wantedHours).toBe(0);
  });
});

describe('a year', () => {
  // dT/dt = −UA·(T − Tg)/C with constant ground: T − Tg falls by exp(−UA·t/C), here 1 % an hour.
  it('cools a sunk tank as the exponential of the textbook', () => {
    const weather = steadyWeather({
      airTemperature: 283.15,
      dewPoint: 278.15,
      windSpeed: 0,
      globalRadiation: 0,
      cloud: 0,
      pressure: 101_325,
    });
    const groundConductance = (0.01 * 10 * VOLUMETRIC_HEAT) / 3600;
    const basin = pool(weather, {
      setting: { ...PLAIN_SURFACE, area: 0, groundConductance },
      volume: 10,
      setPoint: hoursOf(weather, 0),
    });
    const { basins: years } = expectOk(
      poolYear({ weather, basins: [basin], heater: HEATER, start: [303.15] }),
    );
    const T = years[0]?.waterTemperature ?? new Float64Array();
    for (const hour of [10, 50, 100, 200]) {
      const exact = 283.15 + 20 * Math.exp(-0.01 * hour);
      // A step of 1 % lags by half of it: at most 0.05 K here.
      expect(Math.abs((T[hour - 1] ?? 0) - exact)).toBeLessThan(0.05);
    }
  });

  it('needs no less fuel for a hotter set point', () => {
    fc.assert(
      fc.property(basins, fc.double({ min: 0.2, max: 6, noNaN: true }), (x, hotter) => {
        const weather = CLIMATES[x.climate] ?? TEMPERATE;
        const at = (T: number): number =>
          fuelOf({
            weather,
            basins: [pool(weather, { setPoint: hoursOf(weather, T) })],
            heater: { output: x.output, efficiency: 0.82 },
          });
        expect(at(x.set + hotter)).toBeGreaterThanOrEqual(at(x.set) * (1 - 1e-9));
      }),
      { numRuns: 8 },
    );
  });

  // Of a cover that keeps in vapour only, over water that never takes vapour up. A cover that dims the sun, or lies
  // over the water in a hot afternoon, keeps heat out too and may cost fuel: it is not claimed for those.
  it('needs no more fuel with a cover that only keeps vapour in', () => {
    fc.assert(
      fc.property(basins, (x) => {
        const weather = CLIMATES[x.climate] ?? TEMPERATE;
        const cover = { evaporation: 0.06, dry: 1, sun: 1 };
        const fuelAt = (covered: number): number =>
          fuelOf({
            weather,
            basins: [
              pool(weather, {
                setting: { ...PLAIN_SURFACE, area: 50, cover },
                covered: hoursOf(weather, covered),
                setPoint: hoursOf(weather, x.set),
              }),
            ],
            heater: BIG,
          });
        expect(fuelAt(1)).toBeLessThanOrEqual(fuelAt(0) * (1 + 1e-9));
      }),
      { numRuns: 8 },
    );
  });

  it('needs no more fuel with a bubble cover at night', () => {
    for (const weather of CLIMATES) {
      const covered = expectOk(coveredHours({ day: coveredBetween(20, 7) }, weather));
      const bare = fuelOf({ weather, basins: [pool(weather)], heater: BIG });
      expect(fuelOf({ weather, basins: [pool(weather, { covered })], heater: BIG })).toBeLessThan(bare);
    }
  });

  it('is never short of a set point for longer with a bigger heater', () => {
    fc.assert(
      fc.property(basins, fc.double({ min: 1, max: 3, noNaN: true }), (x, factor) => {
        const weather = CLIMATES[x.climate] ?? TEMPERATE;
        const short = (output: number): number => {
          const answer = expectOk(
            poolYear({ weather, basins: [pool(weather)], heater: { output, efficiency: 0.8 } }),
          );
          return sum(answer.basins[0]?.shortHours ?? []);
        };
        expect(short(x.output * factor)).toBeLessThanOrEqual(short(x.output));
      }),
      { numRuns: 8 },
    );
  });

  it('needs less fuel with a set-back, with weekends only, and with a shorter season', () => {
    const at = (plan: Omit<Parameters<typeof setPoints>[0], 'temperature'>): number => {
      const setPoint = expectOk(setPoints({ temperature: 301.15, ...plan }, TEMPERATE));
      return fuelOf({ weather: TEMPERATE, basins: [pool(TEMPERATE, { setPoint })], heater: BIG });
    };
    const always = at({});
    expect(at({ setBack: { from: 20, to: 6, temperature: 298.15 } })).toBeLessThan(always);
    expect(at({ week: { from: { weekday: 5, hour: 8 }, to: { weekday: 0, hour: 20 } } })).toBeLessThan(
      always,
    );
    expect(at({ season: { from: { month: 4, day: 1 }, to: { month: 10, day: 31 } } })).toBeLessThan(always);
  });

  it('of two basins that trade nothing is that of each alone', () => {
    const other = pool(TEMPERATE, { volume: 30, setPoint: hoursOf(TEMPERATE, 305.15) });
    const both = expectOk(poolYear({ weather: TEMPERATE, basins: [pool(TEMPERATE), other], heater: BIG }));
    const alone = [pool(TEMPERATE), other].map((basin) =>
      expectOk(poolYear({ weather: TEMPERATE, basins: [basin], heater: BIG })),
    );
    expect(sum(both.fuel) / sum(alone.flatMap((one) => one.fuel))).toBeCloseTo(1, 9);
  });

  it('of two basins that trade much has one temperature, and the first is served first', () => {
    const cold = hoursOf(TEMPERATE, 0);
    const exchange = hoursOf(TEMPERATE, 0.05);
    const basins = [pool(TEMPERATE), pool(TEMPERATE, { setPoint: cold })];
    const mixed = expectOk(poolYear({ weather: TEMPERATE, basins, heater: BIG, exchange }));
    const [a, b] = mixed.basins.map((one) => one.waterTemperature);
    expect(Math.abs((a?.[5000] ?? 0) - (b?.[5000] ?? 99))).toBeLessThan(0.3);
    const weak = { output: 20_000, efficiency: 0.8 };
    const apart = expectOk(
      poolYear({ weather: TEMPERATE, basins: [pool(TEMPERATE), pool(TEMPERATE)], heater: weak }),
    );
    const [first, second] = apart.basins.map((one) => sum(one.shortHours));
    expect(first).toBeLessThan(second ?? 0);
  });

  it('indoors hardly changes from month to month', () => {
    const room = { airTemperature: 303.15, relativeHumidity: 0.6, airSpeed: 0.1 };
    const basin = pool(TEMPERATE, {
      setting: { ...PLAIN_SURFACE, area: 50, skyView: 0, evaporation: 'ashrae' },
      exposure: { windFactor: 0, wallDepth: 0, room },
    });
    const { fuel } = expectOk(poolYear({ weather: TEMPERATE, basins: [basin], heater: HEATER }));
    const daily = fuel.map(
      (joules, m) => joules / ([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][m] ?? 1),
    );
    expect(Math.max(...daily) / Math.min(...daily)).toBeLessThan(1.1);
  });

  it('is refused whole, with every fault named', () => {
    const answer = poolYear({
      weather: TEMPERATE,
      basins: [
        pool(TEMPERATE, {
          volume: -1,
          covered: new Float64Array(3),
          exposure: { windFactor: 9, wallDepth: 1 },
        }),
      ],
      heater: { output: 1e5, efficiency: 4 },
      start: [100],
    });
    const where = answer.ok ? [] : answer.issues.map((issue) => issue.where);
    expect(where).toEqual(
      expect.arrayContaining([
        'heater.efficiency',
        'basins.1.volume',
        'basins.1.covered',
        'exposure.windFactor',
        'start.1',
      ]),
    );
    const film = pool(TEMPERATE, { volume: 0.06, exposure: { windFactor: 1.5, wallDepth: 0 } });
    expect(poolYear({ weather: TEMPERATE, basins: [film], heater: HEATER })).toMatchObject({
      ok: false,
      issues: [{ reason: 'too-shallow-for-the-hour' }],
    });
    expect(poolYear({ weather: TEMPERATE, basins: [], heater: HEATER }).ok).toBe(false);
  });
});
