import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Point, shapeDistance, turned } from '../plane/index.ts';
import {
  clearances,
  FACES,
  facing,
  footprint,
  type Placed,
  placed,
  planDistance,
  roomBefore,
  standsWithin,
  type Thing,
  thing,
  thingDistance,
  waysToFace,
} from './index.ts';

const BOX: Placed = { at: { x: 0, y: 0 }, turn: 0, width: 0.6, depth: 0.8, height: 1, base: 0.1 };
const wall = (...corners: readonly (readonly [number, number])[]): Thing => ({
  corners: corners.map(([x, y]) => ({ x, y })),
  closed: false,
  bottom: 0,
  top: 2,
  growth: 0,
});
const small = fc.double({ min: -4, max: 4, noNaN: true });
const angle = fc.double({ min: -4, max: 4, noNaN: true });

describe('clearance of a face', () => {
  it('is measured straight out, over the width of the face', () => {
    const found = clearances(BOX, [wall([-5, 1], [5, 1]), wall([-1, -5], [-1, 5])]);
    expect(found.back).toBeCloseTo(0.6, 12);
    expect(found.left).toBeCloseTo(0.7, 12);
    // The wall on the left runs on past the front, and takes nothing from it.
    expect(found.front).toBe(Number.POSITIVE_INFINITY);
    expect(found.right).toBe(Number.POSITIVE_INFINITY);
  });

  it('of a slanting wall is where it comes nearest before the face', () => {
    // y = 1 + x before the back, from x = −0.3 to 0.3: nearest 0.7 − 0.4.
    expect(clearances(BOX, [wall([-3, -2], [3, 4])]).back).toBeCloseTo(0.3, 12);
  });

  it('counts a shrub as grown, and in front of the corner by the reach of its round', () => {
    const shrub = { ...wall([0, 1.4]), growth: 0.5 };
    expect(clearances(BOX, [shrub]).back).toBeCloseTo(0.5, 12);
    // 0.3 beyond the corner's line, grown 0.5: the round reaches 0.4 back at that line.
    const beside = { ...wall([0.6, 1.4]), growth: 0.5 };
    expect(clearances(BOX, [beside]).back).toBeCloseTo(1.4 - 0.4 - 0.4, 12);
  });

  it('above is the gap to what hangs over the box, and only that', () => {
    const eave = { ...wall([-1, 0.2], [1, 0.2], [1, 2], [-1, 2]), closed: true, bottom: 2.5, top: 2.7 };
    const found = clearances(BOX, [eave]);
    expect(found.above).toBeCloseTo(1.4, 12);
    expect(found.back).toBe(Number.POSITIVE_INFINITY);
    const away = { ...eave, corners: eave.corners.map((p) => ({ x: p.x, y: p.y + 1 })) };
    expect(clearances(BOX, [away]).above).toBe(Number.POSITIVE_INFINITY);
  });

  it('does not count a kerb lower than the pad', () => {
    expect(clearances(BOX, [{ ...wall([-5, 1], [5, 1]), top: 0.1 }]).back).toBe(Number.POSITIVE_INFINITY);
  });

  it('is nothing on any face where something stands in its place', () => {
    expect(Object.values(clearances(BOX, [wall([0, 0])]))).toEqual([0, 0, 0, 0, 0]);
  });

  it('is the same when plan and heater are turned and moved together', () => {
    fc.assert(
      fc.property(small, small, small, small, angle, (ax, ay, bx, by, turn) => {
        const one = { ...wall([ax, ay], [bx, by]), growth: 0.2 };
        const move = (p: Point): Point => {
          const q = turned(p, turn);
          return { x: q.x + 7, y: q.y - 3 };
        };
        const still = clearances(BOX, [one]);
        const moved = clearances({ ...BOX, at: move(BOX.at), turn }, [
          { ...one, corners: one.corners.map(move) },
        ]);
        const near = planDistance(BOX, one) < 1e-6 && planDistance(BOX, one) > 0;
        if (near) return;
        for (const face of FACES)
          if (Number.isFinite(still[face]) && Number.isFinite(moved[face]))
            expect(moved[face]).toBeCloseTo(still[face], 6);
      }),
    );
  });

  it('is what a dense row of posts along the thing gives', () => {
    fc.assert(
      fc.property(small, small, small, small, (ax, ay, bx, by) => {
        const one = wall([ax, ay], [bx, by]);
        const posts = Array.from({ length: 401 }, (_, i) =>
          wall([ax + (i / 400) * (bx - ax), ay + (i / 400) * (by - ay)]),
        );
        const found = clearances(BOX, [one]);
        const brute = clearances(BOX, posts);
        for (const face of FACES) {
          expect(found[face]).toBeLessThanOrEqual(brute[face] + 1e-9);
          if (Number.isFinite(brute[face]) && found[face] > 0.05)
            expect(brute[face] - found[face]).toBeLessThan(0.05);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('distance to a thing', () => {
  it('is that of the plane where they stand side by side, and in space where one is higher', () => {
    const window: Thing = { ...wall([3.3, -1], [3.3, 1]), bottom: 5.1, top: 6 };
    expect(planDistance(BOX, window)).toBeCloseTo(3, 12);
    expect(thingDistance(BOX, window)).toBeCloseTo(5, 12);
  });

  it('is the plane distance of the two outlines', () => {
    fc.assert(
      fc.property(small, small, small, small, angle, (ax, ay, bx, by, turn) => {
        const heater = { ...BOX, turn };
        const one = wall([ax, ay], [bx, by]);
        const outline = { corners: footprint(heater), closed: true };
        expect(planDistance(heater, one)).toBeCloseTo(shapeDistance(outline, one), 9);
      }),
    );
  });

  it('to a pool with the heater in it is nothing', () => {
    const pool = { ...wall([-5, -5], [5, -5], [5, 5], [-5, 5]), closed: true };
    expect(planDistance(BOX, pool)).toBe(0);
  });
});

describe('where it stands and looks', () => {
  const yard = wall([-1, -1], [1, -1], [1, 1], [-1, 1]).corners;

  it('within the yard or across its line', () => {
    expect(standsWithin(yard, BOX)).toBe(true);
    expect(standsWithin(yard, { ...BOX, at: { x: 0.71, y: 0 } })).toBe(false);
    expect(standsWithin(yard, { ...BOX, at: { x: 3, y: 0 } })).toBe(false);
    // Turned by an eighth its corners reach 0.5 from the middle.
    expect(standsWithin(yard, { ...BOX, turn: Math.atan2(0.3, 0.4), at: { x: 0, y: 0.49 } })).toBe(true);
    expect(standsWithin(yard, { ...BOX, turn: Math.atan2(0.3, 0.4), at: { x: 0, y: 0.51 } })).toBe(false);
  });

  it('not within a yard whose corner reaches into it', () => {
    const notched = wall([-1, -1], [1, -1], [1, 1], [0.05, 1], [0, 0.2], [-0.05, 1], [-1, 1]).corners;
    expect(standsWithin(notched, BOX)).toBe(false);
  });

  it('turns by quarter turns to face the pump', () => {
    expect(facing(BOX, 'right', { x: 2, y: 2 })).toBeCloseTo(Math.PI / 4, 12);
    expect(facing(BOX, 'left', { x: 2, y: 0 })).toBeCloseTo(Math.PI, 12);
    const [best] = waysToFace(BOX, { side: 'left', reversible: false }, { x: 2, y: 0 });
    expect(best).toMatchObject({ side: 'left', turn: Math.PI });
    const [crossed] = waysToFace(BOX, { side: 'left', reversible: true }, { x: 2, y: 0 });
    expect(crossed?.angle).toBeCloseTo(0, 12);
  });

  it('has the room before its front that a wall beside it leaves', () => {
    expect(roomBefore(BOX, [wall([-5, -2], [5, -2])], 0.762)).toBeCloseTo(1.6, 12);
    expect(roomBefore(BOX, [wall([0.35, -2], [0.35, 2])], 0.762)).toBe(0);
    expect(roomBefore(BOX, [wall([0.4, -2], [0.4, 2])], 0.762)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('what cannot be', () => {
  it('a box without width, a thing with its top below its foot, a growth below nothing', () => {
    expect(placed({ ...BOX, width: 0 })).toMatchObject({ ok: false, issues: [{ where: 'width' }] });
    expect(placed({ ...BOX, turn: Number.NaN })).toMatchObject({ ok: false, issues: [{ where: 'turn' }] });
    expect(thing({ ...wall([0, 0]), top: -1 })).toMatchObject({
      ok: false,
      issues: [{ code: 'contradiction' }],
    });
    expect(thing({ ...wall([0, 0]), growth: -1 })).toMatchObject({
      ok: false,
      issues: [{ where: 'growth' }],
    });
    expect(thing(wall([0, 0], [0, 0]))).toMatchObject({
      ok: false,
      issues: [{ reason: 'edge-without-length' }],
    });
  });
});
