/**
 * Isothermal flow of a gas in one level pipe, with the term of acceleration.
 *
 *     m² = A²·ρ1·(p1² − p2²) / (p1·(f·L/D + 2·ln(p1/p2)))
 *
 * for a given friction factor. The network leaves the logarithm out; this is what it is checked against.
 *
 * Source: Crane TP-410 Equation 1-6 (from memory).
 * Range: absolute pressures 1 kPa to 20 MPa, friction factor 0.001 to 1. Errors: range issues of `evaluate`; an
 * outlet not below the inlet is `no-solution`, and so is one past the choking point
 * f·L/D + 2·ln(p1/p2) = (p1/p2)² − 1, beyond which no lower outlet draws more.
 *
 * Worked example: ρ1 11.3 kg/m3, f 0.00185, 10 to 9 bar, 1000 m of 0.5 m → 145.48 kg/s.
 */
import type { Formula } from '../../trace/index.ts';
import { ISOTHERMAL_SOURCE } from './pipe-law.ts';

const absolute = (symbol: string) => ({ symbol, kind: 'absolute-pressure', min: 1000, max: 2e7 }) as const;

export interface IsothermalPipe {
  /** ρ1, at the inlet's pressure, kg/m3. */
  readonly inletDensity: number;
  readonly frictionFactor: number;
  readonly inletPressure: number;
  readonly outletPressure: number;
  readonly length: number;
  readonly insideDiameter: number;
}

/** Mass flow, kg/s. */
export const isothermalMassFlow: Formula<IsothermalPipe> = {
  id: 'gas.isothermal-mass-flow',
  equation: 'm = A·√(ρ1·(p1² − p2²)/(p1·(f·L/D + 2·ln(p1/p2))))',
  inputs: {
    inletDensity: { symbol: 'ρ1', kind: 'density', min: 0.05, max: 200 },
    frictionFactor: { symbol: 'f', kind: 'ratio', min: 0.001, max: 1 },
    inletPressure: absolute('p1'),
    outletPressure: absolute('p2'),
    length: { symbol: 'L', kind: 'length', min: 0.01, max: 1e6 },
    insideDiameter: { symbol: 'D', kind: 'diameter', min: 0.002, max: 3 },
  },
  result: { symbol: 'm', kind: 'mass-flow' },
  source: ISOTHERMAL_SOURCE,
  kernel: (x) => {
    const ratio = x.inletPressure / x.outletPressure;
    const resistance = (x.frictionFactor * x.length) / x.insideDiameter + 2 * Math.log(ratio);
    if (ratio <= 1 || ratio * ratio - 1 > resistance) return Number.NaN;
    const area = (Math.PI / 4) * x.insideDiameter ** 2;
    const squared = x.inletPressure ** 2 - x.outletPressure ** 2;
    return area * Math.sqrt((x.inletDensity * squared) / (x.inletPressure * resistance));
  },
};
