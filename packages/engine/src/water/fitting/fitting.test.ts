import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, INCH, MINUTE, US_GALLON } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import {
  completeTurbulence,
  contractionK,
  equivalentLength,
  expansionK,
  fittingLoss,
  kOfLength,
  lossCoefficient,
} from './index.ts';

const GPM = US_GALLON / MINUTE;
const twoInch = 2.067 * INCH;

describe('minor losses', () => {
  it('loses one velocity head at K = 1', () => {
    const flow = 60 * GPM;
    const v = (4 * flow) / (Math.PI * twoInch ** 2);
    const head = expectOk(evaluate(fittingLoss, { k: 1, insideDiameter: twoInch, flow }));
    expect(head).toBeCloseTo(v ** 2 / 19.6133, 12);
  });

  it('returns from head to K', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 500, noNaN: true }), (k) => {
        const head = fittingLoss.kernel({ k, insideDiameter: twoInch, flow: 0.003 });
        const back = lossCoefficient.kernel({ head, insideDiameter: twoInch, flow: 0.003 });
        expect(Math.abs(back / k - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  it('refuses a negative K', () => {
    expect(evaluate(fittingLoss, { k: -1, insideDiameter: 0.05, flow: 0.001 }).ok).toBe(false);
  });
});

describe('equivalent length', () => {
  it('gives Crane TP-410M, Example 7-2: 37.0 m', () => {
    const length = expectOk(
      evaluate(equivalentLength, { k: 3.6, insideDiameter: 0.154, frictionFactor: 0.015 }),
    );
    expect(length).toBeCloseTo(37, 1);
    expect(kOfLength.kernel({ length, insideDiameter: 0.154, frictionFactor: 0.015 })).toBeCloseTo(3.6, 12);
  });

  it('gives 0.019 for 2 in steel in complete turbulence (Crane, page A-26)', () => {
    expect(completeTurbulence.kernel({ insideDiameter: twoInch })).toBeCloseTo(0.019, 3);
  });
});

describe('change of section', () => {
  const beta = 2.067 / 3.068;

  it('is Borda–Carnot when sudden', () => {
    const v1 = 1;
    const v2 = beta ** 2;
    const k = expectOk(evaluate(expansionK, { diameterRatio: beta, angle: Math.PI }));
    expect(k).toBeCloseTo((v1 - v2) ** 2, 12);
    expect(contractionK.kernel({ diameterRatio: beta, angle: Math.PI })).toBeCloseTo(0.273, 3);
  });

  it('vanishes where nothing changes, and a cone never loses more than a step', () => {
    expect(expansionK.kernel({ diameterRatio: 1, angle: 1 })).toBe(0);
    for (let angle = 0.05; angle <= Math.PI; angle += 0.05) {
      const step = expansionK.kernel({ diameterRatio: beta, angle: Math.PI });
      expect(expansionK.kernel({ diameterRatio: beta, angle })).toBeLessThanOrEqual(step + 1e-12);
      const narrow = contractionK.kernel({ diameterRatio: beta, angle });
      expect(narrow).toBeLessThanOrEqual(0.5 * (1 - beta ** 2) + 1e-12);
    }
  });

  it('refuses a ratio above one', () => {
    expect(evaluate(expansionK, { diameterRatio: 1.1, angle: 1 }).ok).toBe(false);
  });
});

it('counts feet: a 2 in elbow loses 0.29 ft at 60 gpm (Crane, 30·fT)', () => {
  const k = 30 * completeTurbulence.kernel({ insideDiameter: twoInch });
  const head = fittingLoss.kernel({ k, insideDiameter: twoInch, flow: 60 * GPM });
  expect(head / FOOT).toBeCloseTo(0.29, 2);
});
