import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { figureOf, findingOf, foundBy, LOOP, type Survey, studyOf, withFields } from './example-loop.ts';

const { FAHRENHEIT_STEP, FOOT, HOUR, MINUTE, PSI, US_GALLON, ZERO_CELSIUS } = quantity;
const GPM = US_GALLON / MINUTE;

/** The figures that the trade reckons with beside a pool. Common practice, no source. */
const FEET_PER_PSI = 2.31;
const BTU_PER_GPM_AND_DEGREE = 500;

const wasRead = { dirtyRise: 'told 0 psi' };
/** A filter that never gets dirty, so that clean and due are one. */
const CLEAN = withFields(LOOP, 'filters/f1', wasRead);

describe('the figures of the trade', () => {
  it('velocity is 0.4085·gpm/in²', () => {
    const gpm = figureOf(LOOP, 'water.header-flow') / GPM;
    const feet = figureOf(LOOP, 'water.pipe-velocity', 'branch') / FOOT;
    expect(feet / ((0.4085 * gpm) / 2.067 ** 2)).toBeCloseTo(1, 3);
  });

  it('temperature rise is Btu/h over 500·gpm, to half a per cent', () => {
    const gpm = Math.min(
      ...['h1 low clean', 'h1 low dirty', 'h1 high clean', 'h1 high dirty'].map(
        (id) => figureOf(LOOP, 'water.heater-flow', id) / GPM,
      ),
    );
    const rise = figureOf(LOOP, 'water.temperature-rise') / FAHRENHEIT_STEP;
    expect(Math.abs((rise * BTU_PER_GPM_AND_DEGREE * gpm) / (400_000 * 0.8) - 1)).toBeLessThan(0.005);
  });

  it('turnover is gallons over 60·gpm, at the slowest speed where none is kept for filtration', () => {
    const only = { ...CLEAN, pumpSpeeds: [{ id: 'it', speed: 'drawing 3,450 rpm', heating: 'yes' }] };
    const gpm = figureOf(only, 'water.filter-rate') / GPM;
    expect(figureOf(only, 'water.turnover') / HOUR).toBeCloseTo(20_000 / (60 * gpm), 6);
    expect(figureOf(CLEAN, 'water.turnover')).toBeGreaterThan(figureOf(only, 'water.turnover'));
  });

  it('a shut return puts the pump’s shut-off head on the heater: 2.31 ft a psi', () => {
    expect(figureOf(LOOP, 'water.heater-pressure') / PSI).toBeCloseTo(80 / FEET_PER_PSI, 1);
    const below = withFields(LOOP, 'heaters/h1', { heightAbovePool: 'measured -5 ft' });
    expect(figureOf(below, 'water.heater-pressure') / PSI).toBeCloseTo(85 / FEET_PER_PSI, 1);
  });

  it('a pressure switch five feet under the pool sees 0.433 psi a foot at rest', () => {
    const below = withFields(LOOP, 'heaters/h1', { heightAbovePool: 'measured -5 ft' });
    const { outcome } = findingOf(studyOf(below), 'water.switch-window');
    if (outcome?.sense !== 'at-least') throw new Error('not at-least');
    // Its differential, and a quarter psi kept over it.
    expect(outcome.required / PSI).toBeCloseTo(5 * 0.433 + 0.6 + 0.25, 2);
  });

  it('read at the speed of its clean figure, a filter has risen by the difference of its gauges', () => {
    expect(figureOf(LOOP, 'water.filter-loading') / PSI).toBeCloseTo(2, 4);
  });

  it('read at half the speed, it has risen by what the powers 1.8 to 2 of the flow make of it', () => {
    const slow = withFields(LOOP, 'filters/f1', {
      gaugeNow: 'measured 6.5 psi',
      speedNow: 'measured 1,725 rpm',
    });
    const by = (power: number): number => 2 ** power * 6.5 - 18;
    const rise = figureOf(slow, 'water.filter-loading') / PSI;
    expect(rise).toBeGreaterThan(by(1.8));
    expect(rise).toBeLessThan(by(2));
  });

  it('as much round again as passes lifts the inlet by half the rise', () => {
    const plain = figureOf(LOOP, 'water.exchanger-inlet');
    expect(plain).toBeCloseTo(ZERO_CELSIUS + (60 - 32) * FAHRENHEIT_STEP, 6);
    const mixes = withFields(LOOP, 'heaters/h1', { innerBypass: 'nameplate 1' });
    const gpm = figureOf(mixes, 'water.header-flow') / GPM;
    const rise = (400_000 * 0.8) / (BTU_PER_GPM_AND_DEGREE * gpm);
    expect((figureOf(mixes, 'water.exchanger-inlet') - plain) / FAHRENHEIT_STEP / (rise / 2)).toBeCloseTo(
      1,
      2,
    );
  });

  it('altitude takes from the suction what the atmosphere loses (US Standard Atmosphere 1976)', () => {
    const high = withFields(LOOP, 'site/-', { altitude: 'drawing 1,500 m' });
    const lost = figureOf(LOOP, 'water.pump-suction') - figureOf(high, 'water.pump-suction');
    expect((lost * 996.5 * 9.80665) / (101_325 - 84_556)).toBeCloseTo(1, 2);
  });

  it('125 gpm is the most for a 2 in header, and stands only for one', () => {
    const { outcome } = findingOf(studyOf(LOOP), 'water.header-flow');
    if (outcome?.sense !== 'at-most') throw new Error('not at-most');
    expect(outcome.required / GPM).toBeCloseTo(125, 3);
    const wide = withFields(LOOP, 'heaters/h1', { header: 'nameplate 2-1/2 in' });
    expect(findingOf(studyOf(wide), 'water.header-flow').verdict).toBe('does not apply');
  });
});

