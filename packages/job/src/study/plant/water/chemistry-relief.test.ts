import { describe, expect, it } from 'vitest';
import { workingOf } from '../../findings/working.ts';
import { findingOf, LOOP, type Survey, studyOf, viewOf, withFields } from './example-loop.ts';

const KIT = {
  id: 't1',
  ph: 'measured 7.6',
  calcium: 'measured 300 ppm',
  alkalinity: 'measured 75 ppm',
  dissolvedSolids: 'measured 800 ppm',
  cyanuricAcid: 'measured 0 ppm',
  freeChlorine: 'measured 2.5 ppm',
};

type Fields = Readonly<Record<string, unknown>>;

function sampled(fields: Fields, basin: Fields = {}): Survey {
  const warm = withFields(LOOP, 'waterLoop/-', { waterTemperature: 'measured 84 °F' });
  const kit = withFields({ ...warm, waterTests: [KIT] }, 'waterTests/t1', fields);
  return withFields(kit, 'basins/pool', basin);
}

const verdict = (survey: Survey, rule: string): string => findingOf(studyOf(survey), rule).verdict;

describe('the saturation index of a basin', () => {
  // Pool operator course, second sample problem: pH 7.6, 84 °F, 300 and 75 mg/L → 0.2.
  it('is that of the worked example', () => {
    const { outcome } = findingOf(studyOf(sampled({})), 'water.saturation-index');
    expect(outcome).toMatchObject({ sense: 'within', found: expect.closeTo(0.2, 9) });
  });

  it.each([
    ['measured 7.09', 'fails'],
    ['measured 7.11', 'tight'],
    ['measured 7.5', 'meets'],
    ['measured 7.89', 'tight'],
    ['measured 7.91', 'fails'],
  ])('at pH %s %s', (ph, expected) => {
    expect(verdict(sampled({ ph }), 'water.saturation-index')).toBe(expected);
  });

  it('names what is missing, and says what it assumed', () => {
    const finding = findingOf(
      studyOf(sampled({ calcium: undefined, dissolvedSolids: undefined })),
      'water.saturation-index',
    );
    expect(finding.missing).toEqual(['waterTests/t1/calcium']);
    const assumed = findingOf(studyOf(sampled({ dissolvedSolids: undefined })), 'water.saturation-index');
    expect(assumed.assumed).toContain('waterTests/t1/dissolvedSolids');
  });

  it('asks for a test where none was taken', () => {
    expect(findingOf(studyOf(LOOP), 'water.ph').missing).toEqual(['waterTests/of-pool/ph']);
  });

  it('of a misread sample is an issue on the reading, and the rest is still judged', () => {
    const survey = sampled({ cyanuricAcid: 'measured 400 ppm' });
    const study = studyOf(survey);
    expect(findingOf(study, 'water.saturation-index').verdict).toBe('unknown');
    expect(study.issues).toContainEqual(
      expect.objectContaining({ where: 'waterTests/t1/alkalinity', reason: 'cyanurate-above-alkalinity' }),
    );
    expect(findingOf(study, 'water.ph').verdict).toBe('meets');
  });

  it('shows its working down to the factors', () => {
    const working = workingOf(viewOf(sampled({})), 'water.saturation-index@pool', { today: '2026-11-25' });
    const steps = JSON.stringify(working);
    expect(steps).toContain('chemistry.table-index');
    expect(steps).toContain('chemistry.hardness-factor');
  });

  it('follows the newest sample', () => {
    const survey = sampled({});
    const later = {
      ...survey,
      waterTests: [KIT, { ...KIT, id: 't2', ph: 'measured 8.4' }],
    };
    expect(verdict(later, 'water.ph')).toBe('fails');
  });
});

