/** Nothing is passed over: what cannot be known says so at its reading, and what is plainly too little fails. */
import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { surveyRecords } from '../../schema/index.ts';
import { type PlainJob, plainView } from '../facts/plain-view.ts';
import { type Study, study } from './study.ts';

const TODAY = { today: '2026-11-25' };

type Survey = Record<string, unknown>;

const SITE = { country: 'US', altitude: 'measured 0 ft', singleFamily: 'yes' };
const HEATER = {
  id: 'h1',
  fuel: 'nameplate natural',
  node: 'heater',
  input: 'nameplate 137 kBtu/h',
  inletLeast: 'nameplate 6 in w.c.',
};
const SUPPLY = {
  fuel: 'told natural',
  heatingValue: 'told 1000 Btu/ft3',
  specificGravity: 'told 0.6',
  setPressure: 'measured 7 in w.c.',
  lockUpPressure: 'measured 8 in w.c.',
};
const SECTION = {
  id: 's1',
  from: 'supply',
  to: 'heater',
  material: 'steel-schedule-40',
  size: '3/4',
  length: 'measured 60 ft',
};
const POOL = {
  id: 'pool',
  use: 'pool',
  where: 'indoors',
  shape: 'rectangle',
  length: 'measured 10 m',
  width: 'measured 5 m',
  depthShallow: 'measured 1.5 m',
  cover: 'none',
  airTemperature: 'measured 28 °C',
  airHumidity: 'measured 60 %',
  setTemperature: 'told 27 °C',
  startTemperature: 'told 15 °C',
  warmUpTime: 'told 48 h',
};
const WHOLE: Survey = {
  site: SITE,
  heaters: [HEATER],
  gasSupply: SUPPLY,
  gasSegments: [SECTION],
  basins: [POOL],
};

function studyOf(changes: Survey): Study {
  const records = surveyRecords({ ...WHOLE, ...changes });
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return study(plainView(records.value as PlainJob), TODAY);
}

function finding(found: Study, rule: string) {
  const one = found.lines.flatMap((line) => line.findings).find((each) => each.rule === rule);
  if (one === undefined) throw new Error(`no finding ${rule}`);
  return one;
}

function figure(found: Study, rule: string): number {
  const { outcome } = finding(found, rule);
  return outcome !== undefined && 'found' in outcome ? outcome.found : Number.NaN;
}

describe('the place and the day', () => {
  it('without a country the rules of the codes are unknown, and ask for it', () => {
    const { country: _country, ...nowhere } = SITE;
    const found = studyOf({ site: nowhere });
    expect(finding(found, 'gas.section-capacity')).toMatchObject({
      verdict: 'unknown',
      missing: ['site/-/country'],
      checkTheBook: true,
    });
    // What the nameplate asks is asked anywhere.
    expect(finding(found, 'gas.fuel-matches').verdict).toBe('meets');
  });

  it.each(['2026-13-01', '2026-02-30', 'soon', '26-1-1'])('%s is no day: named, and today stands', (date) => {
    const found = studyOf({ job: { date } });
    expect(found.issues).toContainEqual(
      expect.objectContaining({ where: 'job/-/date', code: 'not-understood', found: date }),
    );
    expect(found.profile.date).toBe(TODAY.today);
  });

  it('a leap day is a day', () => {
    expect(studyOf({ job: { date: '2028-02-29' } }).profile.date).toBe('2028-02-29');
  });
});

describe('a ±', () => {
  it.each([
    [-3, 'plus-minus-below-zero'],
    ['wide', 'plus-minus-unclear'],
  ])('of %s is an issue on its reading', (pm, reason) => {
    const length = { value: 60, unit: 'ft', how: 'measured', pm };
    const found = studyOf({ gasSegments: [{ ...SECTION, length }] });
    expect(found.issues).toContainEqual(expect.objectContaining({ where: 'gasSegments/s1/length', reason }));
    expect(finding(found, 'gas.section-capacity').verdict).toBe('unknown');
  });

  it('below zero is refused where a survey is read', () => {
    const records = surveyRecords({ gasSegments: [{ ...SECTION, length: 'measured 60 ft ± -1 ft' }] });
    expect(records.ok ? '' : records.issues[0]?.reason).toBe('plus-minus-below-zero');
  });
});

