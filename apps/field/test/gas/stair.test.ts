/** Where the pressure staircase puts what it draws: nothing collides, nothing leaves the picture. */
import type { GasHeaterSeen, GasLeg, GasNode } from '@firstfire/job';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ticksBetween } from '../../src/gas/scale.ts';
import { stairOf } from '../../src/gas/stair.ts';

const PHONE = { width: 358, height: 230, em: 1 };

interface Section {
  readonly length: number;
  readonly drop: number;
  readonly bore: number;
}

const END: GasNode = { id: 'n', pressures: {}, hung: [], branches: [], leads: true };

/** A way of sections from a pressure down, as the picture of a job gives it. */
function heaterOn(start: number, sections: readonly Section[], regulatorAfter?: number): GasHeaterSeen {
  const way: GasLeg[] = [];
  let at = start;
  for (const [i, { length, drop, bore }] of sections.entries()) {
    const to = at - drop;
    way.push(leg({ type: 'section', id: `s${i}`, length, bore }, at, to));
    at = to;
    if (i !== regulatorAfter) continue;
    way.push(leg({ type: 'regulator', id: 'r' }, at, at / 8));
    at /= 8;
  }
  const pressures = { 'everything-on': at, 'heater-alone': at, 'all-off': at };
  return {
    id: 'h',
    name: 'Heater',
    node: 'n',
    pressures,
    least: 1000,
    greatest: 2500,
    judged: {},
    way,
    dearest: 's0',
  };
}

function leg(
  link: Pick<GasLeg['link'], 'type' | 'id'> & Partial<GasLeg['link']>,
  from: number,
  to: number,
): GasLeg {
  const all = (value: number) => ({ 'everything-on': value, 'heater-alone': value, 'all-off': value });
  const rest = { name: '', fittings: {}, flow: {}, drop: all(from - to), missing: [] };
  return { link: { ...rest, ...link }, from: all(from), to: all(to), end: END };
}

const anySection = fc.record({
  length: fc.double({ min: 0.1, max: 60, noNaN: true }),
  drop: fc.double({ min: 0, max: 120, noNaN: true }),
  bore: fc.double({ min: 0.01, max: 0.1, noNaN: true }),
});

describe('the pressure staircase', () => {
  it('gives each of up to eight sections on a phone room for its size, side by side', () => {
    fc.assert(
      fc.property(fc.array(anySection, { minLength: 1, maxLength: 8 }), (sections) => {
        const { columns, plot } = stairOf(heaterOn(1900, sections), { state: 'everything-on' }, PHONE);
        expect(columns).toHaveLength(sections.length);
        for (const [i, { x0, x1 }] of columns.entries()) {
          expect(x1 - x0).toBeGreaterThanOrEqual(36);
          expect(x0).toBeCloseTo(columns[i - 1]?.x1 ?? plot.left, 6);
        }
        expect(columns.at(-1)?.x1).toBeCloseTo(plot.right, 6);
      }),
    );
  });

  it('keeps every corner inside the picture, lower where the pressure is lower', () => {
    fc.assert(
      fc.property(
        fc.array(anySection, { minLength: 1, maxLength: 8 }),
        fc.constantFrom('everything-on' as const, 'heater-alone' as const, 'all-off' as const),
        fc.option(fc.nat(7), { nil: undefined }),
        (sections, state, regulator) => {
          const heater = heaterOn(1900, sections, regulator);
          const { lines, dots, plot } = stairOf(heater, { state }, PHONE);
          for (const { x, y } of dots) {
            expect(x).toBeGreaterThanOrEqual(plot.left - 1e-6);
            expect(x).toBeLessThanOrEqual(plot.right + 1e-6);
            expect(y).toBeGreaterThanOrEqual(plot.top - 1e-6);
            expect(y).toBeLessThanOrEqual(plot.bottom + 1e-6);
          }
          for (const { y0, y1 } of lines) expect(y1).toBeGreaterThanOrEqual(y0 - 1e-6);
        },
      ),
    );
  });

  it('draws a higher pressure ahead of a regulator above the break, and the heater’s own below', () => {
    const heater = heaterOn(
      13000,
      [
        { length: 40, drop: 500, bore: 0.05 },
        { length: 4, drop: 10, bore: 0.04 },
      ],
      0,
    );
    const { band = Number.NaN, lines } = stairOf(heater, { state: 'everything-on' }, PHONE);
    expect(lines[0]?.y1).toBeLessThan(band);
    expect(lines[2]?.y0).toBeGreaterThan(band);
    // The regulator is the step between them.
    expect(lines[1]?.x0).toBe(lines[1]?.x1);
  });

  it('says from where on nothing is known', () => {
    const heater = heaterOn(1900, [
      { length: 10, drop: 20, bore: 0.03 },
      { length: 10, drop: 20, bore: 0.03 },
    ]);
    const [first, second] = heater.way;
    if (first === undefined || second === undefined) throw new Error('no way');
    const half = { ...heater, way: [first, { ...second, to: {} }] };
    const { columns, unknownFrom, lines } = stairOf(half, { state: 'everything-on' }, PHONE);
    expect(lines).toHaveLength(1);
    expect(unknownFrom).toBe(columns[1]?.x0);
  });
});

describe('the lines of a scale', () => {
  it('stand at round values, about as many as asked', () => {
    expect(ticksBetween(4.1, 7.2)).toEqual([4.5, 5, 5.5, 6, 6.5, 7]);
    expect(ticksBetween(0.93, 1.91)).toEqual([1, 1.2, 1.4, 1.6, 1.8]);
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        (low, span) => {
          const ticks = ticksBetween(low, low + span);
          expect(ticks.length).toBeGreaterThanOrEqual(2);
          expect(ticks.length).toBeLessThanOrEqual(8);
          for (const tick of ticks) {
            expect(tick).toBeGreaterThanOrEqual(low - span * 1e-6);
            expect(tick).toBeLessThanOrEqual(low + span * (1 + 1e-6));
          }
        },
      ),
    );
  });

  it('keeps its ground under a pressure that is moved, and a pixel means what the scale says', () => {
    fc.assert(
      fc.property(
        fc.array(anySection, { minLength: 1, maxLength: 8 }),
        fc.option(fc.nat(7), { nil: undefined }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (sections, regulator, part) => {
          const state = 'everything-on' as const;
          const before = stairOf(heaterOn(1900, sections, regulator), { state }, PHONE);
          const { hold, reach } = before;
          if (hold === undefined) throw new Error('nothing to hold');
          const zone = regulator !== undefined && regulator < sections.length ? reach.ahead : reach.own;
          // Half of the way to the end of the scale, so that what hangs on it fits too.
          const by = part * Math.min((zone?.high ?? 0) - 1900, 1900 - (zone?.low ?? 0));
          const after = stairOf(heaterOn(1900 + by, sections, regulator), { state, keep: reach }, PHONE);
          const moved = hold.y - (after.hold?.y ?? Number.NaN);
          if (after.reach.own?.low === reach.own?.low && after.reach.own?.high === reach.own?.high)
            expect(moved * hold.perPixel).toBeCloseTo(by, 6);
          expect(after.reach.own?.low).toBeLessThanOrEqual(reach.own?.low ?? Number.NaN);
          expect(after.reach.own?.high).toBeGreaterThanOrEqual(reach.own?.high ?? Number.NaN);
        },
      ),
    );
  });
});
