/** The pictures of the heat line show what the findings of the example jobs stand on, and what physics asks of them. */
import { readFileSync } from 'node:fs';
import {
  heatPictureOf,
  type JobView,
  jobViewOf,
  type PlainJob,
  plainView,
  readJobFile,
  study,
  surveyRecords,
  yearMonths,
  yearOfJob,
  yearStandsOn,
} from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';

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

function heatFindings(view: JobView): readonly Finding[] {
  return study(view, { today: '2026-11-25' }).lines.find((one) => one.line === 'heat')?.findings ?? [];
}

/** What a finding found, in SI. */
function foundBy(findings: readonly Finding[], rule: string, basin: string): number | undefined {
  const outcome = findings.find((one) => one.rule === rule && one.subject.id === basin)?.outcome;
  return outcome !== undefined && 'found' in outcome ? outcome.found : undefined;
}

describe('the picture of the heat line', () => {
  it.each(NAMES)('of %s shows the warm-up and the plateau its findings stand on', (name) => {
    const view = viewOf(surveyed(name));
    const findings = heatFindings(view);
    const { basins } = heatPictureOf(view);
    let compared = 0;
    for (const { id, warmUp } of basins) {
      const plateau = foundBy(findings, 'heat.plateau', id);
      if (plateau !== undefined) expect(warmUp?.plateau).toBeCloseTo(plateau, 9);
      const time = foundBy(findings, 'heat.warm-in-time', id);
      if (time === undefined) continue;
      compared += 1;
      expect(warmUp?.time).toBeCloseTo(time, 6);
    }
    expect(compared).toBeGreaterThan(0);
  });

  const all = NAMES.flatMap((name) => heatPictureOf(viewOf(surveyed(name))).basins);

  it('splits the loss without leaving any out', () => {
    for (const { losses, hold = Number.NaN } of all) {
      expect(losses.length).toBeGreaterThan(2);
      expect(losses.reduce((sum, one) => sum + one.heat, 0) / hold).toBeCloseTo(1, 12);
    }
  });

  it('has a curve that rises ever more slowly through the target at its time', () => {
    for (const { warmUp } of all) {
      const { points = [], time = 0, target = 0 } = warmUp ?? {};
      expect(points.length).toBeGreaterThan(10);
      const paces = points.slice(1).map(([, T], i) => (T - (points[i]?.[1] ?? 0)) / stepOf(points, i));
      for (const [i, pace] of paces.entries()) expect(pace).toBeLessThanOrEqual((paces[i - 1] ?? 1) * 1.0001);
      const after = points.findIndex(([, T]) => T >= target - 1e-9);
      expect(points[after]?.[0]).toBeGreaterThanOrEqual(time * (1 - 1e-9));
      expect(points[after - 1]?.[0]).toBeLessThanOrEqual(time);
    }
  });

  it('says of the size in the plan what it says of the plan, and of more heat that it is warm sooner', () => {
    for (const { sizes, input = 0, warmUp, output } of all) {
      const own = sizes.find((one) => one.input === input);
      expect(own).toMatchObject({ time: warmUp?.time, plateau: warmUp?.plateau, output });
      const free = sizes.filter((one) => one.time !== undefined);
      for (const [i, size] of free.entries()) {
        const less = free[i - 1];
        if (less === undefined || less.output >= size.output) continue;
        expect(size.time).toBeLessThan(less.time ?? 0);
        expect(size.plateau).toBeGreaterThanOrEqual(less.plateau);
      }
      for (const size of sizes) expect(size.holds).toBe(size.plateau >= (warmUp?.target ?? 0));
    }
  });

  it('has the same year from the records it stands on, and months that add up to it', () => {
    const view = viewOf(surveyed('house-pool'));
    const told: string[] = [];
    const year = yearOfJob(plainView(structuredClone(yearStandsOn(view))), {
      marched: (done, of) => told.push(`${done}/${of}`),
    });
    expect(year).toEqual(yearOfJob(view));
    if (year.state !== 'known') throw new Error(year.state);
    expect(told.at(-1)).toBe(`${told.length}/${told.length}`);
    for (const { covered, bare } of year.basins)
      for (const use of [covered, bare]) {
        const { fuel, cost, carbon } = yearMonths(use, 'natural');
        const sum = (of: readonly number[] = []): number => of.reduce((a, b) => a + b, 0);
        expect(fuel).toHaveLength(12);
        expect(sum(cost)).toBeCloseTo(use.cost?.total ?? Number.NaN, 6);
        expect(sum(carbon)).toBeCloseTo(use.cost?.carbonDioxide ?? Number.NaN, 6);
      }
  });

  it('rests on the place on board in a file from before months could be kept', () => {
    // The log of the example is as it was written then: without months, and without a word of where the climate is from.
    const text = readFileSync(new URL('house-pool.job.json', import.meta.url), 'utf8');
    expect(text).not.toMatch(/climateMonths|climateFrom/);
    const file = readJobFile(text);
    if (!file.ok) throw new Error(JSON.stringify(file.issues));
    const [pool] = heatPictureOf(jobViewOf(file.value.document)).basins;
    expect(pool?.day).toMatchObject({ source: 'bundled', place: expect.stringContaining('Denver') });
    expect(pool?.warmUp?.time).toBeGreaterThan(0);
  });

  it('names what is missing', () => {
    const { basins = [], ...survey } = surveyed('house-pool') as { basins?: Survey[] };
    const [pool, ...rest] = basins;
    const { setTemperature: _, ...left } = pool ?? {};
    const [shown] = heatPictureOf(viewOf({ ...survey, basins: [left, ...rest] })).basins;
    expect(shown?.missing).toEqual([`basins/${String(left['id'])}/setTemperature`]);
    expect(shown?.warmUp).toBeUndefined();
    expect(shown?.area).toBeGreaterThan(0);
  });
});

function stepOf(points: readonly (readonly [number, number])[], i: number): number {
  return (points[i + 1]?.[0] ?? 0) - (points[i]?.[0] ?? 0);
}
