import type { Step } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { workingOf } from '../../findings/working.ts';
import { findingOf, LOOP, studyOf, viewOf, withFields } from './example-loop.ts';

/** Rules that ask for a word alone. */
const ASK_A_WORD = new Set([
  'water.check-valve',
  'water.feeder-order',
  'water.relief-valve',
  'water.relief-discharge',
]);

/** The loop with its relief valve and its water test. */
const WHOLE = {
  ...withFields(LOOP, 'heaters/h1', {
    reliefValve: 'measured yes',
    reliefSet: 'nameplate 50 psi',
    reliefSteam: 'nameplate 500 lb/h',
    reliefDischarge: 'measured yes',
    reliefDischargeHeight: 'measured 12 in',
  }),
  waterTests: [
    {
      id: 't1',
      ph: 'measured 7.5',
      calcium: 'measured 300 ppm',
      alkalinity: 'measured 90 ppm',
      cyanuricAcid: 'measured 30 ppm',
      freeChlorine: 'measured 2 ppm',
    },
  ],
};

describe('the working', () => {
  function numbersIn(step: Step): number[] {
    const own =
      step.step === 'formula' ? [step.result.value, ...step.inputs.map((one) => one.value)] : step.value;
    const below = step.step === 'given' ? [] : step.children.flatMap(numbersIn);
    return [...[own].flat().filter((one) => typeof one === 'number'), ...below];
  }

  it('of every finding opens into finite figures', () => {
    const view = viewOf(WHOLE);
    const options = { today: '2026-11-25' };
    for (const { rule, subject } of studyOf(WHOLE).lines.find(({ line }) => line === 'water')?.findings ??
      []) {
      const working = workingOf(view, `${rule}@${subject.id}`, options);
      const numbers = working?.facts.flatMap(({ steps }) => steps.flatMap(numbersIn)) ?? [];
      expect(numbers.every(Number.isFinite), rule).toBe(true);
      if (!ASK_A_WORD.has(rule)) expect(numbers.length, rule).toBeGreaterThan(0);
    }
  });

  it('adds the losses round the loop up to the head of the pump', () => {
    const working = workingOf(viewOf(LOOP), 'water.heater-flow@h1 high clean', { today: '2026-11-25' });
    const [flow] = working?.facts ?? [];
    const pad = flow?.steps.find((step) => step.step === 'group' && step.id === 'water.pad');
    if (pad?.step !== 'group') throw new Error('no pad');
    const parts = pad.children.filter((step) => step.step === 'group' && step.id !== 'water.pad-switch');
    const beside = new Set(['beside', 'bypass-valve']);
    const round = parts.filter((step) => step.step === 'group' && !beside.has(String(step.about?.['part'])));
    const sum = round.reduce((total, step) => total + (step.step === 'group' ? (step.value ?? 0) : 0), 0);
    expect(round.length).toBe(9);
    expect(Math.abs(sum)).toBeLessThan(1e-4);
  });

  it('marks what rests on an assumption, and only that', () => {
    const assumed = withFields(LOOP, 'basins/pool', { volume: 'assumed 20,000 gal' });
    expect(findingOf(studyOf(assumed), 'water.turnover').assumed).toEqual(['basins/pool/volume']);
    expect(findingOf(studyOf(assumed), 'water.heater-flow').assumed).toEqual([]);
  });
});

describe('the ± of the readings', () => {
  it('reaches the flow from fittings and lengths, and leaves what does not depend on them', () => {
    const found = studyOf(LOOP, true);
    expect(findingOf(found, 'water.heater-flow').plusMinus).toBeGreaterThan(0.01);
    expect(findingOf(found, 'water.heater-flow').plusMinus).toBeLessThan(0.3);
    expect(findingOf(found, 'water.check-valve').plusMinus).toBeUndefined();
  });
});
