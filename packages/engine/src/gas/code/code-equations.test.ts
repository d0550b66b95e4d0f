import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, HOUR, INCH, INCH_OF_WATER, PSI, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import { SIZING_FACTORS } from '../fuel.ts';
import { highPressureDiameter, highPressureDrop, highPressureFlow } from './high-pressure.ts';
import { lowPressureDiameter, lowPressureDrop, lowPressureFlow } from './low-pressure.ts';
import { SIZING_TEMPERATURE, sizingFactor } from './sizing-factor.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;
const natural = SIZING_FACTORS.natural;

const diameter = fc.double({ min: 0.008, max: 0.3, noNaN: true });
const length = fc.double({ min: 1, max: 1000, noNaN: true });
const grow = fc.double({ min: 1.001, max: 3, noNaN: true });

describe('low-pressure equation', () => {
  it('gives the capacity of the NFPA 54 example C.7.1: 3/4 in carries 137 ft3/h over 60 ft', () => {
    const x = { insideDiameter: 0.824 * INCH, length: 60 * FOOT, pressureDrop: 0.5 * INCH_OF_WATER };
    expect(expectOk(evaluate(lowPressureFlow, { ...x, cr: natural.cr })) / SCFH).toBeCloseTo(137, 0);
  });

  it('returns from flow to drop and to diameter', () => {
    fc.assert(
      fc.property(diameter, length, fc.double({ min: 1, max: 3000, noNaN: true }), (d, l, dp) => {
        const common = { length: l, cr: natural.cr };
        const flow = lowPressureFlow.kernel({ ...common, insideDiameter: d, pressureDrop: dp });
        const drop = lowPressureDrop.kernel({ ...common, insideDiameter: d, flow });
        const bore = lowPressureDiameter.kernel({ ...common, pressureDrop: dp, flow });
        expect(drop / dp).toBeCloseTo(1, 9);
        expect(bore / d).toBeCloseTo(1, 9);
      }),
    );
  });

  it('refuses what is outside its range, by name', () => {
    const x = { insideDiameter: 0.02, length: -1, pressureDrop: 11_000, cr: natural.cr };
    const refused = evaluate(lowPressureFlow, x);
    expect(refused.ok ? [] : refused.issues.map((issue) => issue.where)).toEqual(['length', 'pressureDrop']);
  });
});

describe('high-pressure equation', () => {
  it('comes within rounding of IFGC 2018 Table 402.4(6): 677 ft3/h in 1/2 in over 100 ft', () => {
    const x = { insideDiameter: 0.622 * INCH, length: 100 * FOOT, inletPressure: 3 * PSI };
    const flow = expectOk(evaluate(highPressureFlow, { ...x, pressureDrop: 2 * PSI, ...natural })) / SCFH;
    expect(Math.abs(flow / 677 - 1)).toBeLessThan(0.0125);
  });

  it('returns from flow to drop and to diameter', () => {
    const inlet = fc.double({ min: 1.6, max: 60, noNaN: true });
    const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(diameter, length, inlet, share, (d, l, psi, part) => {
        const common = { length: l, inletPressure: psi * PSI, ...natural };
        const dp = part * psi * PSI;
        const flow = highPressureFlow.kernel({ ...common, insideDiameter: d, pressureDrop: dp });
        expect(highPressureDrop.kernel({ ...common, insideDiameter: d, flow }) / dp).toBeCloseTo(1, 8);
        expect(highPressureDiameter.kernel({ ...common, pressureDrop: dp, flow }) / d).toBeCloseTo(1, 8);
      }),
    );
  });

  it('loses less in a bigger pipe and more at a greater flow', () => {
    fc.assert(
      fc.property(diameter, length, grow, (d, l, more) => {
        const x = { insideDiameter: d, length: l, inletPressure: 2 * PSI, ...natural };
        const flow = highPressureFlow.kernel({ ...x, pressureDrop: 0.3 * PSI });
        const drop = highPressureDrop.kernel({ ...x, flow });
        expect(highPressureDrop.kernel({ ...x, insideDiameter: d * more, flow })).toBeLessThan(drop);
        const greater = highPressureDrop.kernel({ ...x, flow: flow * more });
        expect(Number.isNaN(greater) || greater > drop).toBe(true);
      }),
    );
  });

  it('says when no outlet pressure can carry the flow', () => {
    const x = { insideDiameter: 0.0158, length: 100, inletPressure: 2 * PSI, flow: 1, ...natural };
    const refused = evaluate(highPressureDrop, x);
    expect(refused.ok ? [] : refused.issues.map((issue) => issue.code)).toEqual(['no-solution']);
  });

  it('refuses an inlet that belongs to the other equation', () => {
    const x = { insideDiameter: 0.02, length: 10, inletPressure: 0.5 * PSI, pressureDrop: 100, ...natural };
    expect(evaluate(highPressureFlow, x).ok).toBe(false);
  });
});

describe('sizing factor', () => {
  it('gives the Cr the code prints for its two gases, from the S and Z it prints', () => {
    const of = (specificGravity: number, viscosity: number): number =>
      expectOk(evaluate(sizingFactor, { specificGravity, viscosity, temperature: SIZING_TEMPERATURE }));
    expect(of(0.6, 12e-6)).toBeCloseTo(SIZING_FACTORS.natural.cr, 4);
    expect(of(1.5, 8e-6)).toBeCloseTo(SIZING_FACTORS.propane.cr, 4);
  });
});
