import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, MINUTE, STANDARD_GRAVITY, US_GALLON, ZERO_CELSIUS } from '../../quantity/index.ts';
import { expectOk, type GroupStep, Recorder, type Step } from '../../trace/index.ts';
import type { LossLaw } from '../loss/loss-law.ts';
import { EXAMPLE_PAD, twoInch } from './example.ts';
import {
  buildPad,
  explainPad,
  type PadSpec,
  type PadState,
  padPump,
  padVelocities,
  solvePad,
} from './index.ts';

const GPM = US_GALLON / MINUTE;

function solve(spec: PadSpec, state: PadState) {
  return expectOk(solvePad(expectOk(buildPad(spec)), state));
}

/** h = r·Q² */
function square(r: number): LossLaw {
  return { type: 'point', flow: 0.01, loss: r * 1e-4, exponent: 2 };
}

/** A loop of quadratic losses only, whose operating point is one square root. */
function quadraticPad(lift: number): PadSpec {
  return {
    basins: [
      { id: 'pool', level: 0 },
      { id: 'spa', level: lift },
    ],
    suctions: [{ basin: 'pool', line: [{ type: 'device', loss: square(40_000) }] }],
    suction: [],
    pump: { curve: { shape: 'power', a: 20, b: 300_000, c: 2 }, elevation: 0 },
    discharge: [],
    filter: { clean: square(150_000), elevation: 0 },
    approach: [],
    bank: {
      arrangement: 'direct',
      heaters: [
        {
          id: 'heater',
          loss: square(200_000),
          band: { least: 0.001, most: 0.006 },
          elevation: 0,
          inlet: [],
          outlet: [],
        },
      ],
      supplyHeader: [],
      returnHeader: [],
    },
    departure: [],
    returns: [
      { basin: 'pool', line: [{ type: 'device', loss: square(110_000) }] },
      { basin: 'spa', line: [{ type: 'device', loss: square(110_000) }] },
    ],
    temperature: ZERO_CELSIUS + 27,
    airPressure: 101_325,
  };
}

const states = fc.record({
  speed: fc.double({ min: 0.35, max: 1.2, noNaN: true }),
  loading: fc.double({ min: 0.8, max: 8, noNaN: true }),
  bypass: fc.double({ min: 0, max: 1, noNaN: true }),
  temperature: fc.double({ min: 275, max: 313, noNaN: true }),
  from: fc.constantFrom({ pool: 1 }, { spa: 1 }, { pool: 0.6, spa: 0.4 }),
  to: fc.constantFrom({ pool: 1 }, { spa: 1 }, { pool: 0.3, spa: 0.7 }),
});

describe('operating point', () => {
  it('is the root of pump curve and system curve', () => {
    for (const lift of [0, 0.5, 2]) {
      const solution = solve(quadraticPad(lift), { speed: 1, to: { spa: 1 } });
      const r = 40_000 + 150_000 + 200_000 + 110_000;
      expect(solution.flow).toBeCloseTo(Math.sqrt((20 - lift) / (300_000 + r)), 8);
      expect(solution.pumpHead).toBeCloseTo(lift + r * solution.flow ** 2, 5);
    }
  });

  it('goes with the speed where there is no lift, and with loading in the filter alone', () => {
    const full = solve(quadraticPad(0), { speed: 1 });
    for (const speed of [0.3, 0.5, 0.8]) {
      expect(solve(quadraticPad(0), { speed }).flow).toBeCloseTo(speed * full.flow, 8);
    }
    const dirty = solve(quadraticPad(0), { speed: 1, loading: 3 });
    expect(dirty.flow).toBeCloseTo(Math.sqrt(20 / (300_000 + 500_000 + 300_000)), 8);
  });

  it('splits between heater and bypass as the roots of their resistances (parallel-pipe rule)', () => {
    const valve = {
      type: 'linear',
      coefficient: 1 / Math.sqrt(999.016 * STANDARD_GRAVITY * 50_000),
    } as const;
    const solution = solve({ ...quadraticPad(0), bypass: { valve, line: [] } }, { speed: 1, bypass: 1 });
    expect(solution.bypassFlow / (solution.heaters[0]?.flow ?? 0)).toBeCloseTo(
      Math.sqrt(200_000 / 50_000),
      6,
    );
  });
});

