import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, US_GALLON } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { type Basin, basinGeometry, type Floor, type Plan, type Point } from './index.ts';

const level = (depth: number): Floor => ({ form: 'level', depth });
const found = (plan: Plan, floor: Floor) => expectOk(basinGeometry({ plan, floor }));
const issuesOf = (basin: Basin) => {
  const answer = basinGeometry(basin);
  return answer.ok ? [] : answer.issues;
};
const size = fc.double({ min: 1, max: 40, noNaN: true });
const depth = fc.double({ min: 0.3, max: 4, noNaN: true });

describe('shapes against plane geometry', () => {
  it('rectangle that slopes', () => {
    const plan: Plan = { shape: 'rectangle', length: 32 * FOOT, width: 16 * FOOT };
    const pool = found(plan, { form: 'slope', shallow: 3 * FOOT, deep: 8 * FOOT });
    expect(pool.area / FOOT ** 2).toBeCloseTo(512, 9);
    expect(pool.perimeter / FOOT).toBeCloseTo(96, 9);
    expect(pool.volume / FOOT ** 3).toBeCloseTo(2816, 8);
    expect(pool.volume / US_GALLON).toBeCloseTo(21_065.1, 1);
    expect(pool.wallArea / FOOT ** 2).toBeCloseTo(16 * 3 + 16 * 8 + 2 * 32 * 5.5, 8);
    expect(pool.floorArea / FOOT ** 2).toBeCloseTo(16 * Math.hypot(32, 5), 8);
  });

  it('round', () => {
    const pool = found({ shape: 'round', diameter: 6 }, level(1.2));
    expect(pool.area).toBeCloseTo(9 * Math.PI, 10);
    expect(pool.perimeter).toBeCloseTo(6 * Math.PI, 9);
    expect(pool.volume).toBeCloseTo(10.8 * Math.PI, 10);
    expect(pool.wallArea).toBeCloseTo(7.2 * Math.PI, 9);
  });

  // Perimeter of the ellipse with half axes 2 and 1: 9.68844822 (complete elliptic integral, from memory).
  it('oval', () => {
    const pool = found({ shape: 'oval', length: 4, width: 2 }, level(1));
    expect(pool.area).toBeCloseTo(2 * Math.PI, 12);
    expect(pool.perimeter).toBeCloseTo(9.688448220547675, 9);
  });

  it('stadium is a rectangle and two half rounds', () => {
    const pool = found({ shape: 'stadium', length: 10, width: 4 }, level(1.5));
    expect(pool.area).toBeCloseTo(24 + 4 * Math.PI, 10);
    expect(pool.perimeter).toBeCloseTo(12 + 4 * Math.PI, 9);
  });

  it('L is two rectangles', () => {
    const plan: Plan = { shape: 'l', length: 10, width: 4, legLength: 3, legWidth: 5 };
    const pool = found(plan, {
      form: 'points',
      points: [
        { at: 5, depth: 1 },
        { at: 5, depth: 2 },
      ],
    });
    expect(pool.area).toBeCloseTo(55, 10);
    expect(pool.perimeter).toBeCloseTo(2 * (10 + 4 + 3), 10);
    expect(pool.volume).toBeCloseTo(5 * 4 * 1 + 5 * 7 * 2, 10);
  });

  // Common practice, no source: 0.45·(A + B)·L.
  it('kidney has the area the trade takes', () => {
    const plan: Plan = {
      shape: 'kidney',
      firstDiameter: 12 * FOOT,
      lastDiameter: 16 * FOOT,
      length: 30 * FOOT,
    };
    const pool = found(plan, level(5 * FOOT));
    expect(pool.area / FOOT ** 2).toBeCloseTo(0.45 * 28 * 30, 8);
    expect(pool.meanDepth / FOOT).toBeCloseTo(5, 10);
  });

  it('hopper adds its prismoid', () => {
    const hopper = { topLength: 4, topWidth: 3, bottomLength: 2, bottomWidth: 1, depth: 1.2 };
    const plan: Plan = { shape: 'rectangle', length: 12, width: 5 };
    const without = found(plan, level(1));
    const pool = expectOk(basinGeometry({ plan, floor: level(1), hopper }));
    // Integral of (2 + 2s)(1 + 2s)·1.2 for s from 0 to 1.
    expect(pool.volume - without.volume).toBeCloseTo(1.2 * (2 + 3 + 4 / 3), 10);
    expect(pool.floorArea).toBeGreaterThan(without.floorArea);
  });
});