describe('the flow through the heater', () => {
  const flow = (survey: Survey, state = 'h1 high clean'): number =>
    figureOf(survey, 'water.heater-flow', state);

  it.each(['suction', 'discharge', 'approach', 'branch', 'back'])('is never lowered by a bigger %s', (id) => {
    const flows = ['1-1/2', '2', '2-1/2', '3', '4'].map((size) =>
      flow(withFields(LOOP, `waterRuns/${id}`, { size })),
    );
    for (const [i, one] of flows.slice(1).entries()) expect(one).toBeGreaterThan(flows[i]!);
  });

  it('falls as the bypass opens, the filter clogs, the pump slows', () => {
    const open = (share: number) => withFields(LOOP, 'waterLoop/-', { bypassOpening: `measured ${share} %` });
    const flows = [0, 10, 30, 60, 100].map((share) => flow(open(share)));
    for (const [i, one] of flows.slice(1).entries()) expect(one).toBeLessThan(flows[i]!);
    expect(flow(LOOP, 'h1 high dirty')).toBeLessThan(flow(LOOP));
    expect(flow(LOOP, 'h1 low clean')).toBeLessThan(flow(LOOP));
    expect(flow(LOOP, 'h1 low dirty')).toBeLessThan(flow(LOOP, 'h1 low clean'));
  });

  it('is all of the pump’s where there is no bypass, and nothing is asked of one then', () => {
    const plain = withFields(LOOP, 'waterLoop/-', { bypass: 'none' });
    const found = studyOf(plain);
    expect(foundBy(findingOf(found, 'water.header-flow'))).toBeCloseTo(
      foundBy(findingOf(found, 'water.filter-rate')),
      9,
    );
    for (const rule of ['water.bypass-range', 'water.bypass-handle'])
      expect(findingOf(found, rule).verdict).toBe('does not apply');
  });

  it('is not asked for at a speed at which the heater is off', () => {
    const off = withFields(LOOP, 'pumpSpeeds/low', { heating: 'no' });
    expect(() => findingOf(studyOf(off), 'water.heater-flow', 'h1 low clean')).toThrow();
  });
});