describe('a basin', () => {
  it('warmed by a heater that is not there names it, and its time is unknown', () => {
    const found = studyOf({ basins: [{ ...POOL, heatedBy: 'h9' }] });
    expect(found.issues).toContainEqual(
      expect.objectContaining({ where: 'basins/pool/heatedBy', found: 'h9', expected: ['h1'] }),
    );
    expect(finding(found, 'heat.warm-in-time').verdict).toBe('unknown');
  });

  it('whose only heater leaves waits for the one that stays', () => {
    const found = studyOf({ heaters: [{ ...HEATER, planned: 'no' }] });
    expect(finding(found, 'heat.warm-in-time')).toMatchObject({
      verdict: 'unknown',
      missing: ['heaters/h1/planned'],
    });
    expect(finding(found, 'heat.hold-temperature').verdict).toBe('unknown');
  });

  it('is as warm in time by the heater it names as by the only one there is', () => {
    const named = studyOf({ basins: [{ ...POOL, heatedBy: 'h1' }] });
    expect(figure(named, 'heat.warm-in-time')).toBe(figure(studyOf({}), 'heat.warm-in-time'));
  });
});

describe('gas', () => {
  it('a section that loses all its pressure leaves none, and the sections are judged as before', () => {
    const found = studyOf({ gasSegments: [{ ...SECTION, size: '3/8', length: 'measured 3000 ft' }] });
    expect(finding(found, 'gas.code-pressure').verdict).toBe('fails');
    expect(figure(found, 'gas.code-pressure')).toBe(0);
    expect(finding(found, 'gas.section-capacity').verdict).toBe('fails');
    expect(found.issues).toContainEqual(
      expect.objectContaining({ where: 'gasSegments/s1/size', reason: 'outlet-below-atmosphere' }),
    );
  });

  // From memory, a note to the code's tables of corrugated tubing: 1.3 ft for each bend or fitting beyond four.
  it('bends of corrugated tubing beyond four count as 1.3 ft each', () => {
    const tube = { ...SECTION, material: 'csst', size: 'EHD 37', length: 'measured 30 ft' };
    const bent = (count: number) => studyOf({ gasSegments: [{ ...tube, fittings: { 'elbow-90': count } }] });
    const longer = studyOf({ gasSegments: [{ ...tube, length: 'measured 43 ft' }] });
    for (const rule of ['gas.section-capacity', 'gas.code-pressure', 'gas.burner-pressure-running']) {
      expect(figure(bent(4), rule)).toBe(figure(studyOf({ gasSegments: [tube] }), rule));
      expect(figure(bent(14), rule) / figure(longer, rule)).toBeCloseTo(1, 9);
    }
  });

  it('a junction that nothing leads to is named at what hangs on it', () => {
    const found = studyOf({ heaters: [{ ...HEATER, node: 'elsewhere' }] });
    expect(finding(found, 'gas.burner-pressure-running').missing).toEqual(['heaters/h1/node']);
  });

  it('propane in colder air than the trade’s rule knows has nothing to count on', () => {
    const tank = {
      ...SUPPLY,
      fuel: 'told propane',
      tankDiameter: 'measured 37 in',
      tankLength: 'measured 120 in',
      tankFill: 'told 30 %',
    };
    const at = (winterTemperature: string, fill = 'told 30 %') =>
      studyOf({ site: { ...SITE, winterTemperature }, gasSupply: { ...tank, tankFill: fill } });
    // D·L·K·(1 + t/20) = 37·120·70·0.5 at −10 °F, the trade's rule, from memory.
    const watts = (quantity.BTU / quantity.HOUR) * 37 * 120 * 70 * 0.5;
    expect(figure(at('told -10 °F'), 'gas.tank-vaporisation') / watts).toBeCloseTo(1, 9);
    expect(finding(at('told -35 °C'), 'gas.tank-vaporisation').verdict).toBe('fails');
    expect(figure(at('told -35 °C'), 'gas.tank-vaporisation')).toBeCloseTo(0, 6);
    expect(finding(at('told 60 °F'), 'gas.tank-vaporisation').missing).toEqual(['site/-/winterTemperature']);
    expect(finding(at('told 0 °F', 'told 5 %'), 'gas.tank-vaporisation').missing).toEqual([
      'gasSupply/-/tankFill',
    ]);
  });

  it('a height beyond the code’s zone is named at the site', () => {
    const found = studyOf({ site: { ...SITE, country: 'CA', altitude: 'measured 5000 ft' } });
    expect(finding(found, 'heat.hold-temperature').missing).toEqual(['site/-/altitude']);
  });
});
