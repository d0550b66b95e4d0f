/** Code rules on the readings of a whole job: what is asked, what the readings together say, what stands in the place. */
import { describe, expect, it } from 'vitest';
import { surveyRecords } from '../../../schema/index.ts';
import { type PlainJob, plainView } from '../../facts/plain-view.ts';
import { type Study, study } from '../../findings/study.ts';

const SITE = { country: 'US', region: 'CO', altitude: 'measured 0 ft', singleFamily: 'yes' };
const HEATER = {
  id: 'h1',
  fuel: 'nameplate natural',
  node: 'heater',
  input: 'nameplate 150 kBtu/h',
  efficiency: 'nameplate 80 %',
  pressureGreatest: 'nameplate 50 psi',
};
const SECTION = {
  id: 's1',
  from: 'supply',
  to: 'heater',
  material: 'steel-schedule-40',
  size: '3/4',
  length: 'measured 60 ft',
};

type Part = Record<string, unknown>;

function studyOf({
  job = {},
  site = {},
  heater = {},
  section = {},
  supply = {},
  ...rest
}: Record<string, Part | Part[]>): Study {
  const records = surveyRecords({
    job,
    site: { ...SITE, ...site },
    heaters: [{ ...HEATER, ...heater }],
    gasSupply: { fuel: 'told natural', lockUpPressure: 'measured 8 in w.c.', ...supply },
    gasSegments: Array.isArray(section) ? section : [{ ...SECTION, ...section }],
    ...rest,
  });
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return study(plainView(records.value as PlainJob), { today: '2026-11-25', uncertainty: false });
}

function finding(found: Study, rule: string) {
  return found.lines.flatMap((line) => line.findings).find((one) => one.rule === rule);
}

describe('the gas piping as one system', () => {
  it.each([
    [{ material: 'csst', size: 'EHD 19' }, {}, 'unknown'],
    [{ material: 'csst', size: 'EHD 19' }, { csstBonded: 'measured no' }, 'fails'],
    [{}, {}, 'does not apply'],
  ])('asks for a bond where tubing is corrugated: %j %j', (section, supply, verdict) => {
    expect(finding(studyOf({ section, supply }), 'gas.csst-bonded')?.verdict).toBe(verdict);
  });

  // Table 406.7.1.1: 2-1/2 in over 50 ft, 4 in over 15 ft; any size over 2 psi.
  it.each([
    [{ size: '2-1/2', length: 'measured 49 ft' }, {}, 'meets'],
    [{ size: '2-1/2', length: 'measured 51 ft' }, {}, 'fails'],
    [{ size: '4', length: 'measured 16 ft' }, {}, 'fails'],
    [{ size: '3/4' }, { lockUpPressure: 'measured 2.1 psi' }, 'fails'],
  ])('is large or small by the purge table: %j %j', (section, supply, verdict) => {
    const found = studyOf({ section, supply: { ...supply, purgeWay: 'drawing through a burner' } });
    expect(finding(found, 'gas.purge-where')?.verdict).toBe(verdict);
  });

  it('in Canada goes by NPS 4, and its test by 60 m of what is laid', () => {
    const at = (section: Part | Part[]) =>
      studyOf({
        site: { country: 'CA', region: 'ON' },
        section,
        supply: {
          purgeWay: 'drawing through a burner',
          testPressure: 'drawing 100 kPa',
          testDuration: 'drawing 15 min',
        },
      });
    expect(finding(at({ size: '3', length: 'measured 59 m' }), 'gas.purge-where')?.verdict).toBe('meets');
    expect(finding(at({ size: '4', length: 'measured 1 m' }), 'gas.purge-where')?.verdict).toBe('fails');
    expect(finding(at({ length: 'measured 59 m' }), 'gas.test-duration')?.verdict).toBe('meets');
    expect(finding(at({ length: 'measured 61 m' }), 'gas.test-duration')?.verdict).toBe('fails');
    const old = { ...SECTION, id: 's0', to: 'a', length: 'measured 70 m', planned: 'no' };
    const two = [old, { ...SECTION, from: 'a', length: 'measured 5 m', planned: 'yes' }];
    expect(finding(at(two), 'gas.test-duration')?.verdict).toBe('meets');
  });

  it('asks depth of what is laid, and risers and tracer of polyethylene alone', () => {
    const buried = { where: 'drawing underground', cover: 'drawing 12 in' };
    expect(finding(studyOf({ section: buried }), 'gas.burial-depth')?.verdict).toMatch(/meets|tight/);
    expect(finding(studyOf({ section: { ...buried, planned: 'no' } }), 'gas.burial-depth')).toBeUndefined();
    expect(finding(studyOf({ section: buried }), 'gas.tracer')).toBeUndefined();
    const plastic = { ...buried, material: 'polyethylene' };
    expect(finding(studyOf({ section: plastic }), 'gas.tracer')?.verdict).toBe('unknown');
    const bare = { ...plastic, tracer: 'measured no' };
    expect(finding(studyOf({ section: bare }), 'gas.tracer')?.verdict).toBe('fails');
  });
});