describe('mass and energy', () => {
  const pad = expectOk(buildPad(EXAMPLE_PAD));

  it('close in every state', () => {
    fc.assert(
      fc.property(states, (state) => {
        const solution = expectOk(solvePad(pad, state));
        const { flow, heaters, bypassFlow, basins } = solution;
        expect((heaters[0]?.flow ?? 0) + bypassFlow).toBeCloseTo(flow, 9);
        expect(basins.reduce((sum, one) => sum + one.net, 0)).toBeCloseTo(0, 9);
        expect(flow).toBeGreaterThan(0);
        const through = solution.filterInletPressure - solution.filterOutletPressure;
        const { density } = solution.water;
        const clean = 2.5 * 2.31 * FOOT * (flow / (60 * GPM)) ** 1.8;
        expect(through / (density * STANDARD_GRAVITY)).toBeCloseTo(state.loading * clean, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('show in the working: losses along the way add up to the head of the pump', () => {
    fc.assert(
      fc.property(states, (state) => {
        const recorder = new Recorder();
        const solution = expectOk(explainPad(pad, { ...state, from: { pool: 1 }, to: { spa: 1 } }, recorder));
        const parts = new Map(groups(recorder.steps).map((one) => [one.about?.['part'], one]));
        const ways = ['suction', 'discharge', 'filter', 'approach', 'heater', 'departure', 'returns'];
        let sum = 0;
        for (const [name, group] of parts) {
          if (name === 'pump' || name === undefined || String(name).startsWith('bypass')) continue;
          expect(ways.some((way) => String(name).startsWith(way))).toBe(true);
          sum += group.value ?? Number.NaN;
          expect(childSum(group)).toBeCloseTo(group.value ?? Number.NaN, 7);
        }
        expect(sum + 1.5 * FOOT).toBeCloseTo(solution.pumpHead, 6);
      }),
      { numRuns: 20 },
    );
  });
});

function groups(steps: readonly Step[]): GroupStep[] {
  const [root] = steps;
  return root?.step === 'group' ? root.children.filter((one) => one.step === 'group') : [];
}

function childSum(group: GroupStep): number {
  return group.children.reduce((sum, one) => {
    const value = one.step === 'formula' ? one.result.value : one.step === 'given' ? Number(one.value) : 0;
    return sum + value;
  }, 0);
}

describe('what makes more or less flow', () => {
  const pad = expectOk(buildPad(EXAMPLE_PAD));
  const flowOf = (state: PadState) => expectOk(solvePad(pad, state));

  it('more speed, warmer water, a cleaner filter and a bigger pipe never give less', () => {
    fc.assert(
      fc.property(states, (state) => {
        const { flow } = flowOf(state);
        const little = 1e-9;
        expect(flowOf({ ...state, speed: state.speed * 1.02 }).flow).toBeGreaterThan(flow);
        expect(flowOf({ ...state, temperature: state.temperature + 5 }).flow).toBeGreaterThan(flow - little);
        expect(flowOf({ ...state, loading: state.loading * 1.1 }).flow).toBeLessThan(flow);
        expect(flowOf({ ...state, wear: { suction: 1.5 } }).flow).toBeLessThan(flow);
        expect(flowOf({ ...state, wear: { returns: 1.5 } }).flow).toBeLessThan(flow);
        expect(flowOf({ ...state, wear: { heater: 1.5 } }).flow).toBeLessThan(flow + little);
        expect(flowOf({ ...state, wear: { pump: 0.9 } }).flow).toBeLessThan(flow);
      }),
      { numRuns: 25 },
    );
    const bigger = { ...twoInch(3, 0.6), insideDiameter: 0.0627 };
    const wide = solve({ ...EXAMPLE_PAD, suction: [bigger], discharge: [bigger] }, { speed: 1 });
    expect(wide.flow).toBeGreaterThan(flowOf({ speed: 1 }).flow);
  });

  it('opening the bypass takes from the heater and adds to the whole', () => {
    fc.assert(
      fc.property(states, (state) => {
        const [narrow, wide] = [state.bypass * 0.9, state.bypass * 0.9 + 0.1];
        const before = flowOf({ ...state, bypass: narrow });
        const after = flowOf({ ...state, bypass: wide });
        expect(after.heaters[0]?.flow).toBeLessThan(before.heaters[0]?.flow ?? 0);
        expect(after.flow).toBeGreaterThan(before.flow);
      }),
      { numRuns: 25 },
    );
  });

  it('gives the same from wherever the last solution left it', () => {
    const fresh = solve(EXAMPLE_PAD, { speed: 0.6, bypass: 0.4 }).flow;
    flowOf({
      speed: 1.2,
      loading: 8,
      from: { spa: 1 },
      to: { spa: 1 },
      wear: { pump: 0.8 },
      temperature: 280,
    });
    expect(flowOf({ speed: 0.6, bypass: 0.4 }).flow).toBeCloseTo(fresh, 10);
  });
});

describe('heights', () => {
  it('of the heater change its pressure and not its flow', () => {
    const bank = EXAMPLE_PAD.bank!;
    const low = solve(EXAMPLE_PAD, { speed: 0.7 });
    const raised = bank.heaters.map((one) => ({ ...one, elevation: one.elevation + 2 }));
    const high = solve({ ...EXAMPLE_PAD, bank: { ...bank, heaters: raised } }, { speed: 0.7 });
    expect(high.flow).toBeCloseTo(low.flow, 10);
    const fall = (low.heaters[0]?.inletPressure ?? 0) - (high.heaters[0]?.inletPressure ?? 0);
    expect(fall).toBeCloseTo(2 * STANDARD_GRAVITY * low.water.density, 3);
  });

  it('make the water boil where a pump is set too high, and say so', () => {
    const spec = { ...EXAMPLE_PAD, pump: { ...EXAMPLE_PAD.pump, elevation: 9 } };
    const issues = solve(spec, { speed: 1 }).issues;
    expect(issues.map((one) => [one.where, one.reason])).toContainEqual(['pumpInletPressure', 'water-boils']);
  });

  it('count against the suction of the pump', () => {
    const pad = expectOk(buildPad(EXAMPLE_PAD));
    const slow = expectOk(padPump(pad, expectOk(solvePad(pad, { speed: 0.5 }))));
    const fast = expectOk(padPump(pad, expectOk(solvePad(pad, { speed: 1 }))));
    expect(fast.npsh).toBeLessThan(slow.npsh);
    expect(fast.wire).toBeCloseTo(fast.hydraulic / 0.5, 9);
  });
});

describe('basins', () => {
  it('let the surplus run over the spillway, and nothing when each keeps its own', () => {
    const spill = solve(EXAMPLE_PAD, { speed: 0.8, from: { pool: 1 }, to: { spa: 1 } });
    const spa = spill.basins.find((one) => one.id === 'spa');
    expect(spa?.spill).toBeCloseTo(spill.flow, 9);
    expect(spa?.spillHead).toBeGreaterThan(0.02);
    const apart = solve(EXAMPLE_PAD, { speed: 0.8, from: { spa: 1 }, to: { spa: 1 } });
    expect(apart.basins.every((one) => Math.abs(one.net) < 1e-9)).toBe(true);
  });

  it('drain back through a standing pump where no check valve holds the water', () => {
    const spec = { ...EXAMPLE_PAD, departure: [twoInch(4, 0.6)] };
    const rest = solve(spec, { speed: 0, from: { pool: 1 }, to: { spa: 1 } });
    expect(rest.flow / GPM).toBeLessThan(-1);
    expect(rest.basins.find((one) => one.id === 'spa')?.net).toBeCloseTo(rest.flow, 12);
  });

  it('do not drain through a check valve when the pump stands', () => {
    const rest = solve(EXAMPLE_PAD, { speed: 0, from: { pool: 1 }, to: { spa: 1 } });
    expect(Math.abs(rest.flow)).toBeLessThan(1e-12);
  });
});

describe('velocities', () => {
  it('are those of the flow in each bore', () => {
    const pad = expectOk(buildPad(EXAMPLE_PAD));
    const solution = expectOk(solvePad(pad, { speed: 1 }));
    const runs = padVelocities(pad, solution);
    const returned = runs.find((one) => one.id === 'returns.pool.0');
    expect(returned?.velocity).toBeCloseTo((4 * solution.flow) / Math.PI / (2.067 * 0.0254) ** 2, 9);
    expect(runs.find((one) => one.id === 'returns.spa.0')?.velocity).toBe(0);
  });
});

describe('what cannot be', () => {
  const why = (spec: PadSpec, state: PadState = { speed: 1 }) => {
    const pad = buildPad(spec);
    if (!pad.ok) return pad.issues.map((one) => `${one.where} ${one.reason ?? one.code}`);
    const solution = solvePad(pad.value, state);
    return solution.ok ? [] : solution.issues.map((one) => `${one.where} ${one.reason ?? one.code}`);
  };

  it('is an issue on the part it is about', () => {
    const { pump, filter } = EXAMPLE_PAD;
    const rising = { shape: 'points', flows: [0, 0.002, 0.004], heads: [20, 22, 10] } as const;
    expect(why({ ...EXAMPLE_PAD, pump: { ...pump, curve: rising } })).toEqual([
      'pump.curve pump-curve-rises',
    ]);
    expect(why({ ...EXAMPLE_PAD, suction: [{ ...twoInch(3, 0), length: -1 }] })).toEqual([
      'suction.0.length out-of-range',
    ]);
    expect(why({ ...EXAMPLE_PAD, returns: [{ basin: 'lake', line: [] }] })).toContain(
      'returns.lake unknown-basin',
    );
    expect(
      why({
        ...EXAMPLE_PAD,
        filter: { ...filter, clean: { ...filter.clean, type: 'k', k: -1, insideDiameter: 1 } },
      }),
    ).toEqual(['filter.clean.k out-of-range']);
    expect(why({ ...EXAMPLE_PAD, suctions: [] })).toEqual(['suctions no-branch']);
  });

  it('is an issue of the state', () => {
    expect(why(EXAMPLE_PAD, { speed: -1 })).toEqual(['speed out-of-range']);
    expect(why(EXAMPLE_PAD, { speed: 1, bypass: 2 })).toEqual(['bypass out-of-range']);
    expect(why(EXAMPLE_PAD, { speed: Number.NaN })).toEqual(['speed not-finite']);
    expect(why(EXAMPLE_PAD, { speed: 1, from: {}, to: {} })).toEqual(['pad all-valves-shut']);
  });

  it('leaves a dead-headed pump at its shutoff head', () => {
    const solution = solve(EXAMPLE_PAD, { speed: 1, to: {} });
    expect(solution.flow).toBeLessThan(1e-9);
    expect(solution.pumpHead / FOOT).toBeCloseTo(88, 3);
  });
});