/** A shape summed by brute force: how much of a fine grid lies inside a ring, each cell with its depth. */
function bruteVolume(corners: readonly Point[], depthOf: (x: number) => number): number {
  const n = 400;
  const xs = corners.map((p) => p.x);
  const ys = corners.map((p) => p.y);
  const [x0, y0] = [Math.min(...xs), Math.min(...ys)];
  const [dx, dy] = [(Math.max(...xs) - x0) / n, (Math.max(...ys) - y0) / n];
  let volume = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const p = { x: x0 + (i + 0.5) * dx, y: y0 + (j + 0.5) * dy };
      if (inside(corners, p)) volume += dx * dy * depthOf(p.x - x0);
    }
  return volume;
}

function inside(corners: readonly Point[], p: Point): boolean {
  let odd = false;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y)) odd = !odd;
  });
  return odd;
}

const DENTED: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 9, y: 1 },
  { x: 10, y: 6 },
  { x: 6, y: 3 },
  { x: 5, y: 7 },
  { x: 1, y: 5 },
];

describe('polygon', () => {
  it('agrees with a grid count, dents and sloping floor included', () => {
    const floor: Floor = {
      form: 'points',
      points: [
        { at: 2, depth: 1 },
        { at: 7, depth: 2.5 },
      ],
    };
    const pool = found({ shape: 'polygon', corners: DENTED }, floor);
    const brute = bruteVolume(DENTED, (x) => (x < 2 ? 1 : x > 7 ? 2.5 : 1 + (x - 2) * 0.3));
    expect(pool.volume / brute).toBeCloseTo(1, 2);
  });

  it('has the area of the surveyor’s formula whichever way it is turned or walked round', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.boolean(), (lengthAngle, backwards) => {
        const corners = backwards ? [...DENTED].reverse() : DENTED;
        const pool = found({ shape: 'polygon', corners, lengthAngle }, level(1.3));
        let twice = 0;
        DENTED.forEach((a, i) => {
          const b = DENTED[(i + 1) % DENTED.length]!;
          twice += a.x * b.y - b.x * a.y;
        });
        expect(pool.area).toBeCloseTo(Math.abs(twice) / 2, 8);
        expect(pool.wallArea).toBeCloseTo(1.3 * pool.perimeter, 8);
      }),
    );
  });

  it('of many corners comes to the round', () => {
    const corners = Array.from({ length: 400 }, (_, i) => ({
      x: 3 * Math.cos((2 * Math.PI * i) / 400),
      y: 3 * Math.sin((2 * Math.PI * i) / 400),
    }));
    const floor: Floor = { form: 'slope', shallow: 1, deep: 2 };
    const ring = found({ shape: 'polygon', corners }, floor);
    const round = found({ shape: 'round', diameter: 6 }, floor);
    for (const key of ['area', 'perimeter', 'volume', 'wallArea', 'floorArea'] as const)
      expect(Math.abs(ring[key] / round[key] - 1)).toBeLessThan(1e-4);
  });
});