describe('the month a heater was made', () => {
  // 10 CFR 430.32(k), from memory: 82 % from 16 April 2013, 78 % before.
  it.each([
    ['2013-04', 'meets'],
    ['2013-04-16', 'fails'],
    ['2013-05', 'fails'],
    ['1989-12', 'does not apply'],
  ])('%s', (made, verdict) => {
    expect(finding(studyOf({ heater: { made } }), 'heat.efficiency-least')?.verdict).toBe(verdict);
  });

  it.each(['2013', '2013-13', 'last year'])('%s is none, and is named', (made) => {
    const found = studyOf({ heater: { made } });
    expect(found.issues).toContainEqual(
      expect.objectContaining({ where: 'heaters/h1/made', found: made, reason: 'month-expected' }),
    );
    expect(finding(found, 'heat.efficiency-least')?.verdict).toBe('unknown');
  });
});

describe('what is asked for by place and by kind of job', () => {
  it('a small heater is no boiler, and the limit is told; a large one asks for the paper', () => {
    expect(finding(studyOf({}), 'water.boiler-inspection')).toMatchObject({
      verdict: 'does not apply',
      outcome: { because: { reason: 'boiler-below', figures: { kind: 'heat-rate' } } },
    });
    const large = studyOf({ heater: { input: 'nameplate 201 kBtu/h' } });
    expect(finding(large, 'water.boiler-inspection')?.missing).toEqual(['job/-/permitBoiler']);
  });

  it('energy and boiler laws of the United States are not asked in Canada', () => {
    const canada = studyOf({ site: { country: 'CA', region: 'ON' } });
    for (const rule of ['heat.no-pilot', 'heat.efficiency-least', 'water.boiler-inspection'])
      expect(finding(canada, rule), rule).toBeUndefined();
    expect(canada.profile.uncovered).toEqual(
      expect.arrayContaining(['energy', 'appliance efficiency', 'boiler']),
    );
  });

  it('a repair asks for no permit unless one was entered', () => {
    expect(finding(studyOf({ job: { kind: 'service' } }), 'gas.permit')?.verdict).toBe('does not apply');
    const said = { kind: 'service', permitGas: 'told not asked' };
    expect(finding(studyOf({ job: said }), 'gas.permit')?.verdict).toBe('fails');
  });

  it('California asks from 2026 on for another source of heat at a new pool', () => {
    const at = (date: string) =>
      studyOf({
        job: { kind: 'new', date },
        site: { region: 'CA' },
        basins: [{ id: 'p', where: 'outdoors', otherHeat: 'told 0 %' }],
      });
    expect(finding(at('2025-12-31'), 'heat.primary-source')).toBeUndefined();
    expect(finding(at('2026-01-01'), 'heat.primary-source')?.verdict).toBe('fails');
  });
});

describe('a local amendment of a job', () => {
  const amended = (fields: Part, section: Part = { where: 'drawing underground', cover: 'drawing 15 in' }) =>
    studyOf({
      section,
      amendments: [{ id: 'a1', rule: 'gas.burial-depth', citation: 'Town code 15.08', ...fields }],
    });

  it('stands in the place of the edition’s figure', () => {
    expect(finding(amended({}), 'gas.burial-depth')?.verdict).toBe('meets');
    expect(finding(amended({ required: '18 in' }), 'gas.burial-depth')).toMatchObject({
      verdict: 'fails',
      source: { document: 'Town code 15.08', known: 'local amendment, as entered' },
    });
    expect(finding(amended({ asked: 'no' }), 'gas.burial-depth')?.verdict).toBe('does not apply');
  });

  it.each([
    [{ rule: 'gas.nothing' }, 'amendments/a1/rule', 'no-such-rule'],
    [{ required: '18 psi' }, 'amendments/a1/required', undefined],
    [{ citation: undefined }, 'amendments/a1/citation', 'amendment-incomplete'],
  ])('%j is an issue in its place, and changes nothing', (fields, where, reason) => {
    const given = Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
    const base = { id: 'a1', rule: 'gas.burial-depth', citation: 'Town code 15.08', ...given };
    const { citation, ...bare } = base;
    const one = 'citation' in fields ? bare : { ...bare, citation };
    const found = studyOf({
      section: { where: 'drawing underground', cover: 'drawing 15 in' },
      amendments: [one],
    });
    expect(found.issues.filter((issue) => issue.where === where)).toEqual([
      expect.objectContaining(reason === undefined ? {} : { reason }),
    ]);
    expect(finding(found, 'gas.burial-depth')).toMatchObject({ edition: 'IFGC 2018' });
  });
});
