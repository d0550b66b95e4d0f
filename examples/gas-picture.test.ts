/** The pictures of the gas line show what the findings of the example jobs stand on. */
import { readFileSync } from 'node:fs';
import {
  type GasNode,
  type GasPicture,
  gasPictureOf,
  gasPlusMinus,
  type JobView,
  type PlainJob,
  plainView,
  study,
  surveyRecords,
} from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';

const TODAY = { today: '2026-11-25' };
const NAMES = ['house-pool', 'swap', 'public-pool', 'winter-propane'];

function example(name: string): JobView {
  const records = surveyRecords(
    JSON.parse(readFileSync(new URL(`${name}.survey.json`, import.meta.url), 'utf8')),
  );
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return plainView(records.value as PlainJob);
}

function findingsOf(view: JobView): readonly Finding[] {
  return study(view, TODAY).lines.find((one) => one.line === 'gas')?.findings ?? [];
}

function pictureOf(view: JobView, heater?: string): GasPicture {
  return gasPictureOf(view, { findings: findingsOf(view), heater });
}

describe('the picture of the gas line', () => {
  it.each(NAMES)('of %s shows the pressures its findings stand on', (name) => {
    const view = example(name);
    const judged = findingsOf(view);
    const outcome = (rule: string, id: string) =>
      judged.find((one) => one.rule === rule && one.subject.id === id)?.outcome;
    for (const { id } of pictureOf(view).heaters) {
      const { heater } = pictureOf(view, id);
      const running = outcome('gas.burner-pressure-running', id);
      const lockUp = outcome('gas.burner-pressure-lock-up', id);
      if (running?.sense !== 'at-least' || lockUp?.sense !== 'at-most') throw new Error('not judged');
      expect(heater?.pressures['everything-on']).toBeCloseTo(running.found, 6);
      expect(heater?.pressures['all-off']).toBeCloseTo(lockUp.found, 6);
      expect(heater?.least).toBe(running.required);
      expect(heater?.greatest).toBe(lockUp.required);
    }
  });

  it.each(NAMES)('of %s keeps the gas: what enters a junction leaves it', (name) => {
    const check = (node: GasNode, into: number): void => {
      const on = node.branches.reduce((sum, { link }) => sum + (link.flow['everything-on'] ?? Number.NaN), 0);
      if (node.hung.length === 0) expect(on).toBeCloseTo(into, 9);
      for (const { link, end } of node.branches) check(end, link.flow['everything-on'] ?? Number.NaN);
    };
    const { root } = pictureOf(example(name));
    for (const { link, end } of root.branches) check(end, link.flow['everything-on'] ?? Number.NaN);
  });

  it('carries the ± of the readings as the findings do', () => {
    const view = example('house-pool');
    const running = findingsOf(view).find((one) => one.rule === 'gas.burner-pressure-running');
    if (running?.outcome?.sense !== 'at-least') throw new Error('not judged');
    // That of the finding's margin has the ± of the nameplate and of the supply besides.
    const own = (gasPlusMinus(view, 'h1')['everything-on'] ?? 0) / running.outcome.yardstick;
    expect(own).toBeGreaterThan(0);
    expect(own).toBeLessThanOrEqual((running.plusMinus ?? 0) * 1.0001);
  });
});
