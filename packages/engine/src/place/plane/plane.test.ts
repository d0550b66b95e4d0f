import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  centroid,
  contains,
  mirrored,
  orientation,
  type Point,
  pointSegmentDistance,
  segmentDistance,
  segmentsMeet,
  shapeIssue,
  signedArea,
  turned,
} from './index.ts';

const at = (x: number, y: number): Point => ({ x, y });
const ring = (...corners: readonly (readonly [number, number])[]): Point[] =>
  corners.map(([x, y]) => at(x, y));
/** Metres, none so small that products of what is made of them underflow: what the predicate is exact for. */
const coordinate = fc
  .double({ min: -900, max: 900, noNaN: true })
  .map((value) => (Math.abs(value) < 1e-6 ? 0 : value));
const point = fc.record({ x: coordinate, y: coordinate });

/** A double as a whole number of 2^-1074, which every double is: exact, in the language's own whole numbers. */
function whole(value: number): bigint {
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, value);
  const high = bits.getUint32(0);
  const exponent = (high >>> 20) & 0x7ff;
  const fraction = (BigInt(high & 0xfffff) << 32n) | BigInt(bits.getUint32(4));
  const size = exponent === 0 ? fraction : (fraction | (1n << 52n)) << BigInt(exponent - 1);
  return high >>> 31 === 1 ? -size : size;
}

function exactSide(a: Point, b: Point, c: Point): number {
  const left = (whole(a.x) - whole(c.x)) * (whole(b.y) - whole(c.y));
  const right = (whole(a.y) - whole(c.y)) * (whole(b.x) - whole(c.x));
  return left > right ? 1 : left < right ? -1 : 0;
}

