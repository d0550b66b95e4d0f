/** The pictures of the water line show what the findings of the example jobs stand on, and what physics asks of them. */
import { readFileSync } from 'node:fs';
import {
  type JobView,
  type PlainJob,
  plainView,
  study,
  surveyRecords,
  type WaterFlowing,
  type WaterPicture,
  waterCurvesOf,
  waterPictureOf,
} from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';

const TODAY = { today: '2026-11-25' };
const NAMES = ['house-pool', 'swap', 'public-pool', 'winter-propane'];

type Survey = Record<string, unknown>;

function surveyed(name: string): Survey {
  return JSON.parse(readFileSync(new URL(`${name}.survey.json`, import.meta.url), 'utf8')) as Survey;
}

function viewOf(survey: Survey): JobView {
  const records = surveyRecords(survey);
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return plainView(records.value as PlainJob);
}

const example = (name: string): JobView => viewOf(surveyed(name));

function findingsOf(view: JobView): readonly Finding[] {
  return study(view, TODAY).lines.find((one) => one.line === 'water')?.findings ?? [];
}

function running(picture: WaterPicture): readonly WaterFlowing[] {
  return picture.states.flatMap((state) => state.flowing ?? []);
}

describe('the picture of the water line', () => {
  it.each(NAMES)('of %s shows the heater flows its findings stand on', (name) => {
    const view = example(name);
    const picture = waterPictureOf(view);
    const several = picture.basins.length > 1;
    let compared = 0;
    for (const finding of findingsOf(view)) {
      if (finding.rule !== 'water.heater-flow' || finding.outcome?.sense !== 'within') continue;
      const [heater, speed, filter, basin] = finding.subject.id.split(' ');
      const state = picture.states.find(
        (one) => one.speed === speed && one.filter === filter && (!several || one.basin === basin),
      );
      const flow = state?.flowing?.heaters.find((one) => one.id === heater)?.flow;
      expect((flow ?? Number.NaN) / finding.outcome.found).toBeCloseTo(1, 6);
      const shown = picture.heaters.find((one) => one.id === heater);
      expect([shown?.least, shown?.most]).toEqual([finding.outcome.low, finding.outcome.high]);
      compared += 1;
    }
    expect(compared).toBe(
      picture.states.filter((one) => one.heating).length * (several ? 1 : picture.heaters.length),
    );
  });

  it.each(NAMES)('of %s shows the velocities and the smallest flow its findings stand on', (name) => {
    const view = example(name);
    const picture = waterPictureOf(view);
    for (const { rule, subject, outcome } of findingsOf(view)) {
      if (outcome?.sense !== 'at-most') continue;
      if (rule === 'water.pipe-velocity') {
        const most = Math.max(...running(picture).map((one) => one.runs.get(subject.id)?.velocity ?? 0));
        expect(most / outcome.found).toBeCloseTo(1, 6);
      }
      if (rule === 'water.temperature-rise') {
        const rises = running(picture).flatMap((one) => one.heaters.filter(({ id }) => id === subject.id));
        expect(Math.max(...rises.map((one) => one.rise ?? Number.NaN)) / outcome.found).toBeCloseTo(1, 6);
      }
    }
  });

  it.each(NAMES)('of %s keeps the water: what the pump moves goes through heaters and bypass', (name) => {
    const states = running(waterPictureOf(example(name)));
    expect(states.length).toBeGreaterThan(0);
    for (const { flow, bypass, heaters } of states) {
      const through = heaters.reduce((sum, one) => sum + one.flow, bypass);
      expect(through / flow).toBeCloseTo(1, 6);
    }
  });

  it.each(NAMES)('of %s keeps the heat: the return carries away what the heaters put in', (name) => {
    for (const { flow, heaters, temperatures } of running(waterPictureOf(example(name)))) {
      const into = heaters.reduce((sum, one) => sum + one.flow * (one.rise ?? Number.NaN), 0);
      const out = flow * ((temperatures.return ?? Number.NaN) - temperatures.basin);
      expect(out).toBeCloseTo(into, 9);
    }
  });

  it.each(NAMES)('of %s falls in pressure along the water, and rises at the pump alone', (name) => {
    for (const { pressures } of running(waterPictureOf(example(name)))) {
      expect(pressures.pumpOutlet).toBeGreaterThan(pressures.pumpInlet);
      expect(pressures.filterInlet).toBeLessThanOrEqual(pressures.pumpOutlet);
      expect(pressures.filterOutlet).toBeLessThan(pressures.filterInlet);
      expect(pressures.return).toBeLessThan(pressures.filterOutlet);
    }
  });

  it.each(NAMES)('of %s holds the bypass where its findings say', (name) => {
    const view = example(name);
    const judged = findingsOf(view);
    const range = judged.find((one) => one.rule === 'water.bypass-range')?.outcome;
    const handle = judged.find((one) => one.rule === 'water.bypass-handle')?.outcome;
    const { holds } = waterPictureOf(view).bypass;
    expect(holds.found === 'interval').toBe(range?.sense === 'holds' && range.holds);
    if (holds.found !== 'interval' || handle === undefined) return;
    // An end that is the valve's own stop is no limit of the finding.
    if (handle.sense === 'at-most') expect([0, holds.high]).toEqual([holds.low, handle.required]);
    if (handle.sense === 'at-least') expect([holds.low, 1]).toEqual([handle.required, holds.high]);
    if (handle.sense === 'within') expect([holds.low, holds.high]).toEqual([handle.low, handle.high]);
  });

  it.each(NAMES)('of %s has its operating points where pump and system curves cross', (name) => {
    const view = example(name);
    const picture = waterPictureOf(view);
    for (const { id } of picture.basins) {
      const curves = waterCurvesOf(view, id);
      for (const state of picture.states.filter((one) => one.basin === id && one.flowing !== undefined)) {
        const { flow, pumpHead } = state.flowing as WaterFlowing;
        const pump = curves.pump.find((one) => one.speed === state.speed)?.points ?? [];
        const system = curves.system.find((one) => one.filter === state.filter)?.points ?? [];
        // Straight lines between the points drawn: within 2 % of the shut-off head.
        const near = 0.02 * (pump[0]?.[1] ?? Number.NaN);
        expect(Math.abs(headAt(pump, flow) - pumpHead)).toBeLessThan(near);
        expect(Math.abs(headAt(system, flow) - pumpHead)).toBeLessThan(near);
      }
    }
  });

  it('of a job with nothing read is not drawn, and says what it waits for', () => {
    const view = plainView({});
    const picture = waterPictureOf(view);
    expect(picture.drawn).toBe(false);
    expect(picture.states).toEqual([]);
    expect(picture.missing).toContain('pumps/-/curve');
    expect(waterCurvesOf(view, 'pool')).toEqual({ pump: [], system: [] });
  });

  it('names what a part lacks at that part alone', () => {
    const survey = surveyed('house-pool');
    const [filter] = survey['filters'] as Record<string, unknown>[];
    const without = { ...survey, filters: [{ ...filter, dirtyRise: undefined }] };
    const picture = waterPictureOf(viewOf(JSON.parse(JSON.stringify(without)) as Survey));
    expect(picture.filter.missing).toEqual(['filters/f1/dirtyRise']);
    expect(picture.pump.missing).toEqual([]);
    for (const state of picture.states) expect(state.flowing !== undefined).toBe(state.filter === 'clean');
  });
});

type Points = readonly (readonly [number, number])[];

function headAt(points: Points, flow: number): number {
  const next = points.findIndex(([at]) => at >= flow);
  const [after, before] = [points[next], points[next - 1]];
  if (after === undefined || before === undefined) return Number.NaN;
  return before[1] + ((after[1] - before[1]) * (flow - before[0])) / (after[0] - before[0]);
}
