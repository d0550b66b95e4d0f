import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { buildNetwork } from './build.ts';
import type { LinkSpec, NodeSpec } from './law.ts';
import type { Network } from './network.ts';

const build = (nodes: readonly NodeSpec[], links: readonly LinkSpec[]): Network =>
  expectOk(buildNetwork({ nodes, links }));

const quadratic = (r: number) => ({ type: 'power', r, n: 2 }) as const;

const solved = (net: Network): Network => {
  expect(net.solve({ flowTolerance: 1e-11, headTolerance: 1e-11 })).toMatchObject({ ok: true });
  return net;
};

describe('a network of plain links', () => {
  it('gives the flow of one link by hand: 1000·q² = 10', () => {
    const net = build(
      [
        { id: 'a', fixed: 10 },
        { id: 'b', fixed: 0 },
      ],
      [{ id: 'ab', from: 'a', to: 'b', law: quadratic(1000) }],
    );
    expect(solved(net).flow(net.linkIndex('ab'))).toBeCloseTo(0.1, 12);
  });

  it('splits between two parallel links as 1/√r (parallel-pipe rule, any fluid mechanics text)', () => {
    const net = build(
      [{ id: 'a', fixed: 5 }, { id: 'b' }, { id: 'c', demand: 0.03 }],
      [
        { id: 'one', from: 'a', to: 'b', law: quadratic(100) },
        { id: 'two', from: 'a', to: 'b', law: quadratic(400) },
        { id: 'out', from: 'b', to: 'c', law: quadratic(10) },
      ],
    );
    solved(net);
    expect(net.flow(0)).toBeCloseTo(0.02, 10);
    expect(net.flow(1)).toBeCloseTo(0.01, 10);
    expect(net.potential(2)).toBeCloseTo(5 - 100 * 0.02 ** 2 - 10 * 0.03 ** 2, 10);
    expect(net.loss(2)).toBeCloseTo(10 * 0.03 ** 2, 10);
  });

  it('starts from the last solution, which is solved at once', () => {
    const net = build(
      [
        { id: 'a', fixed: 5 },
        { id: 'b', demand: 0.01 },
      ],
      [{ id: 'ab', from: 'a', to: 'b', law: { type: 'power', r: 3, n: 1.852 } }],
    );
    solved(net);
    const again = net.solve();
    expect(again.ok && again.iterations).toBe(1);
  });

  it('turns flow round in the bridge of a Wheatstone network when its balance tips', () => {
    const net = build(
      [{ id: 'in', fixed: 10 }, { id: 'p' }, { id: 'q' }, { id: 'out', fixed: 0 }],
      [
        { id: 'ip', from: 'in', to: 'p', law: quadratic(100) },
        { id: 'iq', from: 'in', to: 'q', law: quadratic(100) },
        { id: 'bridge', from: 'p', to: 'q', law: quadratic(50) },
        { id: 'po', from: 'p', to: 'out', law: quadratic(100) },
        { id: 'qo', from: 'q', to: 'out', law: quadratic(100) },
      ],
    );
    const bridge = net.linkIndex('bridge');
    expect(Math.abs(solved(net).flow(bridge))).toBeLessThan(1e-5);
    net.setLaw(net.linkIndex('po'), quadratic(400));
    expect(solved(net).flow(bridge)).toBeGreaterThan(0.01);
    const forward = net.flow(bridge);
    net.setLaw(net.linkIndex('po'), quadratic(100));
    net.setLaw(net.linkIndex('qo'), quadratic(400));
    expect(solved(net).flow(bridge)).toBeCloseTo(-forward, 10);
  });

  it('follows held potentials, demands, and laws that change', () => {
    const net = build(
      [{ id: 'a', fixed: 10 }, { id: 'b' }],
      [{ id: 'ab', from: 'a', to: 'b', law: quadratic(1000) }],
    );
    expect(solved(net).flow(0)).toBeCloseTo(0, 12);
    expect(net.setDemand(1, 0.05)).toEqual([]);
    expect(solved(net).potential(1)).toBeCloseTo(10 - 2.5, 10);
    expect(net.setFixed(0, 400)).toEqual([]);
    expect(solved(net).potential(1)).toBeCloseTo(400 - 2.5, 9);
    expect(net.setLaw(0, { type: 'power', r: 40, n: 1 })).toEqual([]);
    expect(solved(net).potential(1)).toBeCloseTo(400 - 2, 9);
    expect(net.law(0)).toEqual({ type: 'power', r: 40, n: 1 });
  });
});

