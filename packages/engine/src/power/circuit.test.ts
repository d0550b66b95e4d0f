/** Supply, control transformer, breaker and ground: worked examples, ways back, and what is out of range. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCULAR_MIL, FOOT } from '../quantity/constants.ts';
import { gaugeArea, gaugeOf } from '../quantity/index.ts';
import { evaluate, expectOk } from '../trace/index.ts';
import {
  areaForDrop,
  bestTap,
  bundleFactor,
  controlVoltage,
  designCurrent,
  equipmentGround,
  lengthForDrop,
  nextStandardSize,
  supplyImpedance,
  voltageDrop,
  voltageUnderLoad,
} from './index.ts';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('length and area for a drop', () => {
  // EC&M, The basics of calculating voltage drop, example 3: 377 ft.
  it('meet the printed example', () => {
    const given = { current: 20, resistance: 1.1, phases: 3, length: 1000 * FOOT, allowedDrop: 14.4 };
    expect(expectOk(evaluate(lengthForDrop, given)) / FOOT).toBeCloseTo(377, -1);
  });

  // 2 × 12.9 × 16 A × 100 ft / 3.6 V by hand.
  it('meet the constant of copper', () => {
    const given = { current: 16, length: 100 * FOOT, allowedDrop: 3.6, phases: 1 };
    expect(expectOk(evaluate(areaForDrop, given)) / CIRCULAR_MIL).toBeCloseTo(11_466.7, 1);
  });

  it('undo the drop', () => {
    fc.assert(
      fc.property(
        positive(0.1, 400),
        positive(0.001, 20),
        positive(1, 500),
        fc.constantFrom(1, 3),
        (current, resistance, length, phases) => {
          const loaded = { current, resistance, phases };
          const allowedDrop = expectOk(evaluate(voltageDrop, loaded));
          if (allowedDrop > 1000) return;
          const back = expectOk(evaluate(lengthForDrop, { ...loaded, length, allowedDrop }));
          expect(back / length).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it('know no longest run without a current', () => {
    const idle = { current: 0, resistance: 1, phases: 1, length: 10, allowedDrop: 3 };
    expect(evaluate(lengthForDrop, idle)).toMatchObject({ ok: false });
  });
});

describe('the supply', () => {
  // By hand: (241 − 236)/10 = 0.5 ohm; 241 − 0.5·40 = 221 V.
  it('is told from two voltages and a current', () => {
    const impedance = expectOk(evaluate(supplyImpedance, { voltsIdle: 241, voltsRunning: 236, current: 10 }));
    expect(impedance).toBeCloseTo(0.5, 12);
    const start = { voltsIdle: 241, impedance, startCurrent: 40 };
    expect(evaluate(voltageUnderLoad, start)).toEqual({ ok: true, value: 221 });
  });

  it('gives its running voltage back at its running current', () => {
    fc.assert(
      fc.property(positive(100, 500), positive(0, 0.2), positive(0.5, 500), (voltsIdle, sag, current) => {
        const voltsRunning = voltsIdle * (1 - sag);
        const impedance = expectOk(evaluate(supplyImpedance, { voltsIdle, voltsRunning, current }));
        fc.pre(impedance <= 100);
        const back = expectOk(evaluate(voltageUnderLoad, { voltsIdle, impedance, startCurrent: current }));
        expect(back).toBeCloseTo(voltsRunning, 9);
      }),
    );
  });

  it('that rises under load, or has nothing left, is no supply', () => {
    const rises = { voltsIdle: 230, voltsRunning: 231, current: 5 };
    expect(evaluate(supplyImpedance, rises)).toMatchObject({ ok: false, issues: [{ code: 'no-solution' }] });
    const none = { voltsIdle: 100, impedance: 10, startCurrent: 11 };
    expect(evaluate(voltageUnderLoad, none)).toMatchObject({ ok: false, issues: [{ code: 'no-solution' }] });
    const idle = { voltsIdle: 230, voltsRunning: 229, current: 0 };
    expect(evaluate(supplyImpedance, idle)).toMatchObject({ ok: false, issues: [{ code: 'out-of-range' }] });
  });
});

describe('the control transformer', () => {
  // Ratio of turns by hand; the halves and doubles are common practice, no source.
  it.each([
    [120, 240, 12],
    [240, 120, 48],
    [208, 240, 20.8],
    [208, 208, 24],
  ])('makes of %i V on its %i V tap %d V', (supplyVolts, tapVolts, volts) => {
    const found = expectOk(evaluate(controlVoltage, { supplyVolts, tapVolts, secondaryVolts: 24 }));
    expect(found).toBeCloseTo(volts, 12);
  });

  const taps = [120, 208, 240];
  it.each([
    [117, 120],
    [205, 208],
    [218, 208],
    [228, 240],
    [241, 240],
  ])('at %i V stands at its %i V tap', (supplyVolts, tap) => {
    expect(bestTap({ supplyVolts, taps, tolerance: 0.1 })).toEqual({ ok: true, value: tap });
  });

  it.each([0, 160, 277, 480])('has no tap for %i V', (supplyVolts) => {
    expect(bestTap({ supplyVolts, taps, tolerance: 0.1 })).toMatchObject({
      ok: false,
      issues: [{ reason: 'no-tap-fits' }],
    });
  });

  it('has no tap where it has none at all', () => {
    expect(bestTap({ supplyVolts: 120, taps: [], tolerance: 0.1 })).toMatchObject({ ok: false });
  });
});

describe('a breaker', () => {
  const sizes = [15, 20, 25, 30];

  // 1.25 × 12 A + 2 A by hand.
  it('is laid out for 125 % of what runs for hours', () => {
    const load = { continuousCurrent: 12, otherCurrent: 2, continuousFactor: 1.25 };
    expect(evaluate(designCurrent, load)).toEqual({ ok: true, value: 17 });
    expect(nextStandardSize(17, sizes)).toEqual({ ok: true, value: 20 });
  });

  it('of just the current is enough, whatever crumbs arithmetic leaves', () => {
    expect(nextStandardSize(20, sizes)).toEqual({ ok: true, value: 20 });
    expect(nextStandardSize(20 * (1 + 1e-12), sizes)).toEqual({ ok: true, value: 20 });
    expect(nextStandardSize(20.001, sizes)).toEqual({ ok: true, value: 25 });
  });

  it('is not made so large, or for no number', () => {
    expect(nextStandardSize(31, sizes)).toMatchObject({ issues: [{ reason: 'above-largest-size' }] });
    expect(nextStandardSize(Number.NaN, sizes)).toMatchObject({ issues: [{ code: 'not-finite' }] });
  });
});

describe('neighbours in a raceway', () => {
  // NEC Table 310.15(C)(1), from memory: last and first of each row.
  it.each([
    [3, 1],
    [4, 0.8],
    [6, 0.8],
    [7, 0.7],
    [9, 0.7],
    [10, 0.5],
    [20, 0.5],
    [21, 0.45],
    [30, 0.45],
    [31, 0.4],
    [40, 0.4],
    [41, 0.35],
  ])('%i conductors leave %d', (conductors, share) => {
    expect(bundleFactor(conductors)).toBe(share);
  });
});

describe('the equipment ground', () => {
  // NEC 250.122(B): 12 AWG grows with conductors from 12 to 8 AWG to 8 AWG.
  it('grows with its conductors and never shrinks', () => {
    const of = (fitted: number): number =>
      expectOk(
        evaluate(equipmentGround, {
          tableArea: gaugeArea(12),
          fittedArea: gaugeArea(fitted),
          neededArea: gaugeArea(12),
        }),
      );
    expect(gaugeOf(of(8))).toBeCloseTo(8, 9);
    expect(gaugeOf(of(12))).toBeCloseTo(12, 9);
    expect(gaugeOf(of(14))).toBeCloseTo(12, 9);
  });
});
