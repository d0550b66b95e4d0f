import { describe, expect, it } from 'vitest';
import { findingOf, LOOP, type Survey, studyOf, withFields } from './example-loop.ts';

describe('what is missing leaves the rest known', () => {
  const known = (survey: Survey, rule: string, subject?: string) =>
    findingOf(studyOf(survey), rule, subject).verdict !== 'unknown';
  const missing = (survey: Survey, rule: string, subject?: string) =>
    findingOf(studyOf(survey), rule, subject).missing;

  it.each([
    ['filters/f1', 'dirtyRise', 'water.heater-flow', 'h1 high dirty', 'water.heater-flow', 'h1 high clean'],
    ['pumpSpeeds/low', 'speed', 'water.heater-flow', 'h1 low clean', 'water.heater-flow', 'h1 high clean'],
    ['waterLoop/-', 'bypassOpening', 'water.heater-flow', 'h1 high clean', 'water.bypass-range', '-'],
    ['heaters/h1', 'flowLeast', 'water.bypass-range', '-', 'water.pipe-velocity', 'back'],
    ['heaters/h1', 'switchKind', 'water.switch-window', 'h1', 'water.temperature-rise', 'h1'],
    ['heaters/h1', 'loss', 'water.heater-flow', 'h1 high clean', 'water.heater-pressure', 'h1'],
    ['pumps/p1', 'curve', 'water.heater-pressure', 'h1', 'water.exchanger-inlet', 'h1'],
    ['waterRuns/back', 'length', 'water.pipe-velocity', 'suction', 'water.heater-pressure', 'h1'],
    ['filters/f1', 'gaugeNow', 'water.filter-loading', 'f1', 'water.filter-rate', 'f1'],
    ['filters/f1', 'area', 'water.filter-rate', 'f1', 'water.pipe-velocity', 'back'],
    ['basins/pool', 'depthShallow', 'water.turnover', 'pool', 'water.heater-flow', 'h1 low dirty'],
  ] as const)('%s %s', (path, field, rule, subject, other, on) => {
    const survey = withFields(LOOP, path, { [field]: undefined });
    expect(missing(survey, rule, subject)).toContain(`${path}/${field}`);
    expect(known(survey, other, on)).toBe(true);
  });

  it('a job without a loop asks for it by its readings', () => {
    const { pumps: _p, pumpSpeeds: _s, filters: _f, waterRuns: _r, waterLoop: _l, ...bare } = LOOP;
    const finding = findingOf(studyOf(bare), 'water.heater-flow');
    expect(finding.verdict).toBe('unknown');
    for (const reading of [
      'pumps/-/curve',
      'pumpSpeeds/-/speed',
      'filters/-/cleanLoss',
      'waterRuns/-/role',
      'waterLoop/-/bypass',
    ])
      expect(finding.missing).toContain(reading);
  });
});

describe('what cannot be is named, and the rest still checked', () => {
  it.each([
    ['heaters/h1', { flowGreatest: 'nameplate 20 gpm' }, 'heaters/h1/flowGreatest', 'empty-band'],
    ['waterRuns/back', { size: '7' }, 'waterRuns/back/size', undefined],
    ['waterRuns/back', { basin: 'lake' }, 'waterRuns/back/basin', undefined],
    ['filters/f1', { dirtyRise: 'told 30 psi' }, 'filters/f1/dirtyRise', 'pump-cannot-make-rise'],
    ['filters/f1', { gaugeNow: 'measured -14 psi' }, 'filters/f1/gaugeNow', 'cleaner-than-clean'],
    ['heaters/h1', { heightAbovePool: 'measured 150 ft' }, 'heaters/h1/heightAbovePool', 'water-boils'],
    ['waterLoop/-', { bypassCv: 'nameplate 0 Cv' }, 'waterLoop/-/bypassCv', undefined],
  ] as const)('%s %j', (path, fields, where, reason) => {
    const found = studyOf(withFields(LOOP, path, fields));
    const issue = found.issues.find((one) => one.where === where);
    expect(issue).toBeDefined();
    if (reason !== undefined) expect(issue?.reason).toBe(reason);
    expect(findingOf(found, 'water.check-valve').verdict).toBe('meets');
    expect(findingOf(found, 'water.exchanger-inlet').verdict).not.toBe('unknown');
  });

  it('two pumps are one too many', () => {
    const [pump] = LOOP['pumps'] as readonly Record<string, unknown>[];
    const found = studyOf({ ...LOOP, pumps: [pump!, { ...pump, id: 'p2' }] });
    expect(found.issues).toContainEqual(
      expect.objectContaining({ where: 'pumps/p2/name', reason: 'one-is-reckoned-with' }),
    );
  });
});