describe('laws by lines', () => {
  const through = (law: LinkSpec['law'], drop: number): number => {
    const net = build(
      [
        { id: 'a', fixed: drop },
        { id: 'b', fixed: 0 },
      ],
      [{ id: 'ab', from: 'a', to: 'b', law }],
    );
    return solved(net).flow(0);
  };
  const law = { type: 'curve', flows: [0, 1, 2], losses: [0, 1, 5] } as const;

  it('runs between points, goes on beyond the last, and is mirrored for backward flow', () => {
    expect(through(law, 0.25)).toBeCloseTo(0.25, 12);
    expect(through(law, 3)).toBeCloseTo(1.5, 12);
    expect(through(law, 9)).toBeCloseTo(3, 12);
    expect(through(law, -3)).toBeCloseTo(-1.5, 12);
  });

  it('is used as it stands when points lie below zero, its first line going on', () => {
    const lopsided = { type: 'curve', flows: [-1, 0, 1], losses: [-10, 0, 1] } as const;
    expect(through(lopsided, -5)).toBeCloseTo(-0.5, 12);
    expect(through(lopsided, -30)).toBeCloseTo(-3, 12);
  });

  it('runs from the origin to a first point beyond it', () => {
    expect(through({ type: 'curve', flows: [2, 4], losses: [1, 3] }, 0.5)).toBeCloseTo(1, 12);
  });

  it('takes any other law as a function with its slope', () => {
    const cubic = { type: 'custom', loss: (q: number) => q ** 3, slope: (q: number) => 3 * q * q } as const;
    expect(through({ ...cubic, expectedFlow: 1 }, 8)).toBeCloseTo(2, 10);
    expect(through(cubic, -27)).toBeCloseTo(-3, 8);
  });
});

