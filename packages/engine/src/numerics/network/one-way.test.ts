import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { buildNetwork } from './build.ts';
import type { LinkSpec, NodeSpec, PumpLaw, RegulatorLaw } from './law.ts';
import type { Network } from './network.ts';

const build = (nodes: readonly NodeSpec[], links: readonly LinkSpec[]): Network =>
  expectOk(buildNetwork({ nodes, links }));
const quadratic = (r: number) => ({ type: 'power', r, n: 2 }) as const;
const solved = (net: Network): Network => {
  expect(net.solve({ flowTolerance: 1e-11, headTolerance: 1e-11 })).toMatchObject({ ok: true });
  return net;
};

describe('check valve', () => {
  const net = build(
    [{ id: 'a', fixed: 1 }, { id: 'm' }, { id: 'b', fixed: 0 }],
    [
      { id: 'check', from: 'a', to: 'm', law: quadratic(1), oneWay: true },
      { id: 'mb', from: 'm', to: 'b', law: quadratic(3) },
    ],
  );

  it('lets flow run forward, holds it back, and lets it run again', () => {
    expect(solved(net).flow(0)).toBeCloseTo(0.5, 10);
    net.setFixed(net.nodeIndex('b'), 5);
    expect(solved(net).flow(0)).toBe(0);
    expect(net.state(0)).toBe('blocked');
    expect(net.potential(1)).toBeCloseTo(5, 8);
    net.setFixed(net.nodeIndex('b'), 0);
    expect(solved(net).flow(0)).toBeCloseTo(0.5, 10);
    expect(net.state(0)).toBe('open');
  });
});

describe('pump', () => {
  const power: PumpLaw = { type: 'pump', speed: 1, curve: { shape: 'power', a: 20, b: 1e6, c: 2 } };
  const loop = (law: PumpLaw, check = false): Network =>
    build(
      [{ id: 'pool', fixed: 0 }, { id: 'd' }, { id: 'e' }],
      [
        { id: 'pump', from: 'pool', to: 'd', law },
        { id: 'check', from: 'd', to: 'e', law: quadratic(1e5), oneWay: check },
        { id: 'return', from: 'e', to: 'pool', law: quadratic(9e5) },
      ],
    );

  it('runs where its curve meets the system: 20 − 1e6·q² = 1e6·q²', () => {
    const net = solved(loop(power));
    expect(net.flow(0)).toBeCloseTo(Math.sqrt(10 / 1e6), 12);
    expect(net.loss(0)).toBeCloseTo(-10, 9);
  });

  it('follows the affinity laws: half the speed, half the flow, a quarter of the head, for quadratic losses', () => {
    const net = solved(loop(power));
    const full = net.flow(0);
    net.setSpeed(0, 0.5);
    expect(solved(net).flow(0)).toBeCloseTo(full / 2, 12);
    expect(net.loss(0)).toBeCloseTo(-2.5, 9);
  });

  it('takes the same curve as points', () => {
    const flows = Array.from({ length: 41 }, (_, k) => k * 1e-4);
    const heads = flows.map((q) => 20 - 1e6 * q * q);
    const net = loop({ type: 'pump', speed: 0.8, curve: { shape: 'points', flows, heads } });
    // Chords of 0.1 L/s leave the parabola by a quarter of b·Δq² at most.
    expect(Math.abs(solved(net).loss(0) / (-10 * 0.64) - 1)).toBeLessThan(0.0005);
  });

  it('is shut at speed 0, and the pipe behind it stands still', () => {
    const net = loop(power, true);
    net.setSpeed(0, 0);
    expect(solved(net).flow(0)).toBe(0);
    expect(net.state(0)).toBe('shut');
    expect(net.potential(1)).toBeCloseTo(0, 8);
    net.setSpeed(0, 1);
    expect(solved(net).flow(0)).toBeCloseTo(Math.sqrt(10 / 1e6), 12);
  });

  it('that cannot lift holds still; between it and a check valve stands its shut-off head', () => {
    const net = build(
      [{ id: 'low', fixed: 0 }, { id: 'd' }, { id: 'high', fixed: 30 }],
      [
        { id: 'pump', from: 'low', to: 'd', law: power },
        { id: 'check', from: 'd', to: 'high', law: quadratic(1e5), oneWay: true },
      ],
    );
    solved(net);
    expect([net.flow(0), net.flow(1)]).toEqual([0, 0]);
    expect(net.potential(1)).toBeGreaterThan(20 - 1e-6);
    expect(net.potential(1)).toBeLessThan(20.1);
    net.setSpeed(0, 1.5);
    // 45 − 1e6·q² = 30 + 1e5·q².
    expect(solved(net).flow(1)).toBeCloseTo(Math.sqrt(15 / 1.1e6), 10);
  });
});

