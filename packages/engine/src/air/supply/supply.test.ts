import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BTU, CUBIC_FOOT, HOUR, INCH, MINUTE } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import {
  CANADIAN_RATES,
  canadianHighOpening,
  canadianOpening,
  combinedAir,
  infiltrationRoomVolume,
  mechanicalSupply,
  OPENING_RATES,
  openingArea,
  roomPull,
  standardRoomVolume,
} from './index.ts';

describe('combustion air', () => {
  it('asks more of a room the tighter it is, and less of a burner with a fan', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        fc.double({ min: 1e3, max: 3e5, noNaN: true }),
        (airChanges, heatInput) => {
          const of = (ach: number, coefficient: number) =>
            expectOk(evaluate(infiltrationRoomVolume, { heatInput, airChanges: ach, coefficient }));
          expect(of(airChanges, 21)).toBeGreaterThan(of(airChanges + 0.1, 21));
          expect(of(airChanges, 15)).toBeLessThan(of(airChanges, 21));
        },
      ),
    );
  });

  // NFPA 54-2012 9.3.2.2(3): no more than 0.60 air changes may be counted.
  it('counts no more than 0.60 air changes', () => {
    expect(
      evaluate(infiltrationRoomVolume, { heatInput: 1e4, airChanges: 0.7, coefficient: 21 }),
    ).toMatchObject({
      ok: false,
      issues: [{ where: 'airChanges', max: 0.6 }],
    });
  });

  it('asks twice the area by horizontal ducts of what it asks straight', () => {
    const of = (rate: number) => expectOk(evaluate(openingArea, { heatInput: 1e5, rate, leastArea: 0 }));
    expect(of(OPENING_RATES['two-horizontal'])).toBeCloseTo(2 * of(OPENING_RATES['two-direct']), 12);
  });

  it('refuses an input below zero', () => {
    expect(evaluate(standardRoomVolume, { heatInput: -1 })).toMatchObject({ ok: false });
  });
});

describe('air by other ways', () => {
  const btu = (perHour: number): number => (perHour * BTU) / HOUR;

  // NFPA 54 annex J: 3,600 of 7,000 ft3, and 23 in2 (printed whole) of 47.
  it('adds the share of the volume and that of the opening', () => {
    const share = expectOk(evaluate(combinedAir, { byVolume: 3600 / 7000, byOpenings: 23 / 47 }));
    expect(Math.abs(share - 1)).toBeLessThan(0.5 / 47);
  });

  // NFPA 54-2012 9.3.6: 0.35 cfm a thousand Btu/h, exhaust fans on top.
  it('blows in what burners and exhaust fans take', () => {
    const exhaust = (1200 * CUBIC_FOOT) / MINUTE;
    const flow = expectOk(evaluate(mechanicalSupply, { heatInput: btu(400_000), exhaust }));
    expect(flow / (CUBIC_FOOT / MINUTE)).toBeCloseTo(1340, 6);
  });

  // CSA B149.1 8.4.2 and 8.4.3 as quoted: 7000 to a million, 14 000 beyond; 30 000 for power burners.
  it('asks half as much of what lies over a million Btu/h', () => {
    const of = (input: number, rate: number): number =>
      expectOk(evaluate(canadianOpening, { heatInput: btu(input), rate })) / INCH ** 2;
    const rate = CANADIAN_RATES['draught-control'];
    expect(of(1_700_000, rate)).toBeCloseTo(1e6 / 7000 + 7e5 / 14_000, 8);
    expect(of(600_000, CANADIAN_RATES['power-burner'])).toBeCloseTo(20, 8);
    expect(of(300_000, rate)).toBeLessThan(of(301_000, rate));
  });

  it('asks at least 10 in2 high up', () => {
    const of = (area: number): number =>
      expectOk(evaluate(canadianHighOpening, { area: area * INCH ** 2 })) / INCH ** 2;
    expect(of(50)).toBeCloseTo(10, 10);
    expect(of(200)).toBeCloseTo(20, 10);
  });

  // Bernoulli: the orifice passes Cd·A·√(2Δp/ρ).
  it('pulls a room down by the square of the flow over the area', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (flow, area) => {
          const density = 1.2;
          const pull = expectOk(evaluate(roomPull, { flow, area, density }));
          expect(0.61 * area * Math.sqrt((2 * pull) / density)).toBeCloseTo(flow, 8);
        },
      ),
    );
  });

  it('refuses a room without any opening', () => {
    expect(evaluate(roomPull, { flow: 1, area: 0, density: 1.2 })).toMatchObject({
      ok: false,
      issues: [{ where: 'area' }],
    });
  });
});
