import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { surveyRecords } from '../schema/index.ts';
import { type PlainJob, plainView } from './facts/plain-view.ts';
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

function yearWith(pool: object, site: object = {}): YearStudy {
  const survey = { ...JOB, site: { ...JOB.site, ...site }, basins: [{ ...POOL, ...pool }] };
  // As a file holds it: what is undefined is not there.
  const records = surveyRecords(JSON.parse(JSON.stringify(survey)));
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return yearOfJob(plainView(records.value as PlainJob));
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