describe('what cannot be solved', () => {
  const stub: readonly NodeSpec[] = [{ id: 'a', fixed: 5 }, { id: 'b' }, { id: 'c' }];

  it('reports a part without any held potential, and nothing is not a number', () => {
    const net = build(stub, [
      { id: 'ab', from: 'a', to: 'b', law: quadratic(10) },
      { id: 'bc', from: 'b', to: 'c', law: quadratic(10), closed: true },
    ]);
    expect(net.solve()).toEqual({
      ok: false,
      issues: [{ code: 'ill-formed', where: 'c', reason: 'cut-off' }],
    });
    expect(net.solve({ cutOff: 'leave' }).ok).toBe(true);
    expect(net.isHeld(net.nodeIndex('c'))).toBe(false);
    expect([net.potential(2), net.flow(1)].every(Number.isFinite)).toBe(true);
    expect(net.state(1)).toBe('shut');
    net.setDemand(net.nodeIndex('c'), 0.1);
    expect(net.solve({ cutOff: 'leave' }).ok).toBe(false);
    net.setClosed(1, false);
    expect(solved(net).potential(2)).toBeCloseTo(5 - 2 * 10 * 0.1 ** 2, 10);
  });

  it('reports a demand that only a check valve could serve, backwards', () => {
    const net = build(
      [
        { id: 'a', fixed: 5 },
        { id: 'b', demand: 0.1 },
      ],
      [{ id: 'ba', from: 'b', to: 'a', law: quadratic(10), oneWay: true }],
    );
    expect(net.solve()).toEqual({
      ok: false,
      issues: [{ code: 'no-solution', where: 'ba', reason: 'demand-behind-one-way-link' }],
    });
    net.setDemand(1, -0.1);
    expect(solved(net).flow(0)).toBeCloseTo(0.1, 10);
  });

  it('reports a bound on iterations that is too low, and solves when it is lifted', () => {
    const net = build(
      [{ id: 'a', fixed: 50 }, { id: 'b' }, { id: 'c', fixed: 0 }],
      [
        { id: 'ab', from: 'a', to: 'b', law: { type: 'power', r: 70, n: 1.852 } },
        { id: 'bc', from: 'b', to: 'c', law: quadratic(3e5) },
      ],
    );
    expect(net.solve({ maxIterations: 1 })).toMatchObject({
      ok: false,
      issues: [{ code: 'not-converged', where: 'network' }],
    });
    solved(net);
  });

  it('refuses a network without any fixed node, unknown nodes and repeated names', () => {
    const law = quadratic(1);
    const links = [
      { id: 'l', from: 'a', to: 'b', law },
      { id: 'l', from: 'a', to: 'z', law },
    ];
    const result = buildNetwork({ nodes: [{ id: 'a' }, { id: 'b' }, { id: 'b' }], links });
    expect(!result.ok && result.issues.map((issue) => issue.reason)).toEqual([
      'duplicate-id',
      'duplicate-id',
      'unknown-node',
    ]);
    const floating = buildNetwork({ nodes: [{ id: 'a' }, { id: 'b' }], links: [{ ...links[0]!, id: 'l' }] });
    expect(!floating.ok && floating.issues.map((issue) => issue.reason)).toEqual(['cut-off', 'cut-off']);
    expect(buildNetwork({ nodes: [], links: [] })).toMatchObject({ issues: [{ reason: 'empty-network' }] });
  });

  it.each<[string, LinkSpec['law'], object]>([
    ['negative resistance', { type: 'power', r: -1, n: 2 }, { code: 'out-of-range', where: 'l.r', min: 0 }],
    ['resistance that is no number', { type: 'power', r: Number.NaN, n: 2 }, { code: 'not-finite' }],
    [
      'a pump curve that rises',
      { type: 'pump', speed: 1, curve: { shape: 'points', flows: [0, 1], heads: [5, 6] } },
      { code: 'contradiction', reason: 'pump-curve-rises' },
    ],
    [
      'a loss that falls',
      { type: 'curve', flows: [0, 1, 2], losses: [0, 2, 1] },
      { reason: 'loss-curve-falls' },
    ],
    [
      'a loss at no flow',
      { type: 'curve', flows: [0, 1], losses: [1, 2] },
      { reason: 'loss-curve-misses-origin' },
    ],
    [
      'flows out of order',
      { type: 'curve', flows: [0, 2, 1], losses: [0, 1, 2] },
      { reason: 'curve-flows-not-rising' },
    ],
    [
      'a roughness beyond a tenth',
      { type: 'darcy', length: 1, diameter: 0.05, roughness: 0.006, viscosity: 1e-6 },
      { code: 'out-of-range', where: 'l.roughness' },
    ],
    [
      'a negative speed',
      { type: 'pump', speed: -1, curve: { shape: 'power', a: 1, b: 1, c: 2 } },
      { code: 'out-of-range', where: 'l.speed' },
    ],
  ])('refuses %s, at building and at changing', (_name, law, issue) => {
    const nodes = [{ id: 'a', fixed: 1 }, { id: 'b' }];
    expect(buildNetwork({ nodes, links: [{ id: 'l', from: 'a', to: 'b', law }] })).toMatchObject({
      ok: false,
      issues: [issue],
    });
    const net = build(nodes, [{ id: 'l', from: 'a', to: 'b', law: quadratic(7) }]);
    expect(net.setLaw(0, law)).toMatchObject([issue]);
    expect(net.law(0)).toEqual(quadratic(7));
  });

  it('says so when a setter is asked for what its node or link is not', () => {
    const net = build(stub.slice(0, 2), [{ id: 'ab', from: 'a', to: 'b', law: quadratic(1) }]);
    expect(net.setFixed(1, 3)).toMatchObject([{ reason: 'not-a-fixed-node' }]);
    expect(net.setFixed(0, Number.NaN)).toMatchObject([{ code: 'not-finite' }]);
    expect(net.setDemand(0, 3)).toMatchObject([{ reason: 'demand-at-fixed-node' }]);
    expect(net.setDemand(1, Number.POSITIVE_INFINITY)).toMatchObject([{ code: 'not-finite' }]);
    expect(net.setSpeed(0, 1)).toMatchObject([{ reason: 'not-a-pump' }]);
    expect(() => net.linkIndex('nowhere')).toThrow(RangeError);
  });
});
