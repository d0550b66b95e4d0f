import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { buildNetwork } from './build.ts';
import type { LinkSpec, NodeSpec } from './law.ts';
import type { Network } from './network.ts';

const build = (nodes: readonly NodeSpec[], links: readonly LinkSpec[]): Network =>
  expectOk(buildNetwork({ nodes, links }));

const quadratic = (r: number) => ({ type: 'power', r, n: 2 }) as const;

describe('a network of plain links', () => {
  it('gives the flow of one link by hand: 1000·q² = 10', () => {
    const net = build(
      [
        { id: 'a', fixed: 10 },
        { id: 'b', fixed: 0 },
      ],
      [{ id: 'ab', from: 'a', to: 'b', law: quadratic(1000) }],
    );
    expect(net.solve().ok).toBe(true);
    expect(net.flow(net.linkIndex('ab'))).toBeCloseTo(0.1, 12);
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
    expect(net.solve().ok).toBe(true);
    expect(net.flow(0)).toBeCloseTo(0.02, 10);
    expect(net.flow(1)).toBeCloseTo(0.01, 10);
    expect(net.potential(2)).toBeCloseTo(5 - 100 * 0.02 ** 2 - 10 * 0.03 ** 2, 10);
  });

  it('starts from the last solution, which is solved at once', () => {
    const net = build(
      [
        { id: 'a', fixed: 5 },
        { id: 'b', demand: 0.01 },
      ],
      [{ id: 'ab', from: 'a', to: 'b', law: { type: 'power', r: 3, n: 1.852 } }],
    );
    net.solve();
    const again = net.solve();
    expect(again.ok && again.iterations).toBe(1);
  });
});

describe('what cannot be solved', () => {
  it('reports a part without any held potential, and nothing is not a number', () => {
    const net = build(
      [{ id: 'a', fixed: 5 }, { id: 'b' }, { id: 'c' }],
      [
        { id: 'ab', from: 'a', to: 'b', law: quadratic(10) },
        { id: 'bc', from: 'b', to: 'c', law: quadratic(10), closed: true },
      ],
    );
    expect(net.solve()).toEqual({
      ok: false,
      issues: [{ code: 'ill-formed', where: 'c', reason: 'cut-off' }],
    });
    expect(net.solve({ cutOff: 'leave' }).ok).toBe(true);
    expect(net.isHeld(net.nodeIndex('c'))).toBe(false);
    net.setDemand(net.nodeIndex('c'), 0.1);
    expect(net.solve({ cutOff: 'leave' }).ok).toBe(false);
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
    const floating = buildNetwork({
      nodes: [{ id: 'a' }, { id: 'b' }],
      links: [{ id: 'l', from: 'a', to: 'b', law }],
    });
    expect(!floating.ok && floating.issues.map((issue) => issue.reason)).toEqual(['cut-off', 'cut-off']);
  });
});
