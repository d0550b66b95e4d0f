import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, MINUTE, PSI, US_GALLON } from '../../quantity/index.ts';
import { CV } from '../valve/flow-coefficient.ts';
import { deviceLoss, type LossLaw, lossAt, lossLawIssues, lossLink, powerOf } from './index.ts';

const GPM = US_GALLON / MINUTE;
const POINTS: LossLaw = {
  type: 'points',
  flows: [30 * GPM, 60 * GPM, 100 * GPM],
  losses: [1.5 * FOOT, 5 * FOOT, 13 * FOOT],
};
const LAWS: readonly LossLaw[] = [
  { type: 'k', k: 3, insideDiameter: 0.0525 },
  { type: 'coefficient', coefficient: 50 * CV },
  { type: 'point', flow: 60 * GPM, loss: 10 * FOOT, exponent: 1.8 },
  POINTS,
];

describe('loss law', () => {
  it('loses 1 psi at its Cv in gpm', () => {
    const head = lossAt({ type: 'coefficient', coefficient: 50 * CV }, 50 * GPM);
    expect((head * 999.016 * 9.80665) / PSI).toBeCloseTo(1, 9);
  });

  it('loses a quarter at half the flow by the square', () => {
    const law: LossLaw = { type: 'point', flow: 60 * GPM, loss: 10 * FOOT, exponent: 2 };
    expect(lossAt(law, 30 * GPM) / FOOT).toBeCloseTo(2.5, 12);
  });

  it('passes through its points, and is a parabola beyond them', () => {
    [30, 60, 100].forEach((gpm, i) => {
      expect(lossAt(POINTS, gpm * GPM) / FOOT).toBeCloseTo([1.5, 5, 13][i] ?? 0, 9);
    });
    expect(lossAt(POINTS, 200 * GPM) / FOOT).toBeCloseTo(52, 9);
    expect(lossAt(POINTS, 0)).toBe(0);
  });

  it('returns a parabola exactly from any three of its points', () => {
    const flows = [0.001, 0.002, 0.005];
    const law: LossLaw = { type: 'points', flows, losses: flows.map((q) => 3e5 * q * q) };
    for (const q of [0.0004, 0.0016, 0.003, 0.008]) expect(lossAt(law, q)).toBeCloseTo(3e5 * q * q, 9);
  });

  it('never falls with flow, and is the same backwards', () => {
    fc.assert(
      fc.property(fc.constantFrom(...LAWS), fc.double({ min: 1e-6, max: 0.02, noNaN: true }), (law, q) => {
        expect(lossAt(law, q * 1.001)).toBeGreaterThan(lossAt(law, q));
        expect(lossAt(law, -q)).toBe(-lossAt(law, q));
      }),
    );
  });

  it('is one law in the network, in the working and here', () => {
    for (const law of LAWS) {
      const link = lossLink(law, 2);
      const power = powerOf(law);
      const q = 0.0033;
      if (link.type === 'custom') expect(link.loss(q)).toBeCloseTo(2 * lossAt(law, q), 12);
      if (power) {
        const traced = deviceLoss.kernel({ resistance: 2 * power.r, exponent: power.n, flow: q });
        expect(traced).toBeCloseTo(2 * lossAt(law, q), 12);
      }
    }
  });

  it('gives the network its true slope', () => {
    const link = lossLink(POINTS, 1.5);
    if (link.type !== 'custom') throw new Error('a custom law was expected');
    for (const q of [0.001, 0.0025, 0.0055, 0.009]) {
      const slope = (link.loss(q + 1e-8) - link.loss(q - 1e-8)) / 2e-8;
      expect(link.slope(q) / slope).toBeCloseTo(1, 5);
    }
  });

  it('refuses curves that fall, turn back or miss the origin', () => {
    const reason = (flows: number[], losses: number[]) =>
      lossLawIssues('x', { type: 'points', flows, losses })[0]?.reason;
    expect(reason([0.001, 0.002], [2, 1])).toBe('loss-curve-falls');
    expect(reason([0.002, 0.001], [1, 2])).toBe('loss-curve-flows-not-rising');
    expect(reason([0, 0.001], [1, 2])).toBe('loss-curve-misses-origin');
    expect(reason([], [])).toBe('loss-curve-too-few-points');
    expect(reason([0.001], [Number.NaN])).toBe('loss-curve-not-numbers');
    for (const law of LAWS) expect(lossLawIssues('x', law)).toEqual([]);
    expect(lossLawIssues('x', { type: 'point', flow: 0, loss: 1, exponent: 9 })).toHaveLength(2);
  });
});