describe('the bypass', () => {
  const handle = (survey: Survey, share: number): Survey =>
    withFields(survey, 'waterLoop/-', { bypassOpening: `measured ${share * 100} %` });

  it('holds every state inside the band between its ends, and fails beyond them', () => {
    const survey = withFields(LOOP, 'heaters/h1', {
      flowLeast: 'nameplate 30 gpm',
      flowGreatest: 'nameplate 62 gpm',
    });
    const { outcome } = findingOf(studyOf(survey), 'water.bypass-handle');
    if (outcome?.sense !== 'within') throw new Error(`${outcome?.sense} instead of within`);
    const verdicts = (share: number) =>
      studyOf(handle(survey, share))
        .lines.flatMap((line) => line.findings)
        .filter(({ rule }) => rule === 'water.heater-flow')
        .map(({ verdict }) => verdict);
    expect(verdicts((outcome.low + outcome.high) / 2)).not.toContain('fails');
    expect(verdicts(outcome.low - 0.01)).toContain('fails');
    expect(verdicts(outcome.high + 0.01)).toContain('fails');
  });

  it('names the two states that no one opening suits', () => {
    const survey = withFields(LOOP, 'heaters/h1', {
      flowLeast: 'nameplate 40 gpm',
      flowGreatest: 'nameplate 44 gpm',
    });
    const finding = findingOf(studyOf(survey), 'water.bypass-range');
    expect(finding.verdict).toBe('fails');
    expect(finding.outcome).toMatchObject({ holds: false, because: { reason: 'conflict' } });
    expect(finding.between?.map(({ id }) => id)).toEqual(['h1 high clean', 'h1 low dirty']);
  });

  it('says when a state is starved even with it shut', () => {
    const survey = withFields(LOOP, 'heaters/h1', { flowLeast: 'nameplate 70 gpm' });
    const finding = findingOf(studyOf(survey), 'water.bypass-range');
    expect(finding.outcome).toMatchObject({ holds: false, because: { reason: 'too-little' } });
    expect(finding.between?.map(({ id }) => id)).toEqual(['h1 low dirty']);
  });
});

describe('the water-pressure switch', () => {
  it('has no setting at a speed so slow that flow makes next to no pressure', () => {
    const slow = withFields(LOOP, 'pumpSpeeds/low', { speed: 'drawing 900 rpm' });
    const finding = findingOf(studyOf(slow), 'water.switch-window');
    expect(finding.verdict).toBe('fails');
    expect(finding.outcome).toMatchObject({ because: { reason: 'only-a-flow-switch' } });
    expect(findingOf(studyOf(slow), 'water.switch-setting').verdict).toBe('does not apply');
  });

  it('has one that it cannot be turned to', () => {
    const short = withFields(LOOP, 'heaters/h1', {
      switchLeast: 'nameplate 20 psi',
      switchGreatest: 'nameplate 30 psi',
    });
    const finding = findingOf(studyOf(short), 'water.switch-window');
    expect(finding.verdict).toBe('fails');
    expect(finding.outcome).toMatchObject({ because: { reason: 'beyond-the-switch' } });
  });

  it('is not asked about where the heater has a flow switch', () => {
    const flow = withFields(LOOP, 'heaters/h1', { switchKind: 'flow' });
    for (const rule of ['water.switch-window', 'water.switch-setting'])
      expect(findingOf(studyOf(flow), rule).verdict).toBe('does not apply');
  });
});

describe('several heaters on a manifold', () => {
  const heater = (LOOP['heaters'] as readonly Record<string, unknown>[])[0]!;
  const run = (id: string, fields: Record<string, unknown>) => ({
    id,
    material: 'pvc-40',
    size: '2',
    length: 'measured 6 ft',
    ...fields,
  });
  const bank = (manifold: string): Survey => {
    const [h1, h2, h3] = ['h1', 'h2', 'h3'].map((id) => ({ ...heater, id, name: id }));
    const runs = (LOOP['waterRuns'] as readonly Record<string, unknown>[]).filter(
      (one) => one['id'] !== 'branch',
    );
    return {
      ...LOOP,
      heaters: [h1!, h2!, h3!],
      waterRuns: [
        ...runs,
        run('sh', { role: 'supply-header' }),
        run('rh', { role: 'return-header' }),
        ...['h1', 'h2', 'h3'].map((id) => run(`b-${id}`, { role: 'heater-branch', heater: id })),
      ],
      waterLoop: { ...(LOOP['waterLoop'] as Record<string, unknown>), manifold },
    };
  };
  const flows = (manifold: string) =>
    ['h1', 'h2', 'h3'].map((id) => figureOf(bank(manifold), 'water.heater-flow', `${id} high clean`));

  it('a direct return favours the first heater, a reverse return evens the outer two out', () => {
    const direct = flows('direct');
    expect(direct[0]).toBeGreaterThan(direct[1]!);
    expect(direct[1]).toBeGreaterThan(direct[2]!);
    const reverse = flows('reverse');
    expect(reverse[0]! / reverse[2]!).toBeCloseTo(1, 6);
    const spread = (all: readonly number[]) => Math.max(...all) / Math.min(...all);
    expect(spread(reverse)).toBeLessThan(spread(direct));
  });

  it('asks for the headers between them', () => {
    const without = { ...bank('direct'), waterRuns: LOOP['waterRuns'] as readonly Record<string, unknown>[] };
    expect(studyOf(without).issues).toContainEqual(expect.objectContaining({ reason: 'header-sections' }));
  });
});
