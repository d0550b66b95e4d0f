import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CUBIC_FOOT, FOOT, INCH, MINUTE, US_GALLON } from '../../quantity/index.ts';
import { evaluate, expectOk, Recorder, traced } from '../../trace/index.ts';
import {
  darcyFlow,
  darcyLoss,
  flowAtVelocity,
  frictionFactor,
  HAZEN_WILLIAMS_FORMS,
  hazenWilliamsBy,
  hazenWilliamsFlow,
  hazenWilliamsLoss,
  pipeLoss,
  regimeOf,
  reynolds,
  velocity,
} from './index.ts';

const GPM = US_GALLON / MINUTE;
const run = { insideDiameter: 2.067 * INCH, length: 30, roughness: 1.5e-6, viscosity: 1e-6 };

const pipes = fc.record({
  insideDiameter: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
  length: fc.double({ min: 0.1, max: 500, noNaN: true }),
  roughness: fc.double({ min: 0, max: 2e-4, noNaN: true }),
  viscosity: fc.double({ min: 5e-7, max: 2e-6, noNaN: true }),
});

describe('velocity and Reynolds number', () => {
  it('is about 12 ft/s for 125 gpm in 2 in Schedule 40 (common practice, no source)', () => {
    const v = expectOk(evaluate(velocity, { insideDiameter: 2.067 * INCH, flow: 125 * GPM }));
    expect(v / FOOT).toBeCloseTo(12, 0);
    expect(v / FOOT).toBeGreaterThan(8);
  });

  it('returns from velocity to flow', () => {
    for (const insideDiameter of [0.01, 0.05, 0.2]) {
      const v = velocity.kernel({ insideDiameter, flow: 0.004 });
      expect(flowAtVelocity.kernel({ insideDiameter, velocity: v })).toBeCloseTo(0.004, 15);
    }
  });

  it('refuses a pipe of no bore and an infinite flow', () => {
    const answer = evaluate(reynolds, { insideDiameter: 0, viscosity: 1e-6, flow: Number.POSITIVE_INFINITY });
    expect(answer.ok ? [] : answer.issues.map((one) => one.code)).toEqual(['out-of-range', 'not-finite']);
  });
});

