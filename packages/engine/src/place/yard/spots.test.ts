/** Worked by hand on plain yards. */
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { allowedSpots, bestSpots, spotLimits, type YardQuestion, yardMap } from './index.ts';

const box = (x: number, y: number, width: number, height: number) => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
const solid = { closed: false, bottom: 0, top: 2, growth: 0, least: 0, solid: true };
const wall = {
  ...solid,
  corners: [
    { x: 0, y: 4 },
    { x: 8, y: 4 },
  ],
};
const unit = { ...solid, corners: box(7, 0, 0.5, 0.5), closed: true, least: 1 };
const ASKED: YardQuestion = {
  yard: box(0, 0, 8, 5),
  things: [wall, unit],
  heater: { width: 1, depth: 1, height: 1, base: 0 },
  faces: { left: 0.25, right: 0.25, back: 0.5, front: 0.5, above: 0.5 },
  turns: [0],
  step: 0.5,
};

describe('what limits a spot', () => {
  it('is the wall behind it, or the unit beside it, whichever leaves less', () => {
    // Back at y = 3.5: the wall 0.5 m on, just what is asked; the unit is 5.5 m to the right, 2.5 m down.
    const near = spotLimits(ASKED, { x: 1, y: 3 }, 0);
    expect(near.limits[0]).toMatchObject({ face: 'back', thing: 0, required: 0.5, found: 0.5, margin: 0 });
    expect(near).toMatchObject({ inYard: true, standsIn: [] });
    // Right side at x = 6, front at y = 0: 1 m from the unit, of which 1 m is asked; 3 m before its right.
    const beside = spotLimits(ASKED, { x: 5.5, y: 0.5 }, 0);
    expect(beside.limits[0]).toMatchObject({ thing: 1, required: 1, margin: 0 });
    expect(beside.limits[0]?.face).toBeUndefined();
  });

  it('is told of a heater across the line and of one that would stand in something', () => {
    expect(spotLimits(ASKED, { x: 0.2, y: 2 }, 0).inYard).toBe(false);
    expect(spotLimits(ASKED, { x: 7, y: 0.6 }, 0).standsIn).toEqual([1]);
  });

  it('has the least margin that the map has', () => {
    const map = expectOk(yardMap(ASKED));
    map.margins.forEach((margin, spot) => {
      if (Number.isNaN(margin)) return;
      const at = {
        x: map.x + (spot % map.columns) * map.step,
        y: map.y + Math.floor(spot / map.columns) * map.step,
      };
      const least = spotLimits(ASKED, at, 0).limits[0]?.margin ?? Number.POSITIVE_INFINITY;
      expect(Math.min(10, least)).toBeCloseTo(margin, 9);
    });
  });
});

describe('the best spots', () => {
  const map = expectOk(yardMap(ASKED));

  it('stand apart, best first, and none below what is asked', () => {
    const found = bestSpots(map, { count: 10, apart: 1.5 });
    expect(found.length).toBeGreaterThan(2);
    found.forEach((one, i) => {
      expect(one.margin).toBeGreaterThanOrEqual(0);
      expect(one.margin).toBeLessThanOrEqual(found[i - 1]?.margin ?? Number.POSITIVE_INFINITY);
      for (const other of found.slice(0, i))
        expect(Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y)).toBeGreaterThanOrEqual(1.5);
    });
    expect(found[0]).toMatchObject({ at: map.best?.at, margin: map.best?.margin });
  });

  it('are counted beside those tried', () => {
    // 8 m by 5 m at half a metre: 16 by 10 middles.
    expect(map.tried).toBe(160);
    expect(allowedSpots(map)).toBe([...map.margins].filter((margin) => margin >= 0).length);
  });

  it('are none where the heater fits nowhere', () => {
    const tight = expectOk(yardMap({ ...ASKED, faces: { ...ASKED.faces, back: 8, front: 8 } }));
    expect(bestSpots(tight, { count: 10, apart: 1 })).toEqual([]);
    expect(allowedSpots(tight)).toBe(0);
  });
});
