import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { surveyRecords } from '../../schema/index.ts';
import { type PlainJob, plainView } from '../facts/plain-view.ts';
import type { JobView } from '../facts/view.ts';
import { workingOf } from '../findings/working.ts';
import { heatPictureOf } from '../pictures/index.ts';
import { yearOfJob } from '../year/index.ts';
import { climateOfFile, climateOfMonths, type MonthColumn, withClimate } from './index.ts';

const TODAY = { today: '2026-11-25' };
const POOL = {
  id: 'pool',
  use: 'pool',
  where: 'outdoors',
  shape: 'rectangle',
  length: 'measured 32 ft',
  width: 'measured 16 ft',
  depthShallow: 'measured 3 ft',
  depthDeep: 'measured 8 ft',
  setTemperature: 'told 82 °F',
  startTemperature: 'measured 60 °F',
  warmUpTime: 'told 48 h',
  cover: 'told bubble',
  coverHours: 'told 12 h',
  seasonFirst: '4',
  seasonLast: '10',
};
const HEATER = {
  id: 'h1',
  fuel: 'nameplate natural',
  node: 'heater',
  input: 'nameplate 400 kBtu/h',
  efficiency: 'nameplate 80 %',
};
const SITE = { country: 'US', altitude: 'measured 5285 ft', wind: 'told garden' };

/** A job without a place on board, unless one is given. */
function job(site: object = {}, more: object = {}): JobView {
  const survey = {
    site: { ...SITE, ...site },
    heaters: [HEATER],
    basins: [POOL],
    gasSupply: { fuel: 'told natural' },
  };
  const records = surveyRecords({ ...survey, ...more });
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return plainView(records.value as PlainJob);
}

function placed(id: string) {
  const place = catalog.climate.PLACES.find((one) => one.id === id);
  if (place === undefined) throw new Error(id);
  const weather = heat.hourlyWeather(catalog.climate.normalsOf(place));
  if (!weather.ok) throw new Error(JSON.stringify(weather.issues));
  return { place, file: { city: id, station: '0', ground: [], filled: {}, weather: weather.value } };
}

function shown(view: JobView) {
  const [basin] = heatPictureOf(view).basins;
  if (basin === undefined) throw new Error('no basin');
  return basin;
}

const fuelOf = (view: JobView): number => {
  const year = yearOfJob(view);
  if (year.state !== 'known') throw new Error(JSON.stringify(year));
  return (year.basins[0]?.bare.answer.fuel ?? []).reduce((a, b) => a + b, 0);
};

describe('the climate of a weather file', () => {
  const { place, file } = placed('denver');
  const own = shown(job({ climatePlace: 'denver' }));
  const view = withClimate(job(), climateOfFile(file, 'Denver (denver.epw)'));

  it('carries the design day, the warm-up and the sizes where there is no place on board', () => {
    expect(shown(job()).missingForLoss).toContain('site/-/climatePlace');
    const found = shown(view);
    expect(found.missing).toEqual([]);
    expect(found.day).toMatchObject({ source: 'file', place: 'Denver (denver.epw)', month: own.day?.month });
    expect(found.sizes.length).toBe(own.sizes.length);
  });

  it('of the place on board gives what that place gives, as far as its humidity is the same', () => {
    // The year is made from the place's dew points, whose mean relative humidity is not quite the table's.
    const found = shown(view);
    expect(found.day?.airTemperature).toBeCloseTo(own.day?.airTemperature ?? 0, 2);
    expect(found.day?.groundTemperature).toBeCloseTo(own.day?.groundTemperature ?? 0, 2);
    expect(Math.abs((found.hold ?? 0) / (own.hold ?? 1) - 1)).toBeLessThan(0.03);
    expect(Math.abs((found.warmUp?.time ?? 0) / (own.warmUp?.time ?? 1) - 1)).toBeLessThan(0.02);
  });

  it('makes a typical year without the file', () => {
    expect(Math.abs(fuelOf(view) / fuelOf(job({ climatePlace: 'denver' })) - 1)).toBeLessThan(0.03);
  });

  it('is told in the working, with the air it comes to', () => {
    const working = workingOf(view, 'heat.warm-in-time@pool', TODAY);
    const text = JSON.stringify(working);
    expect(text).toContain('"value":"Denver (denver.epw)","reading":"site/-/climateName"');
    expect(text).toContain(`climateMonths/${own.day?.month}/airTemperature`);
  });

  it('gives way to the place on board when somebody says so', () => {
    const back = withClimate(job({ climatePlace: 'miami' }), [
      ...climateOfFile(file, 'Denver'),
      { collection: 'site', id: '-', field: 'climateFrom', reading: { value: 'bundled', how: 'told' } },
    ]);
    expect(shown(back).day).toMatchObject({ source: 'bundled', place: expect.stringContaining('Miami') });
  });

  it('is colder where somebody sizes for cold hours', () => {
    const cold = shown(withClimate(job({ designTemperature: 'told -10 °C' }), climateOfFile(file, 'Denver')));
    expect(cold.day?.airTemperature).toBeCloseTo(263.15, 9);
    expect(cold.day?.decided).toBe(true);
    expect(cold.hold).toBeGreaterThan(own.hold ?? 0);
    expect(place.id).toBe('denver');
  });
});