describe('what the water holds', () => {
  it.each([
    ['water.ph', { ph: 'measured 7.19' }, 'fails'],
    ['water.ph', { ph: 'measured 7.2' }, 'tight'],
    ['water.ph', { ph: 'measured 7.81' }, 'fails'],
    ['water.calcium-hardness', { calcium: 'measured 149 ppm' }, 'fails'],
    ['water.calcium-hardness', { calcium: 'measured 151 ppm' }, 'tight'],
    ['water.calcium-hardness', { calcium: 'measured 1001 ppm' }, 'fails'],
    ['water.total-alkalinity', { alkalinity: 'measured 59 ppm' }, 'fails'],
    ['water.total-alkalinity', { alkalinity: 'measured 61 ppm' }, 'tight'],
    ['water.total-alkalinity', { alkalinity: 'measured 181 ppm' }, 'fails'],
    ['water.cyanuric-acid', { cyanuricAcid: 'measured 101 ppm' }, 'fails'],
    ['water.cyanuric-acid', { cyanuricAcid: 'measured 95 ppm' }, 'tight'],
    ['water.cyanuric-acid', { cyanuricAcid: 'measured 50 ppm' }, 'meets'],
    ['water.free-chlorine', { freeChlorine: 'measured 0.9 ppm' }, 'fails'],
    ['water.free-chlorine', { freeChlorine: 'measured 4.1 ppm' }, 'fails'],
  ])('%s with %j %s', (rule, fields, expected) => {
    expect(verdict(sampled(fields), rule)).toBe(expected);
  });

  it('is judged by another band in a spa', () => {
    const soft = { calcium: 'measured 120 ppm' };
    expect(verdict(sampled(soft), 'water.calcium-hardness')).toBe('fails');
    expect(verdict(sampled(soft, { use: 'spa' }), 'water.calcium-hardness')).toBe('tight');
  });
});

const VALVE = {
  reliefAsked: 'nameplate no',
  isolated: 'measured no',
  reliefValve: 'measured yes',
  reliefSet: 'nameplate 50 psi',
  reliefCapacity: 'nameplate 400 kBtu/h',
  reliefDischarge: 'measured yes',
  reliefDischargeHeight: 'measured 12 in',
};

function valved(fields: Fields, loop: Fields = { checkValve: 'yes' }): Survey {
  return withFields(withFields(LOOP, 'heaters/h1', { ...VALVE, ...fields }), 'waterLoop/-', loop);
}

describe('the relief valve', () => {
  it.each([
    ['water.relief-valve', { reliefValve: 'measured no' }, 'fails'],
    ['water.relief-valve', {}, 'meets'],
    ['water.relief-setting', { reliefSet: 'nameplate 50.1 psi' }, 'fails'],
    ['water.relief-setting', { reliefSet: 'nameplate 50 psi' }, 'meets'],
    ['water.relief-setting', { reliefSet: 'nameplate 30 psi' }, 'meets'],
    ['water.relief-capacity', { reliefCapacity: 'nameplate 399 kBtu/h' }, 'fails'],
    ['water.relief-capacity', { reliefCapacity: 'nameplate 400 kBtu/h' }, 'meets'],
    ['water.relief-discharge', { reliefDischarge: 'measured no' }, 'fails'],
    ['water.relief-discharge-end', { reliefDischargeHeight: 'measured 18.1 in' }, 'fails'],
    ['water.relief-discharge-end', { reliefDischargeHeight: 'measured 17.9 in' }, 'tight'],
    ['water.relief-discharge-end', {}, 'meets'],
  ])('%s with %j %s', (rule, fields, expected) => {
    expect(verdict(valved(fields), rule)).toBe(expected);
  });

  // HAR 12-223.1-9 and 12 NYCRR 4-5.3(a): a pound of steam an hour for 1000 Btu/h.
  it('counts the steam on its tag', () => {
    const steam = (tag: string) => valved({ reliefCapacity: undefined, reliefSteam: tag });
    expect(verdict(steam('nameplate 400 lb/h'), 'water.relief-capacity')).toBe('meets');
    expect(verdict(steam('nameplate 399 lb/h'), 'water.relief-capacity')).toBe('fails');
  });

  it('is asked for by the plate, by valves around the heater or by a check valve, else not at all', () => {
    const bare = { reliefValve: 'measured no' };
    const free = { checkValve: 'no' };
    expect(verdict(valved(bare, free), 'water.relief-valve')).toBe('does not apply');
    expect(verdict(valved({ ...bare, isolated: 'measured yes' }, free), 'water.relief-valve')).toBe('fails');
    expect(verdict(valved({ ...bare, reliefAsked: 'nameplate yes' }, free), 'water.relief-valve')).toBe(
      'fails',
    );
    const unread = findingOf(studyOf(valved({ ...bare, isolated: undefined }, free)), 'water.relief-valve');
    expect(unread.missing).toEqual(['heaters/h1/isolated']);
  });

  it('that is not there has no setting to judge', () => {
    for (const rule of ['water.relief-setting', 'water.relief-capacity', 'water.relief-discharge'])
      expect(verdict(valved({ reliefValve: 'measured no' }), rule)).toBe('does not apply');
  });
});
