import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, HOUR, INCH, INCH_OF_WATER, PSI, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import type { CorrugatedTable } from '../code/corrugated.ts';
import { NATURAL_GAS, PROPANE } from '../fuel.ts';
import { corrugatedFit, corrugatedOutlet, referenceFlow } from './corrugated-law.ts';
import { gasState } from './gas-state.ts';
import { isothermalMassFlow } from './isothermal-flow.ts';
import { gasFrictionFactor, gasReynolds, type PipeFlow, pipeOutlet } from './pipe-law.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;

function run(more: Partial<PipeFlow>): PipeFlow {
  const { standardDensity, viscosity, temperature } = gasState(NATURAL_GAS, 288.15);
  return {
    inletPressure: 101_325 + 7 * INCH_OF_WATER,
    flow: 137 * SCFH,
    insideDiameter: 0.824 * INCH,
    roughness: 4.572e-5,
    length: 60 * FOOT,
    rise: 0,
    standardDensity,
    viscosity,
    temperature,
    ...more,
  };
}

describe('pipeOutlet', () => {
  it('loses what Darcy–Weisbach says of a gas that hardly changes its density', () => {
    const x = run({});
    const { flow: q, standardDensity, insideDiameter, viscosity, roughness } = x;
    const reynolds = gasReynolds.kernel({ flow: q, standardDensity, insideDiameter, viscosity });
    const f = gasFrictionFactor.kernel({ reynolds, relativeRoughness: roughness / insideDiameter });
    const mean = (x.inletPressure + pipeOutlet.kernel(x)) / 2;
    const density = standardDensity * (mean / 101_325);
    const velocity = (q * standardDensity) / density / ((Math.PI / 4) * insideDiameter ** 2);
    const drop = ((f * x.length) / insideDiameter) * density * (velocity ** 2 / 2);
    expect((x.inletPressure - pipeOutlet.kernel(x)) / drop).toBeCloseTo(1, 6);
  });

  it('is Hagen–Poiseuille’s law when the flow is slow', () => {
    const x = run({ flow: 10 * SCFH });
    const mean = (pipeOutlet.kernel(x) + x.inletPressure) / 2;
    const actual = x.flow * (101_325 / mean);
    const drop = (128 * x.viscosity * x.length * actual) / (Math.PI * x.insideDiameter ** 4);
    expect((x.inletPressure - pipeOutlet.kernel(x)) / drop).toBeCloseTo(1, 6);
  });

  it('adds up over parts of a pipe, height included', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.integer({ min: -30, max: 30 }),
        (part, rise) => {
          const whole = run({ inletPressure: 101_325 + PSI, rise });
          const first = pipeOutlet.kernel({ ...whole, length: part * whole.length, rise: part * rise });
          const second = pipeOutlet.kernel({
            ...whole,
            inletPressure: first,
            length: (1 - part) * whole.length,
            rise: (1 - part) * rise,
          });
          expect(Math.abs(second - pipeOutlet.kernel(whole))).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('refuses a flow that no outlet can carry', () => {
    const refused = evaluate(pipeOutlet, run({ flow: 1 }));
    expect(refused.ok ? '' : refused.issues[0]?.code).toBe('no-solution');
  });
});

describe('isothermalMassFlow', () => {
  // Example in the documentation of the library fluids (1.3), isothermal_gas: 145.4847572636031 kg/s.
  const x = {
    inletDensity: 11.3,
    frictionFactor: 0.00185,
    inletPressure: 1e6,
    outletPressure: 9e5,
    length: 1000,
    insideDiameter: 0.5,
  };

  it('gives the documented flow of a general-purpose library', () => {
    expect(expectOk(evaluate(isothermalMassFlow, x))).toBeCloseTo(145.4847572636031, 9);
  });

  it('stops at the choking point', () => {
    expect(evaluate(isothermalMassFlow, { ...x, outletPressure: 3e5 }).ok).toBe(false);
    expect(evaluate(isothermalMassFlow, { ...x, outletPressure: 1.1e6 }).ok).toBe(false);
  });
});

describe('corrugated tubing', () => {
  /** EHD 18 of IFGC 2018 Table 402.4(33), kBtu/h of propane over 2.5. */
  const table: CorrugatedTable = {
    id: 'two-psi',
    inletPressure: 2 * PSI,
    pressureDrop: PSI,
    specificGravity: 1.5,
    lengths: [10, 50, 100, 300, 500].map((feet) => feet * FOOT),
    sizes: [{ ehd: 18, flows: [927, 420, 298, 173, 135].map((kbtu) => (kbtu / 2.5) * SCFH) }],
    source: {
      document: 'International Fuel Gas Code 2018',
      at: 'Table 402.4(33)',
      known: 'read in a public copy',
    },
  };

  it('lands within 2.5 % of the table’s drop at the table’s flow', () => {
    const fit = expectOk(corrugatedFit({ ehd: 18, tables: [table] }));
    table.lengths.forEach((length, i) => {
      const outlet = corrugatedOutlet.kernel({
        inletPressure: 14.7 * PSI + 2 * PSI,
        flow: table.sizes[0]?.flows[i] ?? 0,
        length,
        rise: 0,
        specificGravity: PROPANE.specificGravity,
        temperature: 520 / 1.8,
        exponent: fit.exponent,
        referenceFlow: referenceFlow(fit),
      });
      // 1.2 % in flow, twice that in drop.
      expect(Math.abs((16.7 * PSI - outlet) / PSI - 1)).toBeLessThan(0.025);
    });
  });

  it('says when there is nothing to fit', () => {
    const none = corrugatedFit({ ehd: 20, tables: [table] });
    expect(none.ok ? '' : none.issues[0]?.reason).toBe('no-such-size');
  });
});
