import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../../trace/index.ts';
import {
  CV,
  coefficientForDuty,
  coefficientOfK,
  kOfCoefficient,
  openingFor,
  passing,
  type Valve,
  valveDrop,
  valveFlow,
  valveIssues,
} from './index.ts';

const VALVES: readonly Valve[] = [
  { type: 'linear', coefficient: 100 * CV },
  { type: 'equal-percentage', coefficient: 100 * CV, rangeability: 50 },
  { type: 'ball', insideDiameter: 0.0525, openK: 0.06 },
  { type: 'butterfly', insideDiameter: 0.0525, openK: 0.86 },
];

describe('flow coefficient', () => {
  it('agrees with Crane K = 890·d⁴/Cv² (from memory) to 0.1 %', () => {
    const k = expectOk(evaluate(kOfCoefficient, { coefficient: 100 * CV, insideDiameter: 2 * 0.0254 }));
    expect(Math.abs(k / ((890 * 16) / 100 ** 2) - 1)).toBeLessThan(1e-3);
  });

  it('returns between K and coefficient, flow and drop, duty and coefficient', () => {
    const density = 997;
    for (const cv of [0.5, 20, 300]) {
      const coefficient = cv * CV;
      const k = kOfCoefficient.kernel({ coefficient, insideDiameter: 0.05 });
      expect(coefficientOfK.kernel({ k, insideDiameter: 0.05 }) / coefficient).toBeCloseTo(1, 12);
      const pressureDrop = valveDrop.kernel({ flow: 0.002, coefficient, density });
      expect(valveFlow.kernel({ pressureDrop, coefficient, density })).toBeCloseTo(0.002, 12);
      expect(coefficientForDuty.kernel({ flow: 0.002, pressureDrop, density }) / coefficient).toBeCloseTo(
        1,
        12,
      );
    }
  });
});

describe('characteristics', () => {
  it('passes nothing shut and everything open', () => {
    for (const valve of VALVES) expect(passing(valve, 0)).toBe(0);
    expect(passing(VALVES[0]!, 1) / CV).toBeCloseTo(100, 9);
    expect(passing(VALVES[1]!, 1) / CV).toBeCloseTo(100, 9);
  });

  it('is 10 at 10 % and 20 at 20 % for a linear valve of Cv 100 (valve-world.net, Q&A 13)', () => {
    expect(passing(VALVES[0]!, 0.1) / CV).toBeCloseTo(10, 9);
    expect(passing(VALVES[0]!, 0.2) / CV).toBeCloseTo(20, 9);
  });

  it('rises by about half for each tenth of travel, equal percentage (valve-world.net, Q&A 13)', () => {
    for (const opening of [0.2, 0.5, 0.8]) {
      const step = passing(VALVES[1]!, opening + 0.1) / passing(VALVES[1]!, opening);
      expect(Math.abs(step / 1.5 - 1)).toBeLessThan(0.02);
    }
  });

  it('never passes less when opened further, and its inverse returns', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...VALVES),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (valve, opening) => {
          const coefficient = passing(valve, opening);
          expect(passing(valve, opening + 0.001)).toBeGreaterThan(coefficient);
          expect(openingFor(valve, coefficient)).toBeCloseTo(opening, 6);
        },
      ),
    );
  });

  it('says when not even fully open is enough', () => {
    expect(openingFor(VALVES[0]!, 101 * CV)).toBe(Number.POSITIVE_INFINITY);
    expect(openingFor(VALVES[0]!, 0)).toBe(0);
  });

  it('names what is wrong with a description', () => {
    expect(valveIssues('bypass', { type: 'linear', coefficient: 0 })).toHaveLength(1);
    expect(valveIssues('bypass', { type: 'ball', insideDiameter: 0, openK: Number.NaN })).toHaveLength(2);
    for (const valve of VALVES) expect(valveIssues('bypass', valve)).toEqual([]);
  });
});
