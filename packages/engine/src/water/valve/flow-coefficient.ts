/**
 * A valve by its flow coefficient, and the same valve by its K.
 *
 *     Q = Cf·√(Δp·ρ0/ρ)        K = 2·A²/(ρ0·Cf²)
 *
 * Cf is in m3/s of 60 °F water at 1 Pa. The trade's Cv counts US gpm at 1 psi, Kv counts m3/h at 1 bar; both are
 * multiples of it: `CV` and `KV`.
 *
 * How sources disagree: Cv is defined for 60 °F water, Kv for 5 to 40 °C; 0.1 % apart. Crane rounds K to
 * 890·d⁴/Cv² (d in inches), 0.04 % under this.
 *
 * Source: IEC 60534-1 (from memory); Crane TP-410, Examples 7-2 and 7-27.
 * Range: Cf above 0.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: Kv = 500 in D = 0.154 m → K = 3.60.
 */
import { HOUR, MINUTE, PSI, US_GALLON } from '../../quantity/index.ts';
import type { Formula, Source, Variable } from '../../trace/index.ts';
import { DENSITY, DIAMETER, FLOW, RESISTANCE } from '../variables.ts';

/** Water at 60 °F (15.56 °C), kg/m3, for which the coefficients are defined. */
export const COEFFICIENT_DENSITY = 999.016;

/** One Cv in m3/(s Pa^0.5). */
export const CV = US_GALLON / MINUTE / Math.sqrt(PSI);
/** One Kv in m3/(s Pa^0.5). */
export const KV = 1 / HOUR / Math.sqrt(1e5);

const SOURCE: Source = {
  document: 'IEC 60534-1',
  at: 'definition of the flow coefficient',
  known: 'from memory',
};
const COEFFICIENT: Variable = { symbol: 'Cf', kind: 'flow-coefficient', min: 1e-12, max: 10 };
const DROP: Variable = { symbol: 'Δp', kind: 'pressure-difference', min: 0, max: 1e8 };

export interface ValveFlow {
  /** Q, m3/s. */
  readonly flow: number;
  /** Cf, m3/(s Pa^0.5). */
  readonly coefficient: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Pressure lost across a valve, Pa; signed like the flow. */
export const valveDrop: Formula<ValveFlow> = {
  id: 'water.valve-drop',
  equation: 'Δp = (ρ/ρ0)·(Q/Cf)²',
  inputs: { flow: FLOW, coefficient: COEFFICIENT, density: DENSITY },
  result: { symbol: 'Δp', kind: 'pressure-difference' },
  source: SOURCE,
  kernel: (x) =>
    (x.density / COEFFICIENT_DENSITY) * (x.flow / x.coefficient) * Math.abs(x.flow / x.coefficient),
};

export interface ValveDuty {
  /** Q, m3/s. */
  readonly flow: number;
  /** Δp, Pa. */
  readonly pressureDrop: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Flow coefficient a duty needs, m3/(s Pa^0.5). */
export const coefficientForDuty: Formula<ValveDuty> = {
  id: 'water.coefficient-for-duty',
  equation: 'Cf = Q·√(ρ/(ρ0·Δp))',
  inputs: {
    flow: { symbol: 'Q', kind: 'volume-flow', min: 0, max: 100 },
    pressureDrop: { symbol: 'Δp', kind: 'pressure-difference', min: 1e-6, max: 1e8 },
    density: DENSITY,
  },
  result: COEFFICIENT,
  source: SOURCE,
  kernel: (x) => x.flow * Math.sqrt(x.density / (COEFFICIENT_DENSITY * x.pressureDrop)),
};

export interface ValveOpen {
  /** Δp, Pa. */
  readonly pressureDrop: number;
  /** Cf, m3/(s Pa^0.5). */
  readonly coefficient: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Flow through a valve at a pressure drop, m3/s: the inverse of `valveDrop`. */
export const valveFlow: Formula<ValveOpen> = {
  id: 'water.valve-flow',
  equation: 'Q = Cf·√(Δp·ρ0/ρ)',
  inputs: { pressureDrop: DROP, coefficient: COEFFICIENT, density: DENSITY },
  result: FLOW,
  source: SOURCE,
  kernel: (x) => x.coefficient * Math.sqrt((x.pressureDrop * COEFFICIENT_DENSITY) / x.density),
};

export interface ValveBody {
  /** Cf, m3/(s Pa^0.5). */
  readonly coefficient: number;
  /** D, m. */
  readonly insideDiameter: number;
}

/** K of a valve on the velocity in a stated diameter. */
export const kOfCoefficient: Formula<ValveBody> = {
  id: 'water.k-of-coefficient',
  equation: 'K = 2·A²/(ρ0·Cf²)',
  inputs: { coefficient: COEFFICIENT, insideDiameter: DIAMETER },
  result: RESISTANCE,
  source: SOURCE,
  kernel: (x) => {
    const area = (Math.PI * x.insideDiameter ** 2) / 4;
    return (2 * area * area) / (COEFFICIENT_DENSITY * x.coefficient * x.coefficient);
  },
};

export interface ValveK {
  readonly k: number;
  /** D, m. */
  readonly insideDiameter: number;
}

/** Flow coefficient of a valve given by its K, m3/(s Pa^0.5): the inverse of `kOfCoefficient`. */
export const coefficientOfK: Formula<ValveK> = {
  id: 'water.coefficient-of-k',
  equation: 'Cf = A·√(2/(ρ0·K))',
  inputs: { k: { symbol: 'K', kind: 'ratio', min: 1e-9, max: 1e12 }, insideDiameter: DIAMETER },
  result: COEFFICIENT,
  source: SOURCE,
  kernel: (x) => ((Math.PI * x.insideDiameter ** 2) / 4) * Math.sqrt(2 / (COEFFICIENT_DENSITY * x.k)),
};
