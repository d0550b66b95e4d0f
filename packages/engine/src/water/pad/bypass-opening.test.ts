import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MINUTE, US_GALLON } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { CV } from '../valve/flow-coefficient.ts';
import { EXAMPLE_PAD } from './example.ts';
import { buildPad, bypassOpening, heaterFlows, type PadSpec, type PadState } from './index.ts';

const GPM = US_GALLON / MINUTE;

function withBand(least: number, most: number, more: Partial<PadSpec> = {}) {
  const bank = EXAMPLE_PAD.bank!;
  const heaters = bank.heaters.map((one) => ({ ...one, band: { least: least * GPM, most: most * GPM } }));
  return expectOk(buildPad({ ...EXAMPLE_PAD, ...more, bank: { ...bank, heaters } }));
}

const SPEEDS: readonly PadState[] = [
  { speed: 1 },
  { speed: 1, loading: 4 },
  { speed: 0.75 },
  { speed: 0.75, loading: 4 },
];

describe('bypass opening', () => {
  it('holds every state inside the band between its ends, and not beyond them', () => {
    const pad = withBand(25, 75);
    const found = expectOk(bypassOpening(pad, SPEEDS));
    if (found.found !== 'interval') throw new Error('an interval was expected');
    expect(found.low).toBeGreaterThan(0);
    expect(found.high).toBeGreaterThan(found.low);
    const all = (bypass: number) =>
      expectOk(
        heaterFlows(
          pad,
          SPEEDS.map((state) => ({ ...state, bypass })),
        ),
      ).map((one) => one.standing);
    const inside = (found.low + found.high) / 2;
    expect(all(inside).every((one) => one === 'within')).toBe(true);
    expect(all(found.low + 1e-3).every((one) => one === 'within')).toBe(true);
    expect(all(found.high - 1e-3).every((one) => one === 'within')).toBe(true);
    expect(all(found.low - 1e-3)).toContain('above');
    expect(all(found.high + 1e-3)).toContain('below');
  });

  it('puts the flow on the limit at each end, for every kind of valve', () => {
    const valves = [
      { type: 'linear', coefficient: 120 * CV },
      { type: 'equal-percentage', coefficient: 120 * CV, rangeability: 50 },
      { type: 'ball', insideDiameter: 0.0525, openK: 0.06 },
      { type: 'butterfly', insideDiameter: 0.0525, openK: 0.86 },
    ] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...valves),
        fc.double({ min: 0.7, max: 1.1, noNaN: true }),
        fc.double({ min: 35, max: 45, noNaN: true }),
        fc.double({ min: 50, max: 58, noNaN: true }),
        (valve, speed, least, most) => {
          const pad = withBand(least, most, { bypass: { valve, line: [] } });
          const { states } = expectOk(bypassOpening(pad, [{ speed }]));
          const [one] = states;
          if (one === undefined || one.trouble) throw new Error('no trouble was expected');
          const at = (bypass: number) => expectOk(heaterFlows(pad, [{ speed, bypass }]))[0]?.flow ?? 0;
          if (one.low > 0) expect(at(one.low) / GPM).toBeCloseTo(most, 3);
          if (one.high < 1) expect(at(one.high) / GPM).toBeCloseTo(least, 3);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('finds none when two states ask for different ones, and names them', () => {
    const found = expectOk(bypassOpening(withBand(45, 60), SPEEDS));
    if (found.found !== 'none') throw new Error('none was expected');
    expect(found.reason).toBe('conflict');
    expect(found.between).toEqual([0, 3]);
  });

  it('finds none where the flow is too little with the bypass shut, or too much with it open', () => {
    const little = expectOk(bypassOpening(withBand(90, 120), [{ speed: 1 }, { speed: 0.5 }]));
    expect(little.found === 'none' ? [little.reason, little.between] : []).toEqual(['too-little', [1]]);
    const small = { bypass: { valve: { type: 'linear', coefficient: 5 * CV }, line: [] } } as const;
    const much = expectOk(bypassOpening(withBand(20, 60, small), [{ speed: 1 }]));
    expect(much.found === 'none' ? [much.reason, much.between] : []).toEqual(['too-much', [0]]);
  });

  it('is the whole travel where nothing asks for less', () => {
    const found = expectOk(bypassOpening(withBand(5, 150), [{ speed: 0.8 }]));
    expect(found).toMatchObject({ found: 'interval', low: 0, high: 1, lowState: -1, highState: -1 });
  });

  it('is an issue without a bypass, without states and for a state out of range', () => {
    const { bypass: _none, ...bare } = EXAMPLE_PAD;
    expect(bypassOpening(expectOk(buildPad(bare)), SPEEDS).ok).toBe(false);
    expect(bypassOpening(withBand(20, 60), []).ok).toBe(false);
    expect(bypassOpening(withBand(20, 60), [{ speed: 9 }]).ok).toBe(false);
  });

  it('leaves no flow drawn behind', () => {
    const pad = withBand(45, 60);
    const before = expectOk(heaterFlows(pad, [{ speed: 0.9 }]))[0]?.flow ?? 0;
    expectOk(bypassOpening(pad, SPEEDS));
    expect(expectOk(heaterFlows(pad, [{ speed: 0.9 }]))[0]?.flow).toBeCloseTo(before, 10);
  });
});