describe('any basin', () => {
  it('holds water between its least and greatest depth, and is wetted at least as much as its surface', () => {
    const plan = fc.oneof(
      fc.record({ shape: fc.constant('rectangle' as const), length: size, width: size }),
      fc.record({ shape: fc.constant('oval' as const), length: size, width: size }),
      fc.record({ shape: fc.constant('round' as const), diameter: size }),
    );
    fc.assert(
      fc.property(plan, depth, depth, (shape, shallow, deep) => {
        const pool = found(shape, { form: 'slope', shallow, deep });
        expect(pool.meanDepth).toBeGreaterThanOrEqual(Math.min(shallow, deep) - 1e-9);
        expect(pool.meanDepth).toBeLessThanOrEqual(Math.max(shallow, deep) + 1e-9);
        expect(pool.floorArea).toBeGreaterThanOrEqual(pool.area - 1e-9);
        expect(pool.wallArea).toBeGreaterThanOrEqual(pool.perimeter * Math.min(shallow, deep) - 1e-6);
      }),
    );
  });

  it('a floor with a slope drawn by hand is the same as one drawn by points', () => {
    fc.assert(
      fc.property(size, depth, depth, (length, shallow, deep) => {
        const plan: Plan = { shape: 'oval', length, width: 3 };
        const slope = found(plan, { form: 'slope', shallow, deep, from: length / 4, to: length / 2 });
        const points = [0, length / 4, length / 2, length].map((at, i) => ({
          at,
          depth: i < 2 ? shallow : deep,
        }));
        expect(found(plan, { form: 'points', points }).volume).toBeCloseTo(slope.volume, 8);
      }),
    );
  });
});

describe('wrong measures', () => {
  it('an outline that crosses itself names the two edges', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 4, y: 4 },
      { x: 4, y: 0 },
      { x: 0, y: 4 },
    ];
    expect(issuesOf({ plan: { shape: 'polygon', corners }, floor: level(1) })).toMatchObject([
      { code: 'ill-formed', where: 'corners.0', found: '0-2', reason: 'outline-crosses-itself' },
    ]);
  });

  it.each([
    [
      'too-few-corners',
      [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
      ],
    ],
    [
      'corner-twice',
      [
        { x: 0, y: 0 },
        { x: 0, y: 0 },
        { x: 1, y: 0 },
      ],
    ],
    [
      'edge-folds-back',
      [
        { x: 0, y: 0 },
        { x: 5, y: 0 },
        { x: 2, y: 0 },
      ],
    ],
    [
      'outline-crosses-itself',
      [
        { x: 0, y: 0 },
        { x: 6, y: 0 },
        { x: 6, y: 4 },
        { x: 3, y: 0 },
        { x: 0, y: 4 },
      ],
    ],
  ])('%s', (reason, corners) => {
    expect(issuesOf({ plan: { shape: 'polygon', corners }, floor: level(1) })).toMatchObject([{ reason }]);
  });

  it('every wrong length is named', () => {
    const plan: Plan = { shape: 'rectangle', length: -3, width: Number.NaN };
    expect(issuesOf({ plan, floor: level(1) }).map((i) => [i.where, i.code])).toEqual([
      ['length', 'out-of-range'],
      ['width', 'not-finite'],
    ]);
  });

  it('depths out of order, a hopper wider than its opening, a stadium wider than long', () => {
    const plan: Plan = { shape: 'rectangle', length: 10, width: 5 };
    const points = [
      { at: 6, depth: 1 },
      { at: 4, depth: 2 },
    ];
    expect(issuesOf({ plan, floor: { form: 'points', points } })).toMatchObject([
      { where: 'floor.1.at', min: 6 },
    ]);
    const hopper = { topLength: 2, topWidth: 1, bottomLength: 1, bottomWidth: 2, depth: 1 };
    expect(issuesOf({ plan, floor: level(1), hopper })).toMatchObject([{ where: 'hopper.bottomWidth' }]);
    expect(issuesOf({ plan: { shape: 'stadium', length: 3, width: 5 }, floor: level(1) })).toMatchObject([
      { code: 'contradiction', where: 'width' },
    ]);
  });
});
