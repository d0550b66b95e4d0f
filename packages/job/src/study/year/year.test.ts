import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { surveyRecords } from '../../schema/index.ts';
import { type PlainJob, plainView } from '../facts/plain-view.ts';
import { type YearOfUse, type YearStudy, yearOfJob } from './year.ts';

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
  cover: 'told bubble',
  coverHours: 'told 12 h',
  seasonFirst: '4',
  seasonLast: '10',
};

const JOB = {
  site: { country: 'US', altitude: 'measured 1000 ft', climatePlace: 'atlanta', wind: 'told garden' },
  heaters: [
    {
      id: 'h1',
      fuel: 'nameplate natural',
      node: 'heater',
      input: 'nameplate 400 kBtu/h',
      efficiency: 'nameplate 80 %',
    },
  ],
  gasSupply: { fuel: 'told natural', price: 'told 1.00 per therm' },
};

function yearOfSurvey(survey: object): YearStudy {
  // As a file holds it: what is undefined is not there.
  const records = surveyRecords(JSON.parse(JSON.stringify(survey)));
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return yearOfJob(plainView(records.value as PlainJob));
}

function yearWith(pool: object, site: object = {}): YearStudy {
  return yearOfSurvey({ ...JOB, site: { ...JOB.site, ...site }, basins: [{ ...POOL, ...pool }] });
}

function known(study: YearStudy) {
  const basin = study.state === 'known' ? study.basins[0] : undefined;
  if (basin === undefined) throw new Error(JSON.stringify(study));
  return basin;
}

const fuelOf = ({ answer }: YearOfUse): number => answer.fuel.reduce((a, b) => a + b, 0);

describe('a year of a job', () => {
  const plain = known(yearWith({}));

  it('closes its books to round-off', () => {
    const [basin] = plain.covered.answer.basins;
    const moved = (basin?.flows.heater ?? []).reduce((a, b) => a + b, 0);
    expect(Math.abs(basin?.imbalance ?? Number.NaN)).toBeLessThan(1e-9 * moved);
  });

  it('costs its fuel at the price told, and gives off what 40 CFR 98 says of natural gas', () => {
    const therms = fuelOf(plain.bare) / 105_505_585.262;
    expect(plain.bare.cost?.total).toBeCloseTo(therms, 6);
    // 53.06 kg a million Btu: 40 CFR 98 Subpart C, Table C-1.
    expect(plain.bare.cost?.carbonDioxide).toBeCloseTo((therms / 10) * 53.06, 3);
  });

  it('needs less fuel under a cover at night, with a set-back, and at weekends only', () => {
    expect(fuelOf(plain.covered)).toBeLessThan(fuelOf(plain.bare));
    const setBack = known(
      yearWith({ setBackTemperature: 'told 76 °F', setBackFrom: 'told 20 h', setBackTo: 'told 6 h' }),
    );
    expect(fuelOf(setBack.bare)).toBeLessThanOrEqual(fuelOf(plain.bare));
    expect(fuelOf(known(yearWith({ days: 'told weekends' })).bare)).toBeLessThan(fuelOf(plain.bare));
  });

  it('names what is missing: of a set-back its hours too', () => {
    expect(yearWith({ setTemperature: undefined, setBackTemperature: 'told 76 °F' })).toMatchObject({
      state: 'unknown',
      missing: expect.arrayContaining(['basins/pool/setTemperature', 'basins/pool/setBackFrom']),
    });
  });

  it('refuses a place that is not on the list, with those that are', () => {
    const study = yearWith({}, { climatePlace: 'atlantis' });
    expect(study.state === 'impossible' ? study.issues[0]?.expected : []).toContain('atlanta');
  });

  it('takes weather of its own in place of the list', () => {
    const place = catalog.climate.PLACES.find((one) => one.id === 'miami');
    const hours = place && heat.hourlyWeather(catalog.climate.normalsOf(place));
    if (!hours?.ok) throw new Error('no weather');
    const { climatePlace: _none, ...site } = JOB.site;
    const records = surveyRecords({ ...JOB, site, basins: [POOL] });
    if (!records.ok) throw new Error('survey');
    const view = plainView(records.value as PlainJob);
    expect(yearOfJob(view).state).toBe('unknown');
    const warm = known(yearOfJob(view, { weather: { hours: hours.value, name: 'Miami' } }));
    expect(fuelOf(warm.bare)).toBeLessThan(fuelOf(plain.bare));
  });
});

const sum = (values: readonly number[] = []): number => values.reduce((a, b) => a + b, 0);

