/**
 * Isothermal flow of a compressible gas in a pipe with wall friction: what a gauge will read.
 *
 *     p1² − p2²·e^s = w · G²·Rs·T·(f·L/D),   G = ρs·q/A,   f = f(Re, ε/D),   Re = 4·ρs·q/(π·D·μ)
 *
 * with f after Colebrook, laminar below Re 2000 and a smooth bridge between. Mass flow, and so Re and f, are the same
 * all along the pipe, which is why the law needs no step along it. s and w carry the height (`elevation.ts`).
 *
 * The gas gains speed as its pressure falls: the full equation has f·L/D + 2·ln(p1/p2). That term is left out of
 * the network (0.4 % of the loss for 1 psi lost from 2 psi over 100 ft of 1 in pipe, next to nothing at low pressure)
 * and kept in `isothermal-flow.ts`.
 *
 * How the code's equation stands to it, in flow at a given drop: from 11 % under to 9 % over in new steel (over only in
 * small steel at high gradients), 4 to 19 % under in smooth copper and polyethylene, which the code computes as if
 * they were a little rough, and 23 % under where the flow is laminar.
 *
 * Source: Crane TP-410, simplified compressible flow for long pipelines (from memory); friction as in
 * `numerics/network`.
 * Range: diameter 5 to 700 mm, roughness to a tenth of it, absolute pressure 1 kPa to 3 MPa.
 * Errors: range issues; an outlet below a vacuum is `no-solution`.
 *
 * Worked example: 3/4 in Schedule 40, 60 ft, 137 ft3/h of natural gas from 7 in w.c. → 0.51 in w.c. lost.
 */
import { frictionFactor } from '../../numerics/index.ts';
import { FOOT } from '../../quantity/index.ts';
import { type Formula, type Source, traced } from '../../trace/index.ts';
import { elevationFactor, meanElevationFactor } from './elevation.ts';
import type { GasState } from './gas-state.ts';

export const ISOTHERMAL_SOURCE: Source = {
  document: 'Crane Technical Paper 410',
  at: 'isothermal flow in long pipelines; friction after Colebrook',
  known: 'from memory',
};

export interface PipeBody {
  /** D, m. */
  readonly insideDiameter: number;
  /** ε, m. */
  readonly roughness: number;
  /** L with the equivalent length of its fittings, m. */
  readonly length: number;
}

/** What the network's friction law takes: p² lost = c·f(Re)·q·|q| on the level. */
export interface PipeCoefficients {
  readonly c: number;
  readonly reynoldsPerFlow: number;
  readonly relativeRoughness: number;
}

/** The coefficients of a pipe full of a gas. */
export function pipeCoefficients(pipe: PipeBody, gas: GasState): PipeCoefficients {
  const area = (Math.PI / 4) * pipe.insideDiameter ** 2;
  const flux = gas.standardDensity / area;
  return {
    c: (flux ** 2 * gas.gasConstant * gas.temperature * pipe.length) / pipe.insideDiameter,
    reynoldsPerFlow: (flux * pipe.insideDiameter) / gas.viscosity,
    relativeRoughness: pipe.roughness / pipe.insideDiameter,
  };
}

const flow = { symbol: 'q', kind: 'standard-gas-flow', min: 0, max: 1000 } as const;
const density = { symbol: 'ρs', kind: 'density', min: 0.3, max: 3 } as const;
const diameter = { symbol: 'D', kind: 'diameter', min: 0.005, max: 0.7 } as const;
const viscosity = { symbol: 'μ', kind: 'dynamic-viscosity', min: 3e-6, max: 3e-5 } as const;
const absolute = (symbol: string) => ({ symbol, kind: 'absolute-pressure', min: 1000, max: 3e6 }) as const;

export interface GasFlow {
  readonly flow: number;
  readonly standardDensity: number;
  readonly insideDiameter: number;
  readonly viscosity: number;
}

/** Reynolds number of a flow of gas. */
export const gasReynolds: Formula<GasFlow> = {
  id: 'gas.reynolds',
  equation: 'Re = 4·ρs·q/(π·D·μ)',
  inputs: { flow, standardDensity: density, insideDiameter: diameter, viscosity },
  result: { symbol: 'Re', kind: 'ratio' },
  source: { document: 'Definition', at: 'Reynolds number', known: 'physics' },
  kernel: (x) => (4 * x.standardDensity * x.flow) / (Math.PI * x.insideDiameter * x.viscosity),
};

export interface WallFriction {
  readonly reynolds: number;
  readonly relativeRoughness: number;
}

/** Darcy friction factor. */
export const gasFrictionFactor: Formula<WallFriction> = {
  id: 'gas.friction-factor',
  equation: '1/√f = −2·log10(ε/(3.7·D) + 2.51/(Re·√f)); 64/Re (Re < 2000)',
  inputs: {
    reynolds: { symbol: 'Re', kind: 'ratio', min: 1e-9, max: 1e9 },
    relativeRoughness: { symbol: 'ε/D', kind: 'ratio', min: 0, max: 0.1 },
  },
  result: { symbol: 'f', kind: 'ratio' },
  source: {
    document: 'Colebrook (1939)',
    at: 'turbulent flow; Hagen–Poiseuille laminar',
    known: 'from memory',
  },
  kernel: (x) => frictionFactor(x.reynolds, x.relativeRoughness),
};

export interface PipeFlow extends PipeBody {
  /** p1, absolute, Pa. */
  readonly inletPressure: number;
  /** q, standard m3/s, from the inlet to the outlet. */
  readonly flow: number;
  /** Outlet above inlet, m. */
  readonly rise: number;
  readonly standardDensity: number;
  readonly viscosity: number;
  /** T, K. */
  readonly temperature: number;
}

/** Absolute pressure (Pa) at the outlet of a pipe. */
export const pipeOutlet: Formula<PipeFlow> = {
  id: 'gas.pipe-outlet',
  equation: 'p1² − p2²·e^s = w·(ρs·q/A)²·Rs·T·f·L/D',
  inputs: {
    inletPressure: absolute('p1'),
    flow,
    insideDiameter: diameter,
    roughness: { symbol: 'ε', kind: 'length', min: 0, max: 0.005 },
    length: { symbol: 'L', kind: 'length', min: 0, max: 100_000 * FOOT },
    rise: { symbol: 'Δz', kind: 'length', min: -500, max: 500 },
    standardDensity: density,
    viscosity,
    temperature: { symbol: 'T', kind: 'temperature', min: 220, max: 340 },
  },
  result: absolute('p2'),
  source: ISOTHERMAL_SOURCE,
  kernel: (x, recorder) => {
    const { flow: q, standardDensity, viscosity: mu, temperature } = x;
    const gasConstant = 101_325 / (standardDensity * 288.15);
    const state: GasState = { standardDensity, viscosity: mu, temperature, gasConstant };
    const { c, relativeRoughness } = pipeCoefficients(x, state);
    const factor = elevationFactor(state, x.rise);
    if (q === 0) return x.inletPressure / Math.sqrt(factor);
    const bore = { insideDiameter: x.insideDiameter, standardDensity, viscosity: mu };
    const reynolds = traced(gasReynolds, { flow: q, ...bore }, recorder);
    const f = traced(gasFrictionFactor, { reynolds, relativeRoughness }, recorder);
    const loss = meanElevationFactor(state, 0, x.rise) * c * f * q * q;
    return Math.sqrt((x.inletPressure ** 2 - loss) / factor);
  },
};