describe('friction factor', () => {
  it('is 64/Re in laminar flow', () => {
    expect(expectOk(evaluate(frictionFactor, { reynolds: 1000, relativeRoughness: 0.001 }))).toBe(0.064);
  });

  it('satisfies the Colebrook equation to the last digits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3.603, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (decade, relativeRoughness) => {
          const re = 10 ** decade;
          const f = frictionFactor.kernel({ reynolds: re, relativeRoughness });
          const right = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 / (re * Math.sqrt(f)));
          expect(Math.abs(1 / Math.sqrt(f) / right - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it('has no jump where the regimes meet', () => {
    for (const relativeRoughness of [0, 1e-4, 0.01, 0.05]) {
      for (const at of [2000, 4000]) {
        const below = frictionFactor.kernel({ reynolds: at * (1 - 1e-9), relativeRoughness });
        const above = frictionFactor.kernel({ reynolds: at * (1 + 1e-9), relativeRoughness });
        expect(Math.abs(above / below - 1)).toBeLessThan(1e-7);
      }
    }
  });

  it('names the regime', () => {
    expect([1999, 3000, 4000].map(regimeOf)).toEqual(['laminar', 'transition', 'turbulent']);
  });

  it('refuses no flow and a wall rougher than a tenth of the bore', () => {
    expect(evaluate(frictionFactor, { reynolds: 0, relativeRoughness: 0 }).ok).toBe(false);
    expect(evaluate(frictionFactor, { reynolds: 1e5, relativeRoughness: 0.2 }).ok).toBe(false);
  });
});

describe('Darcy–Weisbach', () => {
  it('returns from head to flow in every regime', () => {
    for (let decade = -8; decade <= -1; decade += 0.05) {
      const flow = 10 ** decade;
      const head = darcyLoss.kernel({ ...run, flow });
      const back = expectOk(evaluate(darcyFlow, { ...run, head }));
      expect(Math.abs(back / flow - 1)).toBeLessThan(1e-11);
    }
  });

  it('loses nothing, and no NaN, at flows too small for a Reynolds number', () => {
    for (const flow of [0, 5e-324, -1e-310, 1e-90]) {
      expect(Math.abs(darcyLoss.kernel({ ...run, flow }))).toBeLessThan(1e-80);
    }
  });

  it('loses more with more flow, and the same backwards', () => {
    fc.assert(
      fc.property(pipes, fc.double({ min: 1e-7, max: 0.05, noNaN: true }), (pipe, flow) => {
        const head = darcyLoss.kernel({ ...pipe, flow });
        expect(darcyLoss.kernel({ ...pipe, flow: flow * 1.001 })).toBeGreaterThan(head);
        expect(darcyLoss.kernel({ ...pipe, flow: -flow })).toBe(-head);
      }),
    );
  });

  it('passes no less through a bigger pipe', () => {
    fc.assert(
      fc.property(pipes, fc.double({ min: 0.001, max: 50, noNaN: true }), (pipe, head) => {
        const bigger = { ...pipe, insideDiameter: pipe.insideDiameter * 1.01 };
        expect(darcyFlow.kernel({ ...bigger, head })).toBeGreaterThan(darcyFlow.kernel({ ...pipe, head }));
      }),
    );
  });

  it('writes its working down, with the same result', () => {
    const recorder = new Recorder();
    const x = { ...run, flow: 0.004 };
    expect(traced(darcyLoss, x, recorder)).toBe(darcyLoss.kernel(x));
    const [step] = recorder.steps;
    const children = step?.step === 'formula' ? step.children : [];
    expect(children.map((one) => one.id)).toEqual([
      'water.velocity',
      'water.reynolds',
      'water.friction-factor',
    ]);
  });
});

describe('Hazen–Williams', () => {
  const pipe = { insideDiameter: 2.067 * INCH, length: 100 * FOOT, cFactor: 150 };

  it('gives 5.58 ft for 60 gpm in 100 ft of 2 in (EPANET form)', () => {
    const head = expectOk(evaluate(hazenWilliamsLoss, { ...pipe, flow: 60 * GPM }));
    expect(head / FOOT).toBeCloseTo(5.58, 2);
  });

  it('returns from head to flow', () => {
    for (const flow of [1e-6, 1e-3, 0.01]) {
      const head = hazenWilliamsLoss.kernel({ ...pipe, flow });
      expect(hazenWilliamsFlow.kernel({ ...pipe, head }) / flow).toBeCloseTo(1, 12);
    }
  });

  it('keeps every printed form within 1.5 % of the one followed', () => {
    for (const gpm of [20, 60, 120]) {
      const followed = hazenWilliamsLoss.kernel({ ...pipe, flow: gpm * GPM });
      for (const form of Object.values(HAZEN_WILLIAMS_FORMS)) {
        const head = hazenWilliamsBy(form, { ...pipe, flow: gpm * GPM });
        expect(Math.abs(head / followed - 1)).toBeLessThan(0.015);
      }
    }
  });
});

describe('pipeLoss', () => {
  it('gives Cengel & Cimbala, Example 8-3, at once', () => {
    const loss = expectOk(
      pipeLoss({
        insideDiameter: 2 * INCH,
        length: 200 * FOOT,
        wall: { method: 'darcy', roughness: 7e-6 * FOOT },
        viscosity: (0.0007536 / 62.36) * FOOT ** 2,
        flow: 0.2 * CUBIC_FOOT,
      }),
    );
    expect(loss.velocity / FOOT).toBeCloseTo(9.17, 2);
    expect(loss.frictionFactor).toBeCloseTo(0.0174, 4);
    expect(loss.regime).toBe('turbulent');
  });

  it('finds for Hazen–Williams the friction factor that Darcy would need', () => {
    const x = { ...run, flow: 0.004, wall: { method: 'hazen-williams', cFactor: 150 } as const };
    const loss = expectOk(pipeLoss(x));
    const head = (loss.frictionFactor * run.length * loss.velocity ** 2) / run.insideDiameter / (2 * 9.80665);
    expect(head).toBeCloseTo(loss.headLoss, 12);
  });

  it('is all zero at no flow, and tells each bad value once', () => {
    const still = expectOk(pipeLoss({ ...run, flow: 0, wall: { method: 'darcy', roughness: 1e-6 } }));
    expect([still.headLoss, still.velocity, still.frictionFactor]).toEqual([0, 0, 0]);
    const bad = pipeLoss({
      ...run,
      length: -1,
      insideDiameter: -1,
      flow: 1,
      wall: { method: 'darcy', roughness: 0 },
    });
    expect(bad.ok ? [] : bad.issues.map((one) => one.where)).toEqual(['insideDiameter', 'length']);
  });
});
