import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CUBIC_FOOT,
  FOOT,
  HORSEPOWER,
  INCH_OF_MERCURY,
  MINUTE,
  POUND,
  PSI,
  US_GALLON,
} from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import {
  affinityFlow,
  affinityHead,
  affinityPower,
  drivePower,
  hydraulicPower,
  npshAvailable,
  pumpCurveIssues,
  pumpCurveOf,
  pumpHead,
  pumpQuadraticFit,
  totalHead,
} from './index.ts';

const GPM = US_GALLON / MINUTE;
const point = (gpm: number, feet: number) => ({ flow: gpm * GPM, head: feet * FOOT });

describe('pump curve', () => {
  it('passes through the points it was made from', () => {
    const sets = [
      [point(60, 45)],
      [point(0, 80), point(60, 45)],
      [point(0, 81), point(50, 60), point(78, 20)],
      [point(10, 78), point(40, 66), point(70, 40)],
      [point(0, 80), point(20, 77), point(40, 66), point(70, 40)],
    ];
    for (const points of sets) {
      const curve = expectOk(pumpCurveOf(points));
      for (const p of points) expect(pumpHead(curve, p.flow)).toBeCloseTo(p.head, 9);
    }
  });

  it('makes of one point a shutoff of 4/3 and an end of twice the flow (EPANET 2 manual)', () => {
    const curve = expectOk(pumpCurveOf([point(60, 45)]));
    expect(pumpHead(curve, 0) / FOOT).toBeCloseTo(60, 9);
    expect(pumpHead(curve, 120 * GPM)).toBeCloseTo(0, 9);
  });

  it('is an issue where it rises, and where flows do not', () => {
    const rising = pumpCurveOf([point(0, 50), point(20, 60), point(70, 40)]);
    expect(rising.ok ? '' : rising.issues[0]?.reason).toBe('pump-curve-rises');
    const twice = pumpCurveOf([point(20, 60), point(20, 50)]);
    expect(twice.ok ? '' : twice.issues[0]?.reason).toBe('pump-curve-flows-not-rising');
    expect(pumpCurveOf([]).ok).toBe(false);
    expect(pumpCurveIssues('pump', { shape: 'power', a: 20, b: -1, c: 2 })[0]?.reason).toBe(
      'pump-curve-rises',
    );
    expect(pumpQuadraticFit([point(10, 20), point(20, 40)]).ok).toBe(false);
  });

  it('never rises, whatever falling points it is given', () => {
    const falls = fc.array(
      fc.tuple(fc.double({ min: 1, max: 40, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true })),
      {
        minLength: 1,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(falls, (steps) => {
        let gpm = 0;
        let feet = 130;
        const points = [point(0, feet)];
        for (const [more, less] of steps) {
          gpm += more;
          feet -= less;
          points.push(point(gpm, feet));
        }
        const curve = expectOk(pumpCurveOf(points));
        for (let q = 0; q < gpm; q += 3) {
          expect(pumpHead(curve, (q + 3) * GPM)).toBeLessThanOrEqual(pumpHead(curve, q * GPM) + 1e-9);
        }
      }),
    );
  });
});

describe('affinity', () => {
  it('gives Crane TP-410, Example 7-33', () => {
    const speedRatio = 1700 / 3500;
    expect(evaluate(affinityFlow, { flow: 400, speedRatio }).ok).toBe(false);
    expect(affinityFlow.kernel({ flow: 400 * GPM, speedRatio }) / GPM).toBeCloseTo(194.3, 1);
    expect(affinityHead.kernel({ head: 126 * FOOT, speedRatio }) / FOOT).toBeCloseTo(29.73, 2);
    expect(affinityPower.kernel({ power: 17.5 * HORSEPOWER, speedRatio }) / HORSEPOWER).toBeCloseTo(2.005, 3);
  });
});

describe('power, head and suction', () => {
  it('needs shaft power at 70.7 % as Crane TP-410, Example 7-34, computes: 107.1 hp', () => {
    const density = (62.364 * POUND) / CUBIC_FOOT;
    const power = drivePower.kernel({ flow: 700 * GPM, head: 428 * FOOT, density, efficiency: 70.7 / 100 });
    expect(power / HORSEPOWER).toBeCloseTo(107.06, 1);
  });

  it('is gpm·ft/3956 in horsepower, to 0.1 % (10 CFR 431 subpart Y)', () => {
    const hp =
      expectOk(evaluate(hydraulicPower, { flow: 50 * GPM, head: 20.5 * FOOT, density: 999 })) / HORSEPOWER;
    expect(Math.abs(hp / ((50 * 20.5) / 3956) - 1)).toBeLessThan(1.5e-3);
  });

  it('reads 48.4 ft from 18 psi and 6 inHg (gauge form of the trade)', () => {
    const head = totalHead.kernel({
      dischargePressure: 18 * PSI,
      suctionVacuum: 6 * INCH_OF_MERCURY,
      gaugeHeight: 0,
      suctionVelocity: 2,
      dischargeVelocity: 2,
      density: 999.016,
    });
    expect(head / FOOT).toBeCloseTo(48.38, 1);
  });

  it('loses suction head to lift, friction, heat and altitude', () => {
    const sea = { surfacePressure: 101_325, vapourPressure: 2339, density: 998.2, lift: 1, suctionLoss: 2 };
    const head = expectOk(evaluate(npshAvailable, sea));
    expect(head).toBeCloseTo((101_325 - 2339) / (998.2 * 9.80665) - 3, 9);
    for (const worse of [
      { surfacePressure: 83_000 },
      { vapourPressure: 7385 },
      { lift: 2 },
      { suctionLoss: 3 },
    ]) {
      expect(npshAvailable.kernel({ ...sea, ...worse })).toBeLessThan(head);
    }
  });

  it('refuses an efficiency above one', () => {
    expect(evaluate(drivePower, { flow: 0.001, head: 10, density: 1000, efficiency: 1.2 }).ok).toBe(false);
  });
});