describe('the side of a line', () => {
  // Against whole-number arithmetic without rounding.
  it('is exact for points that lie almost on it', () => {
    fc.assert(
      fc.property(
        point,
        point,
        fc.integer({ min: -1000, max: 2000 }).map((thousandths) => thousandths / 1000),
        fc.integer({ min: -3, max: 3 }),
        (a, b, share, steps) => {
          const y = a.y + share * (b.y - a.y);
          const c = at(a.x + share * (b.x - a.x), y + steps * Math.abs(y) * Number.EPSILON);
          expect(Math.sign(orientation(a, b, c))).toBe(exactSide(a, b, c));
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('tells a point on the line from one a rounding step beside it', () => {
    const [a, b] = [at(0.1, 0.1), at(0.3, 0.3)];
    expect(orientation(a, b, at(0.2, 0.2))).toBe(0);
    expect(Math.sign(orientation(a, b, at(0.2, 0.2 + 2 ** -55)))).toBe(1);
  });
});

describe('segments', () => {
  // Hand-known: 3-4-5.
  it('have the distances of school geometry', () => {
    expect(pointSegmentDistance(at(0, 2), at(-1, 0), at(1, 0))).toBe(2);
    expect(pointSegmentDistance(at(0, 5), at(-4, 2), at(-4, 2))).toBe(5);
    expect(segmentDistance(at(0, 0), at(1, 0), at(4, 4), at(4, 9))).toBe(5);
    expect(segmentDistance(at(0, 0), at(4, 4), at(0, 4), at(4, 0))).toBe(0);
  });

  it('meet or do not, and are as far apart, whichever comes first', () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const meet = segmentsMeet(a, b, c, d);
        expect(segmentsMeet(d, c, a, b)).toBe(meet);
        expect(segmentDistance(c, d, b, a)).toBeCloseTo(segmentDistance(a, b, c, d), 9);
        if (meet) expect(segmentDistance(a, b, c, d)).toBe(0);
      }),
    );
  });

  it('are as far apart as a fine walk along both finds', () => {
    const small = fc.record({
      x: fc.double({ min: 0, max: 10, noNaN: true }),
      y: fc.double({ min: 0, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(small, small, small, small, (a, b, c, d) => {
        let least = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 60; i += 1)
          least = Math.min(
            least,
            pointSegmentDistance(at(a.x + (i / 60) * (b.x - a.x), a.y + (i / 60) * (b.y - a.y)), c, d),
          );
        const found = segmentDistance(a, b, c, d);
        expect(found).toBeLessThanOrEqual(least + 1e-9);
        expect(found).toBeGreaterThan(least - Math.hypot(b.x - a.x, b.y - a.y) / 100 - 1e-9);
      }),
    );
  });
});

const DENTED = ring([0, 0], [9, 1], [10, 6], [6, 3], [5, 7], [1, 5]);

describe('rings', () => {
  it('of an L have the area and middle of its two rectangles', () => {
    const l = ring([0, 0], [10, 0], [10, 4], [4, 4], [4, 9], [0, 9]);
    expect(signedArea(l)).toBe(60);
    expect(centroid(l)?.x).toBeCloseTo((40 * 5 + 20 * 2) / 60, 12);
    expect(centroid(l)?.y).toBeCloseTo((40 * 2 + 20 * 6.5) / 60, 12);
  });

  it('keep area when turned, and change only its sign when mirrored', () => {
    fc.assert(
      fc.property(fc.double({ min: -7, max: 7, noNaN: true }), point, (angle, about) => {
        const area = signedArea(DENTED);
        expect(signedArea(DENTED.map((p) => turned(p, angle, about)))).toBeCloseTo(area, 8);
        expect(signedArea(DENTED.map((p) => mirrored(p, angle, about)))).toBeCloseTo(-area, 8);
      }),
    );
  });

  it('come back when turned back or mirrored twice', () => {
    fc.assert(
      fc.property(point, point, fc.double({ min: -7, max: 7, noNaN: true }), (p, about, angle) => {
        for (const back of [
          turned(turned(p, angle, about), -angle, about),
          mirrored(mirrored(p, angle, about), angle, about),
        ]) {
          expect(back.x).toBeCloseTo(p.x, 9);
          expect(back.y).toBeCloseTo(p.y, 9);
        }
      }),
    );
  });

  it('contain their corners, their edges and what is inside, not what lies in a dent', () => {
    for (const corner of DENTED) expect(contains(DENTED, corner)).toBe(true);
    expect(contains(DENTED, at(4.5, 0.5))).toBe(true);
    expect(contains(DENTED, at(4, 3))).toBe(true);
    expect(contains(DENTED, at(7, 6))).toBe(false);
    expect(contains(DENTED, at(-1, 0))).toBe(false);
  });

  it('without area have no middle', () => {
    expect(centroid(ring([0, 0], [1, 1], [2, 2]))).toBeUndefined();
    expect(signedArea([])).toBe(0);
  });
});

describe('what is wrong with a plan', () => {
  const closed = (...corners: readonly (readonly [number, number])[]) =>
    shapeIssue({ corners: ring(...corners), closed: true });

  it('a bow tie names both edges that cross', () => {
    expect(closed([0, 0], [4, 4], [4, 0], [0, 4])).toMatchObject({
      code: 'ill-formed',
      reason: 'outline-crosses-itself',
      found: '0-2',
    });
  });

  it.each([
    [
      [
        [0, 0],
        [4, 0],
        [4, 0],
        [4, 4],
      ],
      'edge-without-length',
    ],
    [
      [
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 3],
      ],
      'edge-folds-back',
    ],
    [
      [
        [0, 0],
        [4, 0],
      ],
      'too-few-corners',
    ],
    [Array.from({ length: 501 }, (_, i) => [i, i * i]), 'too-many-corners'],
  ] as [[number, number][], string][])('%j: %s', (corners, reason) => {
    expect(closed(...corners)).toMatchObject({ code: 'ill-formed', reason });
  });

  it('a wall of no length, a thing without a point, and a corner that is no number', () => {
    expect(shapeIssue({ corners: ring([1, 1], [1, 1]), closed: false })?.reason).toBe('edge-without-length');
    expect(shapeIssue({ corners: [], closed: false })?.reason).toBe('no-corners');
    expect(shapeIssue({ corners: ring([Number.NaN, 1]), closed: false })?.code).toBe('out-of-range');
    expect(shapeIssue({ corners: ring([1, 1]), closed: false })).toBeUndefined();
  });
});
