/** Any pad that can be laid out is solved in any state, without a NaN, mass kept, and with a working that adds up. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk, Recorder, type Step } from '../../trace/index.ts';
import type { LossLaw } from '../loss/loss-law.ts';
import type { Valve } from '../valve/characteristic.ts';
import { CV } from '../valve/flow-coefficient.ts';
import {
  buildPad,
  explainPad,
  type Line,
  type PadHeater,
  type PadSpec,
  type PadState,
  type PipeRun,
} from './index.ts';

/** A double spread evenly over its decades. */
function spread(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map(Math.exp);
}

const share = fc.double({ min: 0, max: 1, noNaN: true });
const height = fc.double({ min: -2, max: 2, noNaN: true });

const pipe: fc.Arbitrary<PipeRun> = fc.record({
  type: fc.constant('pipe' as const),
  insideDiameter: spread(0.02, 0.15),
  length: spread(0.05, 80),
  wall: fc.oneof(
    fc.record({ method: fc.constant('darcy' as const), roughness: spread(1e-7, 2e-4) }),
    fc.record({ method: fc.constant('hazen-williams' as const), cFactor: fc.constantFrom(100, 130, 150) }),
  ),
  k: fc.oneof(fc.constant(0), spread(0.05, 12)),
});

const loss: fc.Arbitrary<LossLaw> = fc.oneof(
  fc.record({ type: fc.constant('k' as const), k: spread(0.1, 20), insideDiameter: spread(0.03, 0.1) }),
  spread(20, 300).map((cv): LossLaw => ({ type: 'coefficient', coefficient: cv * CV })),
  fc.record({
    type: fc.constant('point' as const),
    flow: spread(0.001, 0.006),
    loss: spread(0.3, 6),
    exponent: fc.constantFrom(1, 1.7, 1.85, 2),
  }),
  spread(0.001, 0.004).map(
    (q): LossLaw => ({ type: 'points', flows: [q, 1.7 * q, 2.6 * q], losses: [0.4, 1.3, 3.1] }),
  ),
);

const line: fc.Arbitrary<Line> = fc.array(
  fc.oneof(pipe, fc.record({ type: fc.constant('device' as const), loss, oneWay: fc.boolean() })),
  { maxLength: 2 },
);

const valve: fc.Arbitrary<Valve> = fc.oneof(
  spread(10, 300).map((cv): Valve => ({ type: 'linear', coefficient: cv * CV })),
  spread(10, 300).map((cv): Valve => ({ type: 'equal-percentage', coefficient: cv * CV, rangeability: 50 })),
  spread(0.02, 0.08).map((insideDiameter): Valve => ({ type: 'ball', insideDiameter, openK: 0.06 })),
);

const heater: fc.Arbitrary<Omit<PadHeater, 'id'>> = fc.record({
  loss,
  band: fc.constant({ least: 0.002, most: 0.006 }),
  elevation: height,
  inlet: line,
  outlet: line,
});

const pads: fc.Arbitrary<PadSpec> = fc
  .record({
    heaters: fc.array(heater, { minLength: 1, maxLength: 4 }),
    header: pipe,
    arrangement: fc.constantFrom('direct' as const, 'reverse' as const),
    lines: fc.tuple(line, line, line, line, line, line, line, line, line),
    shutoff: spread(8, 40),
    clean: loss,
    valve,
    spa: height,
  })
  .map(({ heaters, header, arrangement, lines, shutoff, clean, valve: bypass, spa }) => ({
    basins: [
      { id: 'pool', level: 0 },
      { id: 'spa', level: spa },
    ],
    suctions: [
      { basin: 'pool', line: lines[0] },
      { basin: 'spa', line: lines[1] },
    ],
    suction: lines[2],
    pump: {
      curve: {
        shape: 'points',
        flows: [0, 0.002, 0.005, 0.009],
        heads: [shutoff, 0.95 * shutoff, 0.6 * shutoff, 0.1 * shutoff],
      },
      elevation: 0.3,
    },
    discharge: lines[3],
    filter: { clean, elevation: 1 },
    approach: lines[4],
    bank: {
      arrangement,
      heaters: heaters.map((one, i) => ({ ...one, id: `heater-${i}` })),
      supplyHeader: heaters.slice(1).map(() => [header]),
      returnHeader: heaters.slice(1).map(() => [header]),
    },
    bypass: { valve: bypass, line: lines[5] },
    departure: lines[6],
    returns: [
      { basin: 'pool', line: lines[7] },
      { basin: 'spa', line: lines[8] },
    ],
    temperature: 300,
    airPressure: 101_325,
  }));

const openings = fc.oneof(
  fc.constant({ pool: 1 }),
  fc.record({ pool: fc.double({ min: 0.01, max: 1, noNaN: true }), spa: share }),
);

const states: fc.Arbitrary<PadState> = fc.record({
  speed: fc.double({ min: 0, max: 1.2, noNaN: true }),
  loading: spread(0.5, 20),
  bypass: fc.oneof(fc.constant(0), share),
  from: openings,
  to: openings,
  temperature: fc.double({ min: 274, max: 313, noNaN: true }),
});

/** Sum of the heads that the steps of a part hold. */
function heads(steps: readonly Step[]): number {
  return steps.reduce((sum, one) => {
    if (one.step === 'formula') return sum + one.result.value;
    return one.step === 'given' && one.kind === 'head' ? sum + Number(one.value) : sum;
  }, 0);
}

describe('any pad', () => {
  it('is solved in any state, keeps its water, and its working adds up', () => {
    fc.assert(
      fc.property(pads, fc.array(states, { minLength: 1, maxLength: 4 }), (spec, list) => {
        const pad = expectOk(buildPad(spec));
        for (const state of list) {
          const recorder = new Recorder();
          const solution = expectOk(explainPad(pad, state, recorder));
          const through = solution.heaters.reduce((sum, one) => sum + one.flow, solution.bypassFlow);
          expect(Math.abs(through - solution.flow)).toBeLessThan(1e-9);
          const figures = [solution.pumpHead, solution.filterInletPressure, ...solution.flows];
          expect(figures.every(Number.isFinite)).toBe(true);
          const [root] = recorder.steps;
          for (const part of root?.step === 'group' ? root.children : []) {
            if (part.step !== 'group' || part.id === 'water.pad-switch' || part.children.length === 0)
              continue;
            const sign = part.about?.['part'] === 'pump' ? -1 : 1;
            expect(sign * heads(part.children)).toBeCloseTo(part.value ?? Number.NaN, 5);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
