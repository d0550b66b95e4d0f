import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SymmetricSystem } from './ldl.ts';
import { minimumDegreeOrder } from './minimum-degree.ts';
import { entryOf, symmetricStructure } from './structure.ts';

type Edge = readonly [number, number, number];

/** Conductances between nodes, and to the ground at each node. */
function fill(size: number, edges: readonly Edge[], grounded: readonly number[]): SymmetricSystem {
  const structure = symmetricStructure(
    size,
    edges.map(([a, b]) => [a, b] as const),
  );
  const system = new SymmetricSystem(structure);
  grounded.forEach((g, node) => {
    system.diagonal[structure.place[node]!] = g;
  });
  for (const [a, b, g] of edges) {
    system.diagonal[structure.place[a]!]! += g;
    system.diagonal[structure.place[b]!]! += g;
    system.off[entryOf(structure, a, b)]! -= g;
  }
  return system;
}

function solve(system: SymmetricSystem, rhs: readonly number[]): number[] {
  const { place } = system.structure;
  const x = new Float64Array(rhs.length);
  rhs.forEach((value, node) => {
    x[place[node]!] = value;
  });
  system.solve(x);
  return rhs.map((_, node) => x[place[node]!]!);
}

const graph = fc.integer({ min: 2, max: 14 }).chain((size) =>
  fc.record({
    size: fc.constant(size),
    edges: fc.array(
      fc
        .tuple(fc.nat(size - 1), fc.nat(size - 1), fc.double({ min: 0.01, max: 100, noNaN: true }))
        .filter(([a, b]) => a !== b),
      { minLength: 1, maxLength: 40 },
    ),
    rhs: fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: size, maxLength: size }),
  }),
);

describe('sparse symmetric system', () => {
  it('solves the two-row example by hand', () => {
    const system = fill(2, [[0, 1, 1]], [1, 1]);
    expect(solve(system, [1, 1])).toEqual([1, 1]);
  });

  it('leaves no residual for any graph of conductances', () => {
    fc.assert(
      fc.property(graph, ({ size, edges, rhs }) => {
        const x = solve(fill(size, edges, new Array(size).fill(0.5)), rhs);
        const left = rhs.map((value, i) => value - 0.5 * x[i]!);
        for (const [a, b, g] of edges) {
          left[a]! -= g * (x[a]! - x[b]!);
          left[b]! -= g * (x[b]! - x[a]!);
        }
        for (const value of left) expect(Math.abs(value)).toBeLessThan(1e-10);
      }),
    );
  });

  it('counts a part that nothing holds, and gives numbers all the same', () => {
    const system = fill(
      4,
      [
        [0, 1, 2],
        [2, 3, 5],
      ],
      [1, 0, 0, 0],
    );
    const x = solve(system, [1, 0, 3, -3]);
    expect(system.floating).toBe(1);
    expect(x[2]! - x[3]!).toBeCloseTo(0.6, 12);
    expect(x.every(Number.isFinite)).toBe(true);
  });
});

describe('order of elimination', () => {
  it('takes every row once', () => {
    fc.assert(
      fc.property(graph, ({ size, edges }) => {
        const order = minimumDegreeOrder(
          size,
          edges.map(([a, b]) => [a, b] as const),
        );
        expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: size }, (_, i) => i));
      }),
    );
  });

  it('fills nothing in for a tree, and leaves the hub of a star to the end', () => {
    const star = Array.from({ length: 9 }, (_, i) => [0, i + 1] as const);
    expect(symmetricStructure(10, star).row.length).toBe(9);
    expect(symmetricStructure(10, star).place[0]).toBeGreaterThanOrEqual(8);
  });

  it('fills a grid of 20 by 20 with far less than elimination row by row would', () => {
    const at = (r: number, c: number): number => 20 * r + c;
    const pairs: (readonly [number, number])[] = [];
    for (let r = 0; r < 20; r += 1)
      for (let c = 0; c < 20; c += 1) {
        if (c < 19) pairs.push([at(r, c), at(r, c + 1)]);
        if (r < 19) pairs.push([at(r, c), at(r + 1, c)]);
      }
    // Row by row the band is 20 wide: 380·20 entries and more.
    expect(symmetricStructure(400, pairs).row.length).toBeLessThan(380 * 20 * 0.5);
  });
});
