import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BTU, CUBIC_FOOT, HOUR, PSI, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import { expectOk, Recorder } from '../../trace/index.ts';
import { NATURAL_GAS } from '../fuel.ts';
import { type Compensation, indexState } from './clock.ts';
import { clockMeter } from './clock-meter.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;
const CFH = CUBIC_FOOT / HOUR;
const fahrenheit = (f: number): number => (f + 459.67) / 1.8;

/** Fifth clocking example of a gas technician training text, Unit 11. */
const FIFTH = {
  dial: 5 * CUBIC_FOOT,
  revolutions: 1,
  seconds: 20,
  gaugePressure: 10 * PSI,
  atmosphere: 14.55 * PSI,
  temperature: fahrenheit(45),
  compensation: 'none' as Compensation,
  heatingValue: NATURAL_GAS.heatingValue,
};

describe('clockMeter', () => {
  it('gives the flows of the training text: 900 metered, 1544.49 standard ft3/h', () => {
    const clocked = expectOk(clockMeter(FIFTH));
    expect(clocked.flow.value / CFH).toBeCloseTo(900, 9);
    expect(Math.abs(clocked.standardFlow.value / SCFH / 1544.49 - 1)).toBeLessThan(2e-4);
    expect((clocked.heatInput.value / BTU) * HOUR).toBeCloseTo((1000 * clocked.standardFlow.value) / SCFH, 3);
  });

  it('spreads by the stopwatch', () => {
    const clocked = expectOk(clockMeter({ ...FIFTH, dial: 2 * CUBIC_FOOT, seconds: 18 }));
    expect([clocked.flow.low, clocked.flow.high].map((flow) => Math.round(flow / CFH))).toEqual([379, 424]);
    const sure = expectOk(clockMeter({ ...FIFTH, secondsUncertainty: 0 }));
    expect(sure.heatInput.low).toBe(sure.heatInput.high);
  });

  it('narrows with more turns for the same ± of the watch', () => {
    const turns = fc.integer({ min: 2, max: 30 });
    fc.assert(
      fc.property(turns, (n) => {
        const one = expectOk(clockMeter(FIFTH)).flow;
        const many = expectOk(clockMeter({ ...FIFTH, revolutions: n, seconds: 20 * n })).flow;
        expect(many.value).toBeCloseTo(one.value, 12);
        expect(many.high - many.low).toBeLessThan(one.high - one.low);
      }),
    );
  });

  it('leaves to a compensated index what it has done already', () => {
    expect(indexState({ ...FIFTH, compensation: 'temperature' })).toEqual({
      pressure: 24.55 * PSI,
      temperature: fahrenheit(60),
    });
    const both = expectOk(clockMeter({ ...FIFTH, compensation: 'temperature-and-pressure' }));
    expect(both.standardFlow.value / SCFH).toBeCloseTo(900, 9);
  });

  it('finds less gas in a metered foot high up', () => {
    const low = { ...FIFTH, gaugePressure: 1740, temperature: fahrenheit(60), atmosphere: 101_325 };
    const sea = expectOk(clockMeter(low)).standardFlow.value;
    const high = expectOk(clockMeter({ ...low, atmosphere: 84_300 })).standardFlow.value;
    expect(high / sea).toBeCloseTo((84_300 + 1740) / (101_325 + 1740), 12);
  });

  it('refuses nonsense by name and records both steps', () => {
    const bad = clockMeter({ ...FIFTH, secondsUncertainty: 30, heatingValue: 0 });
    expect(bad.ok ? [] : bad.issues.map((issue) => issue.where)).toEqual([
      'secondsUncertainty',
      'heatingValue',
    ]);
    const cold = clockMeter({ ...FIFTH, temperature: 0 });
    expect(cold.ok ? [] : cold.issues.map((issue) => issue.where)).toEqual(['temperature']);
    const recorder = new Recorder();
    clockMeter(FIFTH, recorder);
    expect(recorder.steps.map((step) => step.id)).toEqual(['gas.metered-flow', 'gas.standard-flow']);
  });
});
