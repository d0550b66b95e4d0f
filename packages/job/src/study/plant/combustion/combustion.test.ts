import { describe, expect, it } from 'vitest';
import { workingOf } from '../../findings/working.ts';
import { findingOf, LOOP, type Survey, studyOf, viewOf, withFields } from '../water/example-loop.ts';

type Fields = Readonly<Record<string, unknown>>;

const TEST = {
  id: 'f1',
  heater: 'h1',
  oxygen: 'measured 5 %',
  carbonMonoxide: 'measured 20 ppm',
  stackTemperature: 'measured 320 °F',
  airTemperature: 'measured 70 °F',
};

function lit(fields: Fields, heater: Fields = {}): Survey {
  const plated = withFields(LOOP, 'heaters/h1', { venting: 'fan-assisted', ...heater });
  const started = { ...plated, job: { stage: 'start-up' }, flueTests: [TEST] };
  return withFields(started, 'flueTests/f1', fields);
}

const verdict = (survey: Survey, rule: string): string => findingOf(studyOf(survey), rule).verdict;

describe('the flue test of a heater', () => {
  // COaf = CO·20.9/(20.9 − O2): at 5 % oxygen 304.3 ppm make 400, 76.1 make 100.
  it.each([
    ['air.co-air-free', { carbonMonoxide: 'measured 305 ppm' }, 'fails'],
    ['air.co-air-free', { carbonMonoxide: 'measured 303 ppm' }, 'tight'],
    ['air.co-air-free', { carbonMonoxide: 'measured 77 ppm' }, 'tight'],
    ['air.co-air-free', { carbonMonoxide: 'measured 75 ppm' }, 'meets'],
    ['air.flue-oxygen', { oxygen: 'measured 3.9 %' }, 'fails'],
    ['air.flue-oxygen', { oxygen: 'measured 4 %' }, 'meets'],
    ['air.flue-oxygen', { oxygen: 'measured 9.1 %' }, 'fails'],
    ['air.flue-dry', {}, 'meets'],
    ['air.flue-dry', { stackTemperature: 'measured 125 °F' }, 'fails'],
    ['air.flue-dry', { stackTemperature: 'measured 135 °F' }, 'tight'],
    ['air.flue-loss', {}, 'meets'],
    ['air.flue-loss', { stackTemperature: 'measured 520 °F' }, 'fails'],
  ])('%s with %j %s', (rule, fields, expected) => {
    expect(verdict(lit(fields), rule)).toBe(expected);
  });

  it('stops all work over the limit', () => {
    expect(findingOf(studyOf(lit({ carbonMonoxide: 'measured 500 ppm' })), 'air.co-air-free').stops).toBe(
      true,
    );
  });

  it('expects more oxygen under a draught hood, and no dry flue where it condenses', () => {
    expect(verdict(lit({ oxygen: 'measured 11 %' }), 'air.flue-oxygen')).toBe('fails');
    expect(verdict(lit({ oxygen: 'measured 11 %' }, { venting: 'atmospheric' }), 'air.flue-oxygen')).toBe(
      'meets',
    );
    expect(verdict(lit({}, { venting: 'condensing' }), 'air.flue-dry')).toBe('does not apply');
  });

  // Balance of methane: 28.1 % excess air holds 5.02 % oxygen and 8.9 % carbon dioxide.
  it('goes by carbon dioxide where only that was read', () => {
    const survey = lit({ oxygen: undefined, carbonDioxide: 'measured 8.9 %' });
    expect(findingOf(studyOf(survey), 'air.flue-oxygen').outcome).toMatchObject({
      found: expect.closeTo(0.0502, 3),
    });
    expect(verdict(survey, 'air.flue-loss')).toBe('meets');
  });

  it('with more carbon dioxide than the fuel can give is an issue on that reading', () => {
    const study = studyOf(lit({ oxygen: undefined, carbonDioxide: 'measured 13 %' }));
    expect(findingOf(study, 'air.flue-loss').verdict).toBe('unknown');
    expect(study.issues).toContainEqual(
      expect.objectContaining({ where: 'flueTests/f1/carbonDioxide', reason: 'rich-flame' }),
    );
  });

  it('is asked for once the heater can be lit, and not before', () => {
    const none = { ...lit({}), flueTests: [] };
    expect(findingOf(studyOf(none), 'air.co-air-free').missing).toContain('flueTests/of-h1/oxygen');
    expect(verdict({ ...none, job: { stage: 'plan' } }, 'air.co-air-free')).toBe('does not apply');
  });

  it('shows its working', () => {
    const working = workingOf(viewOf(lit({})), 'air.flue-loss@h1', { today: '2026-11-25' });
    expect(JSON.stringify(working)).toContain('combustion.gross-efficiency');
  });
});
