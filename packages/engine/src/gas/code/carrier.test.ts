import { describe, expect, it } from 'vitest';
import { FOOT, HOUR, INCH, INCH_OF_WATER, PSI, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import { expectOk, Recorder } from '../../trace/index.ts';
import { type Fuel, NATURAL_GAS, PROPANE } from '../fuel.ts';
import { type Carrier, carrierCapacity, carrierDrop, codeEquation } from './carrier.ts';
import type { CorrugatedTable } from './corrugated.ts';
import { codeFactors } from './factors.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;

/** EHD 18 of IFGC 2018 Table 402.4(33): propane, 2 psi, 1 psi drop; printed kBtu/h over 2.5 kBtu/ft3. */
const table: CorrugatedTable = {
  id: 'two-psi',
  inletPressure: 2 * PSI,
  pressureDrop: PSI,
  specificGravity: 1.5,
  lengths: [10, 25, 50, 75, 100, 150].map((feet) => feet * FOOT),
  sizes: [{ ehd: 18, flows: [927, 591, 420, 344, 298, 245].map((kbtu) => (kbtu / 2.5) * SCFH) }],
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Table 402.4(33)',
    known: 'read in a public copy',
  },
};
const corrugated: Carrier = { type: 'corrugated', ehd: 18, table };
const steel: Carrier = { type: 'bore', insideDiameter: 0.824 * INCH };

describe('carrierCapacity', () => {
  it('reads a row of the corrugated table back exactly', () => {
    const run = { carrier: corrugated, length: 75 * FOOT, inletPressure: 2 * PSI, fuel: PROPANE };
    expect((2.5 * expectOk(carrierCapacity({ ...run, pressureDrop: PSI }))) / SCFH).toBeCloseTo(344, 6);
  });

  it('serves natural gas from the propane table: example A.7.2 prints 189 ft3/h for EHD 18 over 100 ft', () => {
    const run = { carrier: corrugated, length: 100 * FOOT, inletPressure: 2 * PSI, fuel: NATURAL_GAS };
    const flow = expectOk(carrierCapacity({ ...run, pressureDrop: PSI })) / SCFH;
    expect(Math.abs(flow / 189 - 1)).toBeLessThan(0.005);
  });

  it('takes the equation that the inlet asks for', () => {
    expect([codeEquation(1.49 * PSI), codeEquation(1.5 * PSI)]).toEqual(['low', 'high']);
    const recorder = new Recorder();
    const run = { carrier: steel, length: 30, inletPressure: 2 * PSI, fuel: NATURAL_GAS };
    carrierCapacity({ ...run, pressureDrop: PSI }, recorder);
    expect(recorder.steps.map((step) => step.id)).toEqual(['gas.high-pressure-flow']);
  });
});

describe('carrierDrop', () => {
  it.each([
    ['steel, low', steel, 8 * INCH_OF_WATER, 0.7 * INCH_OF_WATER],
    ['steel, high', steel, 2 * PSI, 0.8 * PSI],
    ['corrugated inside its table', corrugated, 2 * PSI, 0.9 * PSI],
    ['corrugated below its table', corrugated, 8 * INCH_OF_WATER, 0.1 * INCH_OF_WATER],
    ['corrugated above its table', corrugated, 5 * PSI, 4 * PSI],
  ] as const)('returns from the capacity of %s', (_name, carrier, inletPressure, pressureDrop) => {
    const run = { carrier, length: 20, inletPressure, fuel: NATURAL_GAS };
    const flow = expectOk(carrierCapacity({ ...run, pressureDrop }));
    expect(expectOk(carrierDrop({ ...run, flow })) / pressureDrop).toBeCloseTo(1, 9);
  });

  it('is nothing without flow', () => {
    const run = { carrier: corrugated, length: 20, inletPressure: 2 * PSI, fuel: NATURAL_GAS };
    expect(carrierDrop({ ...run, flow: 0 })).toEqual({ ok: true, value: 0 });
  });

  it('refuses an outlet below the atmosphere, and a size the table does not have', () => {
    const run = { length: 100, inletPressure: 7 * INCH_OF_WATER, fuel: NATURAL_GAS };
    const starved = carrierDrop({ ...run, carrier: steel, flow: 500 * SCFH });
    expect(starved.ok ? '' : starved.issues[0]?.reason).toBe('outlet-below-atmosphere');
    const none = carrierDrop({ ...run, carrier: { ...corrugated, ehd: 20 }, flow: SCFH });
    expect(none.ok ? '' : none.issues[0]?.reason).toBe('no-such-size');
  });
});

describe('codeFactors', () => {
  it('keeps the printed Cr at the printed gravity and joins it without a step', () => {
    const near: Fuel = { ...NATURAL_GAS, specificGravity: 0.600001 };
    expect(codeFactors(near).cr).toBeCloseTo(codeFactors(NATURAL_GAS).cr, 4);
    expect(codeFactors({ ...NATURAL_GAS, specificGravity: 0.65 }).cr).toBeGreaterThan(0.6094);
  });
});