describe('regulator', () => {
  /** 7 in front, 2 held with 0.1 fall at full flow, an appliance behind. */
  const regulator: RegulatorLaw = { type: 'regulator', outlet: { set: 2, droop: 10 }, open: 1000 };
  const run = (law: RegulatorLaw, supply: number, demand: number): Network =>
    build(
      [{ id: 'street', fixed: supply }, { id: 'out' }, { id: 'burner', demand }],
      [
        { id: 'reg', from: 'street', to: 'out', law },
        { id: 'pipe', from: 'out', to: 'burner', law: quadratic(100) },
      ],
    );

  it('holds its outlet less its droop, whatever the supply', () => {
    for (const supply of [7, 5, 3]) {
      const net = solved(run(regulator, supply, 0.01));
      expect(net.state(0)).toBe('holding');
      expect(net.potential(1)).toBeCloseTo(2 - 10 * 0.01, 9);
      expect(net.potential(2)).toBeCloseTo(1.9 - 100 * 0.01 ** 2, 9);
    }
  });

  it('stands wide open when the supply does not suffice', () => {
    const net = solved(run(regulator, 1.8, 0.01));
    expect(net.state(0)).toBe('open');
    expect(net.potential(1)).toBeCloseTo(1.8 - 1000 * 0.01 ** 2, 9);
  });

  it('locks up at its value at no flow', () => {
    const outlet = { flows: [0, 0.002, 0.02], potentials: [2.4, 2, 1.9] };
    const net = solved(run({ type: 'regulator', outlet, open: 1000 }, 7, 0));
    expect(net.potential(2)).toBeCloseTo(2.4, 9);
    net.setDemand(2, 0.002);
    expect(solved(net).potential(1)).toBeCloseTo(2, 9);
    net.setDemand(2, 0.011);
    expect(solved(net).potential(1)).toBeCloseTo(1.95, 9);
  });

  it('may be perfectly stiff', () => {
    const stiff = solved(run({ type: 'regulator', outlet: { set: 2 }, open: 1000 }, 7, 0.01));
    expect(stiff.potential(1)).toBeCloseTo(2, 10);
  });

  it('shuts when its outlet is held above its value, and never runs backwards', () => {
    const net = build(
      [{ id: 'street', fixed: 7 }, { id: 'out' }, { id: 'other', fixed: 3 }],
      [
        { id: 'reg', from: 'street', to: 'out', law: regulator },
        { id: 'pipe', from: 'out', to: 'other', law: quadratic(100) },
      ],
    );
    expect(solved(net).flow(0)).toBe(0);
    expect(net.potential(1)).toBeCloseTo(3, 8);
    net.setFixed(2, 1);
    expect(solved(net).flow(0)).toBeGreaterThan(0);
  });

  it('works in two stages, each on its own value, with a branch between them', () => {
    const net = build(
      [
        { id: 'tank', fixed: 700 },
        { id: 'first' },
        { id: 'tee' },
        { id: 'house' },
        { id: 'burner' },
        { id: 'grill' },
      ],
      [
        {
          id: 'stage 1',
          from: 'tank',
          to: 'first',
          law: { type: 'regulator', outlet: { set: 70, droop: 500 }, open: 10 },
        },
        { id: 'yard', from: 'first', to: 'tee', law: quadratic(2e4) },
        {
          id: 'stage 2',
          from: 'tee',
          to: 'house',
          law: { type: 'regulator', outlet: { set: 2.8, droop: 20 }, open: 10 },
        },
        { id: 'pipe', from: 'house', to: 'burner', law: quadratic(1500) },
        { id: 'side', from: 'tee', to: 'grill', law: quadratic(9e4) },
      ],
    );
    net.setDemand(net.nodeIndex('burner'), 0.01);
    net.setDemand(net.nodeIndex('grill'), 0.005);
    solved(net);
    expect(net.potential(net.nodeIndex('first'))).toBeCloseTo(70 - 500 * 0.015, 7);
    expect(net.potential(net.nodeIndex('tee'))).toBeCloseTo(62.5 - 2e4 * 0.015 ** 2, 7);
    expect(net.potential(net.nodeIndex('burner'))).toBeCloseTo(2.8 - 0.2 - 1500 * 0.01 ** 2, 7);
  });

  it('shares a load with its twin', () => {
    const twin = (id: string): LinkSpec => ({ id, from: 'street', to: 'out', law: regulator });
    const net = build(
      [
        { id: 'street', fixed: 7 },
        { id: 'out', demand: 0.03 },
      ],
      [twin('one'), twin('two')],
    );
    solved(net);
    expect(net.flow(0)).toBeCloseTo(0.015, 10);
    expect(net.flow(1)).toBeCloseTo(0.015, 10);
  });

  it('works in pressure squared', () => {
    const net = solved(
      run({ type: 'regulator', outlet: { set: 1.06e10, droop: 1e9 }, open: 1e12 }, 2.4e10, 0.001),
    );
    expect(net.potential(1) / 1.06e10 - (1 - 1e6 / 1.06e10)).toBeCloseTo(0, 10);
  });
});
