import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ATMOSPHERE, FOOT, INCH } from '../../quantity/index.ts';
import { evaluate, expectOk, ok, Recorder } from '../../trace/index.ts';
import {
  beyondTable,
  chimneyCapacity,
  connectorShare,
  draught,
  elbowShare,
  nearestInTable,
  notAllowed,
  tableChimney,
  VENT_KINDS,
  type VentKind,
  ventTable,
  ventTableCapacity,
} from './index.ts';

const kinds = fc.constantFrom(...(Object.keys(VENT_KINDS) as VentKind[]));
const sizes = fc.record({
  diameter: fc.double({ min: 4 * INCH, max: 24 * INCH, noNaN: true }),
  height: fc.double({ min: 6 * FOOT, max: 50 * FOOT, noNaN: true }),
  offset: fc.double({ min: 0, max: 6 * FOOT, noNaN: true }),
});

describe('the chimney relation', () => {
  it('carries more through a wider vent, and less with a longer lateral', () => {
    fc.assert(
      fc.property(kinds, sizes, (kind, size) => {
        const of = (other: Partial<typeof size>): number =>
          expectOk(chimneyCapacity(tableChimney(kind, { ...size, ...other })));
        expect(of({ diameter: size.diameter * 1.1 })).toBeGreaterThan(of({}));
        expect(of({ offset: size.offset + 1 })).toBeLessThan(of({}));
      }),
      { numRuns: 60 },
    );
  });

  it('closes: the flow it finds is the flow its own draught drives', () => {
    const recorder = new Recorder();
    const chimney = tableChimney('type-b-natural', { diameter: 5 * INCH, height: 10 * FOOT, offset: 0 });
    const input = expectOk(chimneyCapacity(chimney, recorder));
    const flow = recorder.steps.find((step) => step.step === 'formula' && step.id === 'air.vent-flow');
    if (flow?.step !== 'formula') throw new Error('no flow in the working');
    expect(flow.result.value / chimney.massPerHeat).toBeCloseTo(input, 3);
  });

  it('says when the vent cools its gas so far that nothing keeps up', () => {
    const cold = { ...tableChimney('single-wall-natural', { diameter: 1 * INCH, height: 3, offset: 60 }) };
    expect(chimneyCapacity(cold)).toMatchObject({ ok: false, issues: [{ reason: 'vent-too-cool' }] });
  });

  it('refuses a vent that is none', () => {
    const none = tableChimney('type-b-natural', { diameter: 0, height: 3, offset: 0 });
    expect(chimneyCapacity(none)).toMatchObject({ ok: false, issues: [{ where: 'diameter' }] });
  });

  // The air thins with height: the draught of the same column goes with the barometer.
  it('draws in proportion to the barometer', () => {
    const of = (atmosphere: number): number =>
      expectOk(evaluate(draught, { height: 8, gasTemperature: 450, airTemperature: 290, atmosphere }));
    expect(of(0.8 * ATMOSPHERE)).toBeCloseTo(0.8 * of(ATMOSPHERE), 10);
  });
});

const TABLE = ventTable({
  id: 'made up',
  source: { document: 'made up for this test', known: 'common practice, no source' },
  diameters: [0.1, 0.15],
  straight: true,
  rows: [
    { height: 2, offset: 0, capacities: [100, 200] },
    { height: 2, offset: 1, capacities: [80, 160] },
    { height: 2, offset: 3, capacities: [60, undefined] },
    { height: 4, offset: 0, capacities: [140, 280] },
    { height: 4, offset: 1, capacities: [120, 240] },
    { height: 4, offset: 3, capacities: [100, 200] },
  ],
});

describe('a vent table', () => {
  const of = (diameter: number, height: number, offset: number) =>
    ventTableCapacity(TABLE, { diameter, height, offset });

  it('gives its own cells and goes in straight lines between them', () => {
    expect(of(0.1, 2, 1)).toEqual(ok(80));
    expect(of(0.1, 3, 1)).toEqual(ok(100));
    expect(of(0.1, 2, 2)).toEqual(ok(70));
    expect(of(0.1, 3, 2)).toEqual(ok(90));
  });

  // IFGC 504.2.4: a row of no lateral is for a straight vent alone.
  it('counts the least lateral as the first row that has one', () => {
    expect(of(0.1, 2, 0)).toEqual(ok(100));
    expect(of(0.1, 2, 0.01)).toEqual(ok(80));
  });

  it('takes the nominal size that is no larger, a metric one for its inch', () => {
    expect(of(0.14, 2, 1)).toEqual(ok(80));
    expect(of(0.148, 2, 1)).toEqual(ok(160));
  });

  it('says where it ends', () => {
    expect(of(0.05, 2, 1)).toMatchObject({ ok: false, issues: [{ where: 'diameter', min: 0.1 }] });
    expect(of(0.1, 1.9, 1)).toMatchObject({ ok: false, issues: [{ where: 'height', min: 2, max: 4 }] });
    expect(of(0.1, 4.1, 1)).toMatchObject({ ok: false, issues: [{ where: 'height' }] });
    expect(of(0.1, 2, 3.1)).toMatchObject({ ok: false, issues: [{ where: 'offset', max: 3 }] });
  });

  it('does not allow what stands beside a cell that is not allowed', () => {
    expect(notAllowed(of(0.15, 2, 2))).toBe(true);
    expect(notAllowed(of(0.15, 3, 2))).toBe(true);
    expect(notAllowed(of(0.15, 4, 2))).toBe(false);
  });

  it('is carried on from its edge, and is itself inside', () => {
    const relation = ({ height }: { readonly height: number }) => ok(Math.sqrt(height));
    const inside = { diameter: 0.1, height: 3, offset: 2 };
    const beyond = { diameter: 0.1, height: 16, offset: 1 };
    expect(nearestInTable(TABLE, beyond)).toEqual({ diameter: 0.1, height: 4, offset: 1 });
    expect(beyondTable(TABLE, inside, { relation })).toEqual(of(0.1, 3, 2));
    expect(beyondTable(TABLE, beyond, { relation })).toEqual(ok(240));
  });
});

describe('what the code takes off', () => {
  const elbows = (sharp: number, slight: number, included: number): number =>
    expectOk(evaluate(elbowShare, { sharp, slight, included }));

  // NFPA 54-2012 13.1.3: 10 % for each elbow over 45°, 5 % for each up to 45°, beyond the two of a lateral.
  it('counts elbows beyond those of the row', () => {
    expect(elbows(2, 0, 2)).toBe(1);
    expect(elbows(3, 0, 2)).toBeCloseTo(0.9, 12);
    expect(elbows(1, 2, 2)).toBeCloseTo(0.95, 12);
    expect(elbows(1, 1, 0)).toBeCloseTo(0.85, 12);
    expect(elbows(20, 20, 0)).toBe(0);
  });

  // IFGC 504.3.3: 10 % for each further multiple of the allowed length, 9 ft for 6 in.
  it('counts lengths of a connector beyond the one allowed', () => {
    const of = (feet: number): number =>
      expectOk(evaluate(connectorShare, { length: feet * FOOT, diameter: 6 * INCH }));
    expect(of(9)).toBe(1);
    expect(of(9.1)).toBeCloseTo(0.9, 12);
    expect(of(27)).toBeCloseTo(0.8, 12);
  });
});
