import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import {
  clearances,
  FACES,
  type Placed,
  planDistance,
  standsWithin,
  thingDistance,
} from '../heater/index.ts';
import type { Point } from '../plane/index.ts';
import { type YardMap, type YardQuestion, type YardThing, yardMap } from './index.ts';

const box = (x: number, y: number, width: number, height: number): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
const BARE: YardQuestion = {
  yard: box(0, 0, 4, 4),
  things: [],
  heater: { width: 1, depth: 1, height: 1, base: 0 },
  faces: { left: 0, right: 0, back: 0, front: 0, above: 0 },
  turns: [0],
  step: 0.1,
};
const solid = { closed: true, bottom: 0, top: 2, growth: 0, least: 0, solid: true };
const QUARTERS = [0, 1, 2, 3].map((n) => (n * Math.PI) / 2);

function marginAt(map: YardMap, x: number, y: number): number {
  const column = Math.round((x - map.x) / map.step);
  const row = Math.round((y - map.y) / map.step);
  return map.margins[row * map.columns + column] ?? Number.NaN;
}

/** The same spot asked of the clearances of one placed heater, without grid, blocks or order. */
function slowMargin(asked: YardQuestion, at: Point, turn: number): number {
  const heater: Placed = { ...asked.heater, at, turn };
  if (!standsWithin(asked.yard, heater)) return Number.NaN;
  const solids = asked.things.filter((one) => one.solid);
  const top = heater.base + heater.height;
  if (solids.some((one) => one.bottom < top && planDistance(heater, one) === 0)) return Number.NaN;
  const found = clearances(heater, solids);
  const faces = FACES.filter((face) => asked.faces[face] > 0).map(
    (face) => found[face] / asked.faces[face] - 1,
  );
  const things = asked.things
    .filter((one) => one.least > 0)
    .map((one) => thingDistance(heater, one) / one.least - 1);
  return Math.min(10, ...faces, ...things);
}

describe('the map of a yard', () => {
  it('scores the middle of an empty yard by its line', () => {
    const line: YardThing = {
      ...solid,
      corners: [...BARE.yard, ...BARE.yard.slice(0, 1)],
      closed: false,
      solid: false,
      least: 1,
    };
    const map = expectOk(yardMap({ ...BARE, things: [line], step: 0.2 }));
    expect(map.columns * map.rows).toBe(400);
    expect(map.best?.margin).toBeCloseTo(0.4, 9);
    expect(marginAt(map, 1.9, 0.7)).toBeCloseTo(-0.8, 9);
    expect(marginAt(map, 1.9, 0.3)).toBeNaN();
  });

  it('stands in no house, under no roof too low, and before no wall too near', () => {
    const house = { ...solid, corners: box(0, 3, 4, 1) };
    const roof = { ...solid, corners: box(0, 0, 1.5, 3), bottom: 1.5, top: 1.6 };
    const asked = { ...BARE, things: [house, roof], faces: { ...BARE.faces, back: 0.5, above: 1 } };
    const map = expectOk(yardMap(asked));
    expect(marginAt(map, 2.75, 3.5)).toBeNaN();
    expect(marginAt(map, 2.75, 2.65)).toBeNaN();
    expect(marginAt(map, 2.75, 1.75)).toBeCloseTo(0.75 / 0.5 - 1, 9);
    expect(marginAt(map, 0.75, 1.05)).toBeCloseTo(-0.5, 9);
  });

  it('turns the heater where that gives it more', () => {
    const wall = { ...solid, corners: box(0, 3.9, 4, 0.1) };
    const asked = { ...BARE, things: [wall], faces: { ...BARE.faces, back: 2, front: 0.5 }, turns: QUARTERS };
    const map = expectOk(yardMap(asked));
    expect(map.turns[0 * map.columns + 20]).toBeDefined();
    expect(marginAt(map, 2.05, 2.85)).toBeGreaterThan(0);
    const stiff = expectOk(yardMap({ ...asked, turns: [0] }));
    expect(marginAt(stiff, 2.05, 2.85)).toBeLessThan(0);
  });

  it('is at each spot what the clearances of a heater there say', () => {
    const coordinate = fc.double({ min: 0, max: 6, noNaN: true });
    const things = fc.array(
      fc.record({
        corners: fc.array(fc.record({ x: coordinate, y: coordinate }), { minLength: 1, maxLength: 3 }),
        closed: fc.constant(false),
        bottom: fc.constantFrom(0, 0.5, 2.4),
        top: fc.constantFrom(2.5, 3),
        growth: fc.constantFrom(0, 0, 0.3),
        least: fc.constantFrom(0, 0.5, 1.2),
        solid: fc.boolean(),
      }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(things, fc.constantFrom(...QUARTERS, 0.4), (around, turn) => {
        const asked: YardQuestion = {
          yard: [
            { x: 0, y: 0 },
            { x: 6, y: 0.5 },
            { x: 5, y: 5 },
            { x: 2.5, y: 3.5 },
            { x: 0.2, y: 5 },
          ],
          things: around,
          heater: { width: 0.7, depth: 0.9, height: 1.1, base: 0.1 },
          faces: { left: 0.3, right: 0.15, back: 0.15, front: 0.6, above: 0.9 },
          turns: [turn],
          step: 0.37,
        };
        const map = yardMap(asked);
        if (!map.ok) return;
        map.value.margins.forEach((margin, spot) => {
          const { x, y, columns, step } = map.value;
          const at = { x: x + (spot % columns) * step, y: y + Math.floor(spot / columns) * step };
          const slow = slowMargin(asked, at, turn);
          if (Number.isNaN(slow) || Number.isNaN(margin)) expect(margin).toBeNaN();
          else expect(margin).toBeCloseTo(slow, 9);
          if (!Number.isNaN(slow)) expect(margin).not.toBeNaN();
        });
      }),
      { numRuns: 60 },
    );
  });

  it('has no best where the heater fits nowhere', () => {
    const map = expectOk(yardMap({ ...BARE, heater: { ...BARE.heater, width: 5 } }));
    expect(map.best).toBeUndefined();
  });
});

describe('a question that cannot be answered', () => {
  it.each([
    [{ yard: [...box(0, 0, 4, 4)].toSpliced(1, 2, { x: 4, y: 4 }, { x: 4, y: 0 }) }, 'yard.corners.0'],
    [{ step: 0 }, 'step'],
    [{ step: 0.001 }, 'step'],
    [{ turns: [] }, 'turns'],
    [{ turns: [Number.NaN] }, 'turns.0'],
    [{ faces: { ...BARE.faces, left: -1 } }, 'faces.left'],
    [{ things: [{ ...solid, corners: [], closed: false }] }, 'things.0.corners'],
    [{ things: [{ ...solid, corners: box(0, 0, 1, 1), least: Number.POSITIVE_INFINITY }] }, 'things.0.least'],
    [{ heater: { ...BARE.heater, height: 40 } }, 'height'],
  ] as [Partial<YardQuestion>, string][])('%j is an issue at %s', (change, where) => {
    expect(yardMap({ ...BARE, ...change })).toMatchObject({ ok: false, issues: [{ where }] });
  });
});