describe('the heaters of a year', () => {
  const [h1] = JOB.heaters;

  it('count by the heat they give', () => {
    const small = { ...h1, id: 'h2', input: 'nameplate 100 kBtu/h', efficiency: 'nameplate 90 %' };
    const { answer } = known(yearOfSurvey({ ...JOB, heaters: [h1, small], basins: [POOL] })).bare;
    // 400·80 % and 100·90 % make 410 of 500: 82 %.
    expect(sum(answer.basins[0]?.flows.heater) / sum(answer.fuel)).toBeCloseTo(0.82, 9);
  });

  it('draw volts times amperes while they fire, at the price told', () => {
    const fan = { ...h1, volts: 'nameplate 240 V', amperes: 'nameplate 3 A' };
    const waterLoop = { electricityPrice: 'told 0.14 per kWh' };
    const { answer, cost } = known(yearOfSurvey({ ...JOB, heaters: [fan], waterLoop, basins: [POOL] })).bare;
    // 400 kBtu/h is 4 therms an hour.
    const hours = sum(answer.fuel) / (4 * 105_505_585.262);
    expect(cost?.electricity?.total).toBeCloseTo(hours * 0.72 * 0.14, 4);
    expect(cost?.total).toBeCloseTo((cost?.fuel.total ?? 0) + hours * 0.72 * 0.14, 4);
    const unpriced = known(yearOfSurvey({ ...JOB, heaters: [fan], basins: [POOL] })).bare;
    expect(unpriced.cost?.electricity).toBeUndefined();
  });
});

const SPA = {
  ...POOL,
  id: 'spa',
  shape: 'round',
  length: 'measured 7 ft',
  width: undefined,
  depthShallow: 'measured 3 ft',
  depthDeep: 'measured 3 ft',
  seasonFirst: '5',
  seasonLast: '9',
  spillway: 'pool',
};
const SPILL = { spillwayFlow: 'measured 30 gpm', spillwayFrom: 'told 10 h', spillwayTo: 'told 16 h' };

function withSpa(spa: object, pool: object = {}): YearStudy {
  return yearOfSurvey({
    ...JOB,
    basins: [
      { ...POOL, ...pool },
      { ...SPA, ...spa },
    ],
  });
}

describe('a spa that spills into a pool', () => {
  const hot = known(withSpa({ ...SPILL, setTemperature: 'told 100 °F' }));

  it('is marched with it, has the heat first, and the books of both close', () => {
    expect(hot.names.map(({ id }) => id)).toEqual(['spa', 'pool']);
    expect(hot.notes).toEqual(['trades-water']);
    for (const { imbalance, flows } of hot.bare.answer.basins)
      expect(Math.abs(imbalance)).toBeLessThan(1e-9 * sum(flows.heater));
  });

  it('carries its heat into the pool, which needs less of its own', () => {
    const apart = withSpa({ setTemperature: 'told 100 °F' });
    const [pool, spa] = apart.state === 'known' ? apart.basins : [];
    expect(pool?.notes).toEqual(['shares-heaters']);
    expect(spa?.notes).toEqual(['shares-heaters', 'spillway-not-counted']);
    const heatOf = (use: YearOfUse | undefined, i: number): number =>
      sum(use?.answer.basins[i]?.flows.heater);
    expect(heatOf(hot.bare, 0)).toBeGreaterThan(heatOf(spa?.bare, 0));
    expect(heatOf(hot.bare, 1)).toBeLessThan(heatOf(pool?.bare, 0));
  });

  it('stands over the pool by no more than the heater can feed while much water runs, and at its own set point before', () => {
    const flow = { spillwayFlow: 'measured 1500 gpm', setTemperature: 'told 100 °F' };
    const { answer } = known(withSpa({ ...SPILL, ...flow })).bare;
    const [spa, pool] = answer.basins.map(({ waterTemperature }) => waterTemperature);
    const over = (day: number, hour: number): number =>
      (spa?.[24 * day + hour] ?? 0) - (pool?.[24 * day + hour] ?? 0);
    // 1500 gpm is 0.0946 m3/s, 392 kW/K of water at 4.14 MJ/(m3 K); the heater gives 93.8 kW, the sun 3 kW at most.
    for (let day = 130; day < 270; day++) expect(over(day, 14)).toBeLessThan(97 / 392);
    // 100 °F; an hour holds its set point within half a kelvin.
    for (let day = 130; day < 270; day++) expect(spa?.[24 * day + 9]).toBeGreaterThan(310.93 - 0.5);
  });

  it('needs its hours with its flow, and a basin to spill into', () => {
    expect(withSpa({ spillwayFlow: 'measured 30 gpm' })).toMatchObject({
      state: 'unknown',
      missing: ['basins/spa/spillwayFrom', 'basins/spa/spillwayTo'],
    });
    expect(withSpa({ spillway: 'pond' })).toMatchObject({
      state: 'impossible',
      issues: [{ where: 'basins/spa/spillway', found: 'pond', expected: ['pool'] }],
    });
  });
});