describe('typed months', () => {
  const { place } = placed('chicago');
  const columns: readonly MonthColumn[] = [
    { field: 'airTemperature', unit: 'degC', values: place.airTemperature },
    { field: 'relativeHumidity', unit: '%', values: place.relativeHumidity },
    { field: 'windSpeed', unit: 'm/s', values: place.windSpeed },
    { field: 'globalRadiation', unit: 'W/m2', values: place.globalRadiation.map((day) => (day * 1000) / 24) },
    ...(place.cloud
      ? [{ field: 'cloud' as const, unit: '%', values: place.cloud.map((tenths) => 10 * tenths) }]
      : []),
  ] as const;
  const typed = climateOfMonths({ name: 'Chicago', latitude: place.latitude, columns });

  it('give the very day of the place they were copied from', () => {
    const own = shown(job({ climatePlace: 'chicago' }));
    const found = shown(withClimate(job(), typed));
    expect(found.day?.source).toBe('typed');
    for (const name of [
      'airTemperature',
      'airSpeed',
      'skyTemperature',
      'groundTemperature',
      'mainsTemperature',
    ] as const)
      expect(found.day?.[name]).toBeCloseTo(own.day?.[name] ?? Number.NaN, 2);
    expect(found.hold).toBeCloseTo(own.hold ?? Number.NaN, -1);
    expect(found.sunLeftOut).toBeCloseTo(own.sunLeftOut ?? Number.NaN, -1);
  });

  it('ask for the month that lacks its air, and for no others', () => {
    const without = typed.filter(({ id, field }) => id !== '3' || field !== 'airTemperature');
    const { missingForLoss } = shown(withClimate(job({ climatePlace: 'chicago' }), without));
    expect(missingForLoss).toEqual(['climateMonths/3/airTemperature']);
  });

  it('of a year that cannot be name the reading', () => {
    const bright = typed.map((one) =>
      one.id === '12' && one.field === 'globalRadiation'
        ? { ...one, reading: { ...one.reading, value: 400 } }
        : one,
    );
    const year = yearOfJob(withClimate(job(), bright));
    expect(year).toMatchObject({
      state: 'impossible',
      issues: [{ where: 'climateMonths/12/globalRadiation', kind: 'heat-flux' }],
    });
    const [issue] = year.state === 'impossible' ? year.issues : [];
    expect(issue?.found).toBeCloseTo(400, 6);
  });
});

describe('the losses of the design day', () => {
  it('name walls, ground and sun, and sum to the load', () => {
    const { losses, hold = Number.NaN, day, sunLeftOut } = shown(job({ climatePlace: 'denver' }));
    expect(losses.map(({ kind }) => kind)).toEqual([
      'evaporation',
      'convection',
      'longWave',
      'makeUp',
      'ground',
      'sun',
    ]);
    expect(losses.reduce((sum, one) => sum + one.heat, 0)).toBeCloseTo(hold, 6);
    // By hand: U 0.5 W/(m2 K) of a shell in earth, floor of a slope of 5 ft in 32 ft, and the walls about it.
    const [length, width, shallow, deep] = [32, 16, 3, 8].map((feet) => feet * 0.3048) as [
      number,
      number,
      number,
      number,
    ];
    const floor = width * Math.hypot(length, deep - shallow);
    const walls = (length + width) * (shallow + deep);
    const ground = 0.5 * (floor + walls) * (300.927_777_8 - (day?.groundTemperature ?? Number.NaN));
    expect(losses.find(({ kind }) => kind === 'ground')?.heat).toBeCloseTo(ground, 3);
    expect(losses.find(({ kind }) => kind === 'sun')?.heat).toBeCloseTo(0, 9);
    expect(sunLeftOut).toBeGreaterThan(0);
  });

  it('under a roof ask for no climate, and count ground and mains where the job has one', () => {
    const hall = {
      ...POOL,
      where: 'indoors',
      airTemperature: 'measured 84 °F',
      airHumidity: 'measured 55 %',
    };
    const kinds = (site: object): ReadonlyMap<string, number> =>
      new Map(shown(job(site, { basins: [hall] })).losses.map(({ kind, heat: flow }) => [kind, flow]));
    const without = kinds({});
    expect(without.get('ground')).toBeCloseTo(0, 9);
    // Water of 82 °F made up from mains as warm as the room is a gain; Denver's mains are colder than any pool.
    expect(without.get('makeUp')).toBeLessThan(0);
    const known = kinds({ climatePlace: 'denver' });
    expect(known.get('ground')).toBeGreaterThan(0);
    expect(known.get('makeUp')).toBeGreaterThan(0);
    expect(known.get('evaporation')).toBe(without.get('evaporation'));
    expect(shown(job({ climatePlace: 'denver' }, { basins: [hall] })).sunLeftOut).toBeUndefined();
  });
});
